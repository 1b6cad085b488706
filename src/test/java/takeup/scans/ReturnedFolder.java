package takeup.scans;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import takeup.roll.Frame;
import takeup.roll.RollId;

/**
 * A folder as it comes back of regatta day's films, made anew from a seed and by other rules than the aligner's own:
 * the lab mends brightness frame by frame, subjects follow each other, tails are heavy. Two or three faults may meet.
 *
 * @param rolls the rolls that may be in it, in the order of loading
 * @param scans what lies in the folder, in natural order
 * @param truth for each scan the roll it is of, and the places of the frames it shows; empty for one nobody logged
 */
record ReturnedFolder(String kind, List<ScansByRoll.Candidate> rolls, List<Scan> scans, List<Shown> truth) {
    /** What a scan shows. */
    record Shown(RollId roll, List<Integer> frames) {}

    /** What is the matter with a folder. */
    enum Kind {
        ORDERLY,
        REVERSED,
        BLOWN,
        BRACKETED,
        ALIKE,
        MISSING,
        TWO_FILMS,
        HALF_FRAMES
    }

    private record Shot(Shown shown, double over, boolean isBlack) {}

    private record Film(ScansByRoll.Candidate roll, List<Shot> shots) {}

    static ReturnedFolder of(long seed) {
        Random random = new Random(seed * 0x9E3779B97F4A7C15L + 11);
        Kind kind = Kind.values()[(int) (seed % Kind.values().length)];
        int films = kind == Kind.TWO_FILMS ? 2 : 1;
        boolean isReversed = kind == Kind.REVERSED || kind != Kind.ORDERLY && random.nextInt(10) < 2;
        double aspect = kind == Kind.HALF_FRAMES ? 4 / 3.0 : random.nextBoolean() ? 1.5 : 1.35;
        List<Film> all = new ArrayList<>();
        for (int i = 1; i <= films; i++) {
            all.add(film(random, kind, new RollId("R", i), aspect, isReversed));
        }
        List<Scan> scans = new ArrayList<>();
        List<Shown> truth = new ArrayList<>();
        // What the lab does to the tones of a whole order.
        double slope = random.nextInt(10) < 3 ? 0 : 0.03 + 0.1 * random.nextDouble();
        double spread = 0.03 + 0.07 * random.nextDouble();
        double level = 0.38 + 0.16 * random.nextDouble();
        boolean isPerFilm = random.nextBoolean();
        for (Film film : all) {
            double subject = 0;
            int number = 0;
            for (Shot shot : film.shots) {
                subject = 0.5 * subject + spread * heavy(random);
                Tone tone = tone(random, shot, kind, level + slope * (shot.over - 0.5) + subject);
                String name = String.format(
                        Locale.ROOT,
                        isPerFilm ? "%d_%02d.jpg" : "regatta_%2$02d.jpg",
                        4711 + film.roll.roll().number(),
                        isPerFilm ? ++number : scans.size() + 1);
                int wide = kind == Kind.HALF_FRAMES && shot.shown.frames.size() == 2
                        ? 3000
                        : (int) Math.round(2000 * aspect);
                scans.add(new Scan(name, wide, 2000, tone));
                truth.add(shot.shown);
            }
        }
        return new ReturnedFolder(
                kind.name().toLowerCase(Locale.ROOT),
                all.stream().map(Film::roll).toList(),
                scans,
                truth);
    }

