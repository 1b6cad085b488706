package takeup.planning;

import java.util.Optional;
import takeup.command.CommandContext;
import takeup.day.FilmLot;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Stops;
import takeup.kit.Stock;
import takeup.text.Plain;

/** What age does to film, by the rule of thumb, marked as one. */
final class FilmAge {
    private FilmAge() {}

    static String words(FilmLot lot, CommandContext context) {
        Optional<Stock> stock = context.state().kit().stock(lot.stock());
        String past = lot.stock() + " expired " + lot.expires().orElseThrow() + ", "
                + Plain.decimals(lot.yearsPast(context.now().toLocalDate()), 1) + " years ago";
        if (stock.isEmpty() || !stock.get().kind().isNegative()) {
            return past + ": extra exposure will not save slide film; test a roll first";
        }
        double stops = lot.agedStops(context.now().toLocalDate()).orElseThrow();
        FilmSpeed usual = stock.get().usualIndex();
        String rating = stops < 1 / 6.0
                ? "hardly any more light"
                : Stops.words(stops) + " more light, from EI " + usual + " to about "
                        + Plain.digits(usual.arithmetic() / Stops.factor(stops), 2);
        return past + "; rule of thumb (common practice, no source), one stop a decade: " + rating
                + "; test a roll first";
    }
}
