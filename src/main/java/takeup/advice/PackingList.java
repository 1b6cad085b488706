package takeup.advice;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.day.CameraPlace;
import takeup.day.Day;
import takeup.day.FilmLot;
import takeup.day.KeyMoment;
import takeup.day.ShootInfo;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Stock;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * What the plan still wants out of the fridge. The moments to come are gone through in order: each uses up what is left
 * in its camera, then what is in the bag, then the fridge. Of one film what expires first goes first; what is past its
 * month on the day goes last.
 *
 * @param rolls how many rolls of each lot are to be packed
 * @param isShort the moments for which there is not enough
 */
public record PackingList(Map<FilmLot, Integer> rolls, List<Shortage> isShort) {
    /**
     * A moment for which there is not enough film.
     *
     * @param frames how many frames are missing
     * @param camera the camera that wants them; empty where none is named or in use
     */
    public record Shortage(KeyMoment moment, int frames, Optional<Camera> camera) {}

    public PackingList {
        rolls = Collections.unmodifiableMap(new LinkedHashMap<>(rolls));
        isShort = List.copyOf(isShort);
    }

    /** The moments to come that want a number of frames, for the shoot that is open or for today. */
    public static List<KeyMoment> wanted(ShootState s, OffsetDateTime now) {
        return s.day().plan().ahead(now.toLocalDateTime(), date(s.day(), now)).stream()
                .filter(it -> it.wants() > 0)
                .toList();
    }

    private static LocalDate date(Day day, OffsetDateTime now) {
        return day.shoot()
                .map(ShootInfo::date)
                .filter(it -> it.isAfter(now.toLocalDate()))
                .orElse(now.toLocalDate());
    }

    /** For the plan as it is. */
    public static PackingList of(ShootState s, OffsetDateTime now) {
        Packing packing = new Packing(s, date(s.day(), now));
        wanted(s, now).forEach(packing::serve);
        return new PackingList(packing.packed, packing.isShort);
    }

    /** What is left while the moments are gone through. */
    private static final class Packing {
        private final ShootState s;
        private final Map<RollId, Integer> left = new LinkedHashMap<>();
        private final Map<String, Integer> begun = new LinkedHashMap<>();
        private final Map<FilmLot, Integer> bag;
        private final Map<FilmLot, Integer> fridge;
        private final Map<FilmLot, Integer> packed = new LinkedHashMap<>();
        private final List<Shortage> isShort = new ArrayList<>();

        Packing(ShootState s, LocalDate date) {
            this.s = s;
            s.openRolls().forEach(it -> left.put(it.id(), Math.max(0, it.framesLeft())));
            bag = inOrder(s.day().bag().filled(), date);
            fridge = inOrder(s.day().fridge().filled(), date);
        }

        private static Map<FilmLot, Integer> inOrder(List<Map.Entry<FilmLot, Integer>> lots, LocalDate date) {
            Map<FilmLot, Integer> all = new LinkedHashMap<>();
            lots.stream()
                    .sorted(Comparator.comparing((Map.Entry<FilmLot, Integer> it) ->
                                    it.getKey().isExpired(date))
                            .thenComparing(it -> it.getKey().expires().orElse(YearMonth.of(9999, 12))))
                    .forEach(it -> all.put(it.getKey(), it.getValue()));
            return all;
        }

        void serve(KeyMoment moment) {
            int wants = usedUp(moment, moment.wants());
            Optional<CameraPlace> place = place(moment);
            Optional<Camera> camera = place.flatMap(it -> s.camera(it.camera()));
            while (wants > 0 && camera.isPresent()) {
                Optional<FilmLot> lot = next(place.get(), camera.get(), moment);
                if (lot.isEmpty()) {
                    break;
                }
                String key = camera.get().key() + " " + lot.get().stock();
                int frames = begun.getOrDefault(key, 0);
                if (frames == 0) {
                    frames = camera.get().frames().get(lot.get().size());
                    take(lot.get());
                }
                begun.put(key, Math.max(0, frames - wants));
                wants -= Math.min(wants, frames);
            }
            if (wants > 0) {
                isShort.add(new Shortage(moment, wants, camera));
            }
        }

        /** What is still wanted once the rolls in its camera are used up that serve its light. */
        private int usedUp(KeyMoment moment, int wants) {
            int still = wants;
            for (Roll roll : s.openRolls()) {
                boolean isItsCamera = moment.camera()
                        .map(it -> it.equals(roll.camera().key()))
                        .orElse(true);
                if (isItsCamera && StockChoice.serves(s, roll, moment)) {
                    int used = Math.min(still, left.get(roll.id()));
                    left.merge(roll.id(), -used, Integer::sum);
                    still -= used;
                }
            }
            return still;
        }

        private Optional<CameraPlace> place(KeyMoment moment) {
            return moment.camera()
                    .map(it -> new CameraPlace(it, moment.back()))
                    .or(s::placeInHand)
                    .or(() -> s.placesInUse().stream().findFirst());
        }

        private Optional<FilmLot> next(CameraPlace place, Camera camera, KeyMoment moment) {
            Optional<FilmLot> ofBag = fitting(bag, place, camera, moment);
            boolean isBagRight =
                    ofBag.isPresent() && (moment.ev100().isEmpty() || isServing(place, ofBag.get(), moment));
            return isBagRight ? ofBag : fitting(fridge, place, camera, moment).or(() -> ofBag);
        }

        private boolean isServing(CameraPlace place, FilmLot lot, KeyMoment moment) {
            return s.kit()
                    .stock(lot.stock())
                    .filter(it ->
                            StockChoice.serves(s, place, it, moment.ev100().getAsDouble()))
                    .isPresent();
        }

        /** The film of those lots for a moment, its first lot; a roll of it that is begun counts as there. */
        private Optional<FilmLot> fitting(
                Map<FilmLot, Integer> lots, CameraPlace place, Camera camera, KeyMoment moment) {
            List<Stock> there = new ArrayList<>();
            lots.forEach((lot, rolls) -> {
                boolean isLeft = rolls > 0 || begun.getOrDefault(camera.key() + " " + lot.stock(), 0) > 0;
                if (isLeft && camera.frames().containsKey(lot.size())) {
                    s.kit().stock(lot.stock()).filter(it -> !there.contains(it)).ifPresent(there::add);
                }
            });
            Optional<Stock> film = moment.ev100().isPresent()
                    ? StockChoice.best(s, place, there, moment.ev100().getAsDouble())
                            .map(StockChoice::stock)
                    : asBefore(place, there);
            return film.flatMap(it -> lots.entrySet().stream()
                    .filter(lot -> lot.getKey().stock().equals(it.key())
                            && camera.frames().containsKey(lot.getKey().size()))
                    .sorted(Comparator.comparing(lot -> lot.getValue() == 0))
                    .map(Map.Entry::getKey)
                    .findFirst());
        }

        /** The film that was in that camera last, where there is some of it; else the first. */
        private Optional<Stock> asBefore(CameraPlace place, List<Stock> there) {
            return s.rollIn(place)
                    .map(it -> it.film().stock().key())
                    .or(() -> Optional.ofNullable(s.day().films().get(place))
                            .map(it -> it.stock().key()))
                    .flatMap(key ->
                            there.stream().filter(it -> it.key().equals(key)).findFirst())
                    .or(() -> there.stream().findFirst());
        }

        private void take(FilmLot lot) {
            if (bag.getOrDefault(lot, 0) > 0) {
                bag.merge(lot, -1, Integer::sum);
            } else {
                fridge.merge(lot, -1, Integer::sum);
                packed.merge(lot, 1, Integer::sum);
            }
        }
    }
}
