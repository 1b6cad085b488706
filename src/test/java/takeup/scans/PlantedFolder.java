package takeup.scans;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import takeup.roll.Frame;
import takeup.roll.RollId;

/**
 * A roll of regatta day and the folder that a lab made of it, with faults planted: the truth is known. Every draw comes
 * from the seed.
 *
 * @param slots the log, one slot a frame
 * @param scans what lies in the folder, in natural order
 * @param truth for each scan the frames it shows, by their places; empty for one that nobody logged
 */
record PlantedFolder(List<Slot> slots, List<Scan> scans, List<List<Integer>> truth) {
    /** What may happen to a film on its way back. */
    enum Fault {
        GAPS,
        REVERSED,
        EXTRA_FIRST,
        EXTRA_LAST,
        HALF_FRAMES,
        GOOD_ONLY,
        PILE,
        STOPPED,
        BLANKS
    }

    private record Shot(List<Integer> frames, double over, int number, boolean isBlack, boolean isPile) {}

    /** Whether two faults can befall one film. */
    static boolean goTogether(Fault a, Fault b) {
        Set<Fault> both = EnumSet.of(a, b);
        return !(both.contains(Fault.PILE)
                        && (both.contains(Fault.EXTRA_LAST)
                                || both.contains(Fault.STOPPED)
                                || both.contains(Fault.HALF_FRAMES)))
                && !(both.contains(Fault.STOPPED) && both.contains(Fault.EXTRA_LAST))
                && !(both.contains(Fault.HALF_FRAMES)
                        && (both.contains(Fault.EXTRA_FIRST)
                                || both.contains(Fault.EXTRA_LAST)
                                || both.contains(Fault.GOOD_ONLY)
                                || both.contains(Fault.BLANKS)));
    }