    private static Film film(Random random, Kind kind, RollId id, double aspect, boolean isReversed) {
        int holds = kind == Kind.HALF_FRAMES ? 72 : aspect < 1.4 ? 16 : random.nextBoolean() ? 36 : 24;
        boolean isPaired = kind == Kind.HALF_FRAMES && random.nextBoolean();
        int logged = random.nextInt(10) < 6 ? holds : holds - random.nextInt(holds / 3);
        List<Slot> slots = new ArrayList<>();
        List<Shot> shots = new ArrayList<>();
        double usual = 0.7 * random.nextDouble();
        double vary = kind == Kind.ALIKE ? 0.05 : 0.4 + 0.6 * random.nextDouble();
        int blown = kind == Kind.BLOWN ? random.nextInt(3) : -1;
        for (int i = 0; i < logged; i++) {
            double over = usual + vary * random.nextGaussian();
            if (kind == Kind.BRACKETED && i % 9 > 2) {
                over = usual + (i % 3 - 1);
            }
            boolean isAtEnd = blown == 0 ? i < 3 : blown == 1 ? i >= logged - 3 : i / 3 == 2;
            over += blown >= 0 && isAtEnd ? 3 : 0;
            over = Math.rint(3 * over) / 3;
            boolean isBlank = kind == Kind.MISSING && random.nextInt(15) == 0;
            slots.add(new Slot(
                    id,
                    List.of(i),
                    i + 1,
                    isBlank ? Frame.Kind.BLANK : Frame.Kind.EXPOSED,
                    isBlank || random.nextInt(12) == 0 ? OptionalDouble.empty() : OptionalDouble.of(over),
                    !isBlank && (over < -1.5 || over > 3.5),
                    aspect,
                    Optional.empty()));
            // The meter was read in another place, or the shutter was late.
            double truly = over + 0.25 * heavy(random);
            shots.add(new Shot(new Shown(id, List.of(i)), truly, isBlank));
        }
        if (isPaired) {
            List<Shot> pairs = new ArrayList<>();
            for (int i = 0; i < shots.size(); i += 2) {
                boolean isLone = i + 1 == shots.size();
                pairs.add(new Shot(
                        new Shown(id, isLone ? List.of(i) : List.of(i, i + 1)),
                        isLone ? shots.get(i).over : (shots.get(i).over + shots.get(i + 1).over) / 2,
                        false));
            }
            shots = pairs;
        } else if (logged <= holds - 1 && random.nextInt(6) == 0) {
            shots.add(random.nextBoolean() ? 0 : shots.size(), new Shot(new Shown(id, List.of()), usual, false));
        } else if (logged == holds && random.nextInt(10) == 0) {
            shots.add(random.nextBoolean() ? 0 : shots.size(), new Shot(new Shown(id, List.of()), usual, false));
        }
        if (kind == Kind.MISSING) {
            leaveOut(random, shots);
        }
        if (isReversed) {
            Collections.reverse(shots);
        }
        return new Film(new ScansByRoll.Candidate(id, slots, holds), shots);
    }

    /** Blank ones as many labs do, a single one, the end of the film, or a strip from the middle. */
    private static void leaveOut(Random random, List<Shot> shots) {
        switch (random.nextInt(4)) {
            case 0 -> shots.removeIf(Shot::isBlack);
            case 1 -> shots.remove(random.nextInt(shots.size()));
            case 2 ->
                shots.subList(shots.size() - 1 - random.nextInt(shots.size() / 3), shots.size())
                        .clear();
            default -> {
                int from = random.nextInt(shots.size() - 4);
                shots.subList(from, from + 2 + random.nextInt(3)).clear();
            }
        }
    }

    private static Tone tone(Random random, Shot shot, Kind kind, double bright) {
        if (shot.isBlack) {
            return new Tone(0.02, 0.01, false);
        }
        boolean isDivided = kind == Kind.HALF_FRAMES && shot.shown.frames.size() == 2 && random.nextInt(10) > 0;
        if (shot.over > 3 && random.nextInt(10) < 7 || random.nextInt(150) == 0) {
            return new Tone(0.82 + 0.15 * random.nextDouble(), 0.02 + 0.08 * random.nextDouble(), isDivided);
        }
        if (shot.over < -2.5 && random.nextBoolean() || random.nextInt(150) == 0) {
            return new Tone(0.04 + 0.12 * random.nextDouble(), 0.02 + 0.08 * random.nextDouble(), isDivided);
        }
        double contrast = 0.19 + 0.04 * heavy(random);
        return new Tone(Math.max(0.04, Math.min(0.97, bright)), Math.max(0.03, Math.min(0.4, contrast)), isDivided);
    }

    /** A draw about 0 with a deviation near 1 and now and then far out: Student's t with five degrees of freedom. */
    private static double heavy(Random random) {
        double squares = 0;
        for (int i = 0; i < 5; i++) {
            double one = random.nextGaussian();
            squares += one * one;
        }
        return random.nextGaussian() / Math.sqrt(squares / 3);
    }

    /** Whether what was proposed of one roll is what is true of its scans. */
    boolean isMetBy(RollId roll, Proposal proposal) {
        List<String> own = new ArrayList<>();
        for (int i = 0; i < scans.size(); i++) {
            if (truth.get(i).roll.equals(roll)) {
                own.add(scans.get(i).name() + truth.get(i).frames);
            }
        }
        List<String> said = new ArrayList<>();
        for (int i = 0; i < proposal.scans().size(); i++) {
            said.add(proposal.scans().get(i).name()
                    + proposal.slot(i).map(Slot::frames).orElse(List.of()));
        }
        return own.equals(said);
    }
}
