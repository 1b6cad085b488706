package takeup.roll;

import java.util.Optional;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Stops;
import takeup.kit.Stock;
import takeup.kit.Warning;
import takeup.text.Plain;

/** The warnings about a whole roll: its rating against its development, and both against what its film tolerates. */
final class DevelopmentWarnings {
    private DevelopmentWarnings() {}

    /** Rating and development that do not go together, or a push that is further than the film's profile has it. */
    static Optional<Warning> pushMismatch(Stock stock, FilmSpeed index, double pushStops) {
        double most = stock.mostPushStops().orElse(Double.POSITIVE_INFINITY);
        if (Stops.above(pushStops, most)) {
            return warning(development(pushStops) + " is further than this film's profile goes, " + development(most)
                    + ": ask the lab, or push " + Plain.number(most));
        }
        boolean isNegative = stock.kind().isNegative();
        return pushMismatch(
                -stock.stopsOverBox(index), pushStops, isNegative ? "thin" : "dark", isNegative ? "dense" : "light");
    }

    private static Optional<Warning> pushMismatch(double rated, double pushStops, String thin, String dense) {
        if (pushStops > 0 && !Stops.above(rated, 0)) {
            return warning(development(pushStops) + " but not rated above box: " + dense + "; normal, or fix roll @N");
        }
        if (pushStops < 0 && !Stops.above(0, rated)) {
            return warning(development(pushStops) + " but not rated below box: " + thin + "; normal, or fix roll @N");
        }
        if (pushStops > 0 && !Stops.above(1, pushStops - rated)) {
            return warning(development(pushStops) + " but rated only " + Stops.words(rated) + " above box: "
                    + Stops.words(pushStops - rated) + " " + dense + "; push " + Stops.words(rated)
                    + ", or fix roll @N");
        }
        if (Stops.above(rated - pushStops, 1 / 3.0)) {
            return warning("rated " + Stops.words(rated) + (rated > 0 ? " above" : " below")
                    + " box speed, development is " + development(pushStops) + ": " + thin + " unless "
                    + remedy(pushStops) + ", or fix roll @N");
        }
        return Optional.empty();
    }

    /**
     * A rating so far below box speed, the development counted in, that every frame is more than the film tolerates.
     */
    static Optional<Warning> ratedTooLow(Stock stock, FilmSpeed index, double pushStops) {
        double over = stock.stopsOverBox(index) + Math.min(0, pushStops);
        return Stops.above(over, stock.overStops())
                ? Optional.of(new Warning(
                        stock.kind().isNegative() ? Warning.Code.DENSE : Warning.Code.LIGHT,
                        "rated " + index + " on box speed " + stock.boxSpeed() + " every frame gets "
                                + Stops.words(over) + " over; this film tolerates " + Stops.words(stock.overStops())
                                + ": fix roll @N if the index is mistyped"))
                : Optional.empty();
    }

    private static Optional<Warning> warning(String text) {
        return Optional.of(new Warning(Warning.Code.PUSH_MISMATCH, text));
    }

    private static String remedy(double pushStops) {
        if (pushStops < 0) {
            return "pulled less (pull N)";
        }
        return pushStops > 0 ? "pushed further (push N)" : "pushed (push N)";
    }

    private static String development(double pushStops) {
        if (pushStops == 0) {
            return "normal";
        }
        return (pushStops > 0 ? "push " : "pull ") + Stops.words(pushStops);
    }
}
