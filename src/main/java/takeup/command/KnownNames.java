package takeup.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import takeup.day.ShootInfo;
import takeup.history.ShootState;
import takeup.prompt.SceneWords;
import takeup.roll.Frame;
import takeup.roll.Place;
import takeup.roll.Roll;
import takeup.roll.Scene;

/**
 * The people and places of a day and of the roll in hand: what is typed of them is completed, and spelled as before.
 */
public final class KnownNames {
    private KnownNames() {}

    /** Who is kept for frames to come, then who is on frames, the newest first. */
    public static List<String> people(ShootState state, LocalDate today) {
        Set<String> all = new LinkedHashSet<>(state.day().scene().people());
        scenes(state, today).forEach(it -> all.addAll(it.people()));
        return List.copyOf(all);
    }

    /** The place that is kept, that of the shoot, then those of frames, the newest first. */
    public static List<String> places(ShootState state, LocalDate today) {
        Set<String> all = new LinkedHashSet<>();
        state.day().scene().place().name().ifPresent(all::add);
        state.day().shoot().map(ShootInfo::place).flatMap(Place::name).ifPresent(all::add);
        scenes(state, today).forEach(it -> it.place().name().ifPresent(all::add));
        return List.copyOf(all);
    }

    /** What a line says of who and where, spelled as it was before. */
    public static SceneWords of(String line, CommandContext context) {
        SceneWords said = SceneWords.of(line);
        LocalDate today = context.now().toLocalDate();
        return said.isNothing() ? said : said.spelledAs(people(context.state(), today), places(context.state(), today));
    }

    private static List<Scene> scenes(ShootState state, LocalDate today) {
        List<Frame> frames = new ArrayList<>();
        for (Roll roll : state.rolls().values()) {
            boolean isInHand =
                    state.rollInHand().filter(it -> it.id().equals(roll.id())).isPresent();
            roll.frames().stream()
                    .filter(it -> isInHand
                            || it.exposure()
                                    .at()
                                    .filter(at -> at.toLocalDate().equals(today))
                                    .isPresent())
                    .filter(it -> !it.scene().equals(Scene.NONE))
                    .forEach(frames::add);
        }
        frames.sort(Comparator.comparing((Frame it) -> it.exposure()
                        .at()
                        .map(at -> at.toInstant().toEpochMilli())
                        .orElse(0L))
                .reversed());
        return frames.stream().map(Frame::scene).toList();
    }
}
