package takeup.advice;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import takeup.day.CameraPlace;
import takeup.day.CameraSetup;
import takeup.day.FilmLot;
import takeup.day.KeyMoment;
import takeup.exposure.ExposureValue;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Light;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Stock;
import takeup.roll.Roll;

/**
 * Which film of the bag suits the light that is coming: bw3200 at EI 1600 for EV 6. One that is in the camera already
 * is kept where it serves; else the slowest with which the right exposure can be held by hand, as it has the finest
 * grain; else the fastest there is.
 *
 * @param stock the film
 * @param ev100 the light that is expected, EV at ISO 100; empty where nobody said, and the bag alone decides
 * @param serves whether it can be held by hand in that light
 */
public record StockChoice(Stock stock, OptionalDouble ev100, boolean serves) {
    /**
     * The film to load for a moment; empty where no bag is kept, nothing in it fits, or any film will do as well as
     * that of before.
     */
    static Optional<StockChoice> of(ShootState s, CameraPlace place, KeyMoment moment, Optional<Roll> roll) {
        List<Stock> there = inBag(s, place);
        if (there.isEmpty()) {
            return Optional.empty();
        }
        Optional<Stock> before = roll.map(it -> it.film().stock())
                .or(() -> Optional.ofNullable(s.day().films().get(place)).map(it -> it.stock()));
        Optional<Stock> same = before.flatMap(it ->
                there.stream().filter(stock -> stock.key().equals(it.key())).findFirst());
        if (moment.ev100().isEmpty()) {
            return same.isPresent()
                    ? Optional.empty()
                    : Optional.of(new StockChoice(there.get(0), OptionalDouble.empty(), true));
        }
        double light = moment.ev100().getAsDouble();
        if (roll.isPresent() && serves(s, roll.get(), moment)) {
            return same.map(it -> new StockChoice(it, moment.ev100(), true)).or(() -> best(s, place, there, light));
        }
        if (same.isPresent()
                && roll.isEmpty()
                && serves(s, place, same.get(), same.get().usualIndex(), light)) {
            return Optional.of(new StockChoice(same.get(), moment.ev100(), true));
        }
        return best(s, place, there, light);
    }

    static Optional<StockChoice> best(ShootState s, CameraPlace place, List<Stock> there, double light) {
        Optional<StockChoice> best = Optional.empty();
        for (Stock stock : there) {
            StockChoice other = new StockChoice(
                    stock, OptionalDouble.of(light), serves(s, place, stock, stock.usualIndex(), light));
            if (best.isEmpty() || other.isBetterThan(best.get())) {
                best = Optional.of(other);
            }
        }
        return best;
    }

    private boolean isBetterThan(StockChoice other) {
        double mine = stock.usualIndex().arithmetic();
        double its = other.stock.usualIndex().arithmetic();
        if (serves != other.serves) {
            return serves;
        }
        return serves ? mine < its : mine > its;
    }

    /** The films in the bag that the camera takes, each once, what expires first in front. */
    static List<Stock> inBag(ShootState s, CameraPlace place) {
        Optional<Camera> camera = s.camera(place.camera());
        List<Stock> all = new ArrayList<>();
        for (Map.Entry<FilmLot, Integer> lot : s.day().bag().filled()) {
            if (camera.isPresent()
                    && camera.get().frames().containsKey(lot.getKey().size())) {
                s.kit()
                        .stock(lot.getKey().stock())
                        .filter(it -> !all.contains(it))
                        .ifPresent(all::add);
            }
        }
        return all;
    }

    /** Whether the film on a roll serves the light of a moment, as far as that is known. */
    static boolean serves(ShootState s, Roll roll, KeyMoment moment) {
        return moment.ev100().isEmpty()
                || serves(
                        s,
                        CameraPlace.of(roll),
                        roll.film().stock(),
                        roll.film().index(),
                        moment.ev100().getAsDouble());
    }

    /**
     * Whether the right exposure can be held by hand with the lens in hand, or on the tripod where one is in use; a
     * camera that sets itself is trusted.
     */
    static boolean serves(ShootState s, CameraPlace place, Stock stock, double light) {
        return serves(s, place, stock, stock.usualIndex(), light);
    }

    private static boolean serves(ShootState s, CameraPlace place, Stock stock, FilmSpeed index, double light) {
        Optional<Camera> camera = s.camera(place.camera());
        if (camera.isEmpty() || camera.get().isAutomatic()) {
            return true;
        }
        CameraSetup inHand = s.inHand(camera.get());
        AdviceRequest asking = new AdviceRequest(
                camera,
                inHand.setting(),
                Optional.empty(),
                Optional.of(stock),
                index,
                0,
                s.meterInHand(),
                Optional.empty());
        Light expected = new Light(
                new ExposureValue(light),
                Light.Method.INCIDENT,
                "expected",
                OptionalDouble.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                OffsetDateTime.MIN);
        return asking.advice(expected).suggestions().stream().anyMatch(it -> Alternatives.serves(it, asking));
    }

    /** Whether it is another film than the one on a roll, and better for this light. */
    boolean isOther(Roll roll) {
        return ev100.isPresent() && serves && !isOn(roll);
    }

    /** Whether it is the film on a roll. */
    boolean isOn(Roll roll) {
        return stock.key().equals(roll.film().stock().key());
    }
}