    /**
     * A folder with these faults.
     *
     * @param slope how much brighter a scan gets for a stop more light: 0 where the lab corrected it all
     */
    static PlantedFolder of(long seed, Set<Fault> faults, double slope) {
        Random random = new Random(seed * 0x9E3779B97F4A7C15L);
        boolean isHalf = faults.contains(Fault.HALF_FRAMES);
        int count = isHalf ? 36 + 2 * random.nextInt(18) : random.nextBoolean() ? 36 : random.nextBoolean() ? 24 : 16;
        List<Slot> slots = slots(random, count, faults, isHalf);
        List<Shot> film = film(random, slots, faults, isHalf);
        if (faults.contains(Fault.REVERSED)) {
            Collections.reverse(film);
        }
        // A lab that leaves frames out after it has counted them, or that reads the edge numbers, keeps the count in
        // the names.
        boolean keepsNumbers = faults.contains(Fault.GAPS)
                || faults.contains(Fault.EXTRA_FIRST) && faults.size() > 1 && !faults.contains(Fault.REVERSED);
        int highest = film.stream().mapToInt(Shot::number).max().orElse(0);
        List<Shot> kept = new ArrayList<>();
        List<Integer> numbers = new ArrayList<>();
        int gap = 2 + random.nextInt(Math.max(1, film.size() - 5));
        int gaps = faults.contains(Fault.GAPS) ? 1 + random.nextInt(2) : 0;
        for (int i = 0; i < film.size(); i++) {
            if (i < gap || i >= gap + gaps) {
                kept.add(film.get(i));
                int counted = faults.contains(Fault.REVERSED) ? highest + 1 - film.get(i).number : film.get(i).number;
                numbers.add(keepsNumbers ? counted : kept.size());
            }
        }
        List<Scan> scans = new ArrayList<>();
        List<List<Integer>> truth = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            Shot shot = kept.get(i);
            scans.add(new Scan(
                    "boathouse_" + (numbers.get(i) < 10 ? "0" : "") + numbers.get(i) + ".jpg",
                    3000,
                    isHalf ? 1950 : 2000,
                    tone(random, shot, slope, isHalf)));
            truth.add(shot.frames);
        }
        return new PlantedFolder(slots, scans, truth);
    }

    private static List<Slot> slots(Random random, int count, Set<Fault> faults, boolean isHalf) {
        List<Slot> slots = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double over = Math.round(10 * (0.5 + 0.8 * random.nextGaussian())) / 10.0;
            Frame.Kind kind = Frame.Kind.EXPOSED;
            boolean far = over < -1.5 || over > 3.5;
            if (faults.contains(Fault.GOOD_ONLY)) {
                far = random.nextInt(9) == 0;
                over = far ? -2.6 - random.nextInt(8) / 10.0 : Math.max(-1.2, Math.min(3, over));
            }
            if (faults.contains(Fault.BLANKS) && random.nextInt(12) == 0) {
                kind = Frame.Kind.BLANK;
            }
            slots.add(new Slot(
                    new RollId("R", 7),
                    List.of(i),
                    i + 1,
                    kind,
                    kind == Frame.Kind.BLANK ? OptionalDouble.empty() : OptionalDouble.of(over),
                    far && kind == Frame.Kind.EXPOSED,
                    isHalf ? 4 / 3.0 : 1.5,
                    Optional.empty()));
        }
        return slots;
    }

    private static List<Shot> film(Random random, List<Slot> slots, Set<Fault> faults, boolean isHalf) {
        List<Shot> film = new ArrayList<>();
        int number = 0;
        int last = faults.contains(Fault.PILE) || faults.contains(Fault.STOPPED)
                ? slots.size() / 4 + random.nextInt(slots.size() / 2)
                : slots.size() - 1;
        if (faults.contains(Fault.EXTRA_FIRST)) {
            film.add(new Shot(List.of(), random.nextInt(20) / 10.0 - 0.5, 0, false, false));
        }
        for (int i = 0; i <= last; i++) {
            Slot slot = slots.get(i);
            if (isHalf) {
                int next = Math.min(i + 1, slots.size() - 1);
                film.add(new Shot(
                        next == i ? List.of(i) : List.of(i, next),
                        (slot.overStops().getAsDouble()
                                        + slots.get(next).overStops().getAsDouble())
                                / 2,
                        ++number,
                        false,
                        false));
                i++;
            } else if (!(faults.contains(Fault.GOOD_ONLY) && (slot.isFarOff() || slot.kind() == Frame.Kind.BLANK))) {
                film.add(new Shot(
                        List.of(i),
                        slot.overStops().orElse(0),
                        slot.number(),
                        slot.kind() == Frame.Kind.BLANK,
                        faults.contains(Fault.PILE) && i == last));
            } else if (faults.contains(Fault.PILE) && i == last) {
                last = Math.min(last + 1, slots.size() - 2);
            }
        }
        if (faults.contains(Fault.EXTRA_LAST)) {
            film.add(new Shot(List.of(), random.nextInt(20) / 10.0 - 0.5, slots.size() + 1, false, false));
        }
        return film;
    }

    private static Tone tone(Random random, Shot shot, double slope, boolean isHalf) {
        if (shot.isBlack) {
            return new Tone(0.02, 0.01, false);
        }
        double noise = 0.045 * random.nextGaussian();
        if (shot.isPile) {
            return new Tone(Math.min(0.97, 0.9 + noise), 0.07, false);
        }
        return new Tone(
                Math.max(0.07, Math.min(0.93, 0.45 + slope * (shot.over - 0.5) + noise)),
                Math.max(0.08, 0.2 + 0.03 * random.nextGaussian()),
                isHalf && random.nextInt(10) > 0);
    }

    /** Whether a proposal says of every scan what is true of it. */
    boolean isMetBy(Proposal proposal) {
        for (int i = 0; i < scans.size(); i++) {
            if (!truth.get(i).equals(proposal.slot(i).map(Slot::frames).orElse(List.of()))) {
                return false;
            }
        }
        return true;
    }
}
