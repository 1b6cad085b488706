package takeup.prompt;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.ExposureValue;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Light;
import takeup.kit.MeteredPair;
import takeup.kit.Stock;

/**
 * A light reading as it was typed, understood.
 *
 * @param light the light; empty for a flash reading
 * @param flash the flash meter's aperture
 * @param fill the same of a second light
 * @param flashIndex the speed that the flash meter was set to
 * @param basis what the light was made of
 * @param preset the time that an aperture meter is preset to from now on
 * @param shown the pair that the meter showed, where it was a single one and nothing was made of it
 */
public record Reading(
        Optional<Light> light,
        Optional<Aperture> flash,
        Optional<Aperture> fill,
        Optional<FilmSpeed> flashIndex,
        Basis basis,
        Optional<ExposureTime> preset,
        Optional<MeteredPair> shown) {
    /**
     * What the light was made of.
     *
     * @param lowestEv the lowest of several readings, EV at ISO 100; empty for a single one
     * @param placed several readings that each have their zone, as they were typed; empty otherwise
     * @param sky the row of the table that it was taken from
     */
    public record Basis(OptionalDouble lowestEv, List<Placed> placed, Optional<Sky> sky) {
        static final Basis NONE = new Basis(OptionalDouble.empty(), List.of(), Optional.empty());

        static Basis of(List<Double> values, ReadingOptions options) {
            List<Integer> zones = options.zoneOfEach();
            List<Placed> placed = new ArrayList<>();
            for (int at = 0; at < zones.size(); at++) {
                Placed one = new Placed(new ExposureValue(values.get(at)), zones.get(at));
                for (Placed before : placed) {
                    before.checkOrder(one);
                }
                placed.add(one);
            }
            boolean isSingle = values.size() < 2 || !placed.isEmpty();
            return new Basis(
                    isSingle ? OptionalDouble.empty() : OptionalDouble.of(Collections.min(values)),
                    placed,
                    options.sky());
        }
    }

    /** A reading and the zone that it is meant for: EV 9 on zone 3. */
    public record Placed(ExposureValue ev100, int zone) {
        private void checkOrder(Placed other) {
            if ((other.ev100.stops() - ev100.stops()) * (other.zone - zone) <= 0) {
                throw new CommandRejected("the higher zone needs the brighter reading: z" + zone + " and z" + other.zone
                        + " are the other way round here");
            }
        }

        /** The zone that it falls on where another is placed. */
        public double fallsOn(Placed other) {
            return other.zone + ev100.stops() - other.ev100.stops();
        }
    }

    public OptionalDouble lowestEv() {
        return basis.lowestEv;
    }

    /**
     * Of several that have their zones the one that decides: for the shadows of a negative, the highlights of a slide.
     */
    public Optional<Placed> decisive(Stock.Kind kind) {
        Optional<Placed> decisive = Optional.empty();
        for (Placed one : basis.placed) {
            boolean isFurther = decisive.isPresent()
                    && (kind.isNegative() ? one.zone < decisive.get().zone : one.zone > decisive.get().zone);
            if (decisive.isEmpty() || isFurther) {
                decisive = Optional.of(one);
            }
        }
        return decisive;
    }

    /** The same for a film: where several readings have their zones, the one that decides on it is placed. */
    public Reading on(Optional<Stock> stock) {
        Optional<Placed> one = stock.isPresent() ? decisive(stock.get().kind()) : Optional.empty();
        return one.isPresent() && light.isPresent()
                ? with(Optional.of(
                        light.get().placed(one.get().ev100(), one.get().zone())))
                : this;
    }

    /** The same with another light. */
    public Reading with(Optional<Light> other) {
        return new Reading(other, flash, fill, flashIndex, basis, preset, shown);
    }

    /** Of one light, or of key and fill. */
    static Reading ofFlash(List<Aperture> read, FilmSpeed index) {
        return new Reading(
                Optional.empty(),
                Optional.of(read.get(0)),
                read.stream().skip(1).findFirst(),
                Optional.of(index),
                Basis.NONE,
                Optional.empty(),
                Optional.empty());
    }
}
