package takeup.day;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * The must-have moments that are over, and which rolls hold them: one that is on a single roll is lost with that roll.
 */
public final class MustHaves {
    private MustHaves() {}

    /** A moment and the rolls that have frames from it. */
    public record Held(KeyMoment moment, Set<RollId> rolls) {}

    /**
     * What is held of each must-have moment that has begun. A frame is from a moment if it was made after it began,
     * before the next one did, and at most an hour later.
     *
     * @param rolls all rolls of the day, the finished ones too
     */
    public static List<Held> of(Plan plan, List<Roll> rolls, LocalDateTime now) {
        List<Held> all = new ArrayList<>();
        for (int at = 0; at < plan.moments().size(); at++) {
            KeyMoment moment = plan.moments().get(at);
            if (!moment.must() || moment.at().isAfter(now)) {
                continue;
            }
            LocalDateTime end = moment.at().plusHours(1);
            for (KeyMoment later : plan.moments().subList(at + 1, plan.moments().size())) {
                end = later.at().isAfter(moment.at()) && later.at().isBefore(end) ? later.at() : end;
            }
            Set<RollId> held = new LinkedHashSet<>();
            for (Roll roll : rolls) {
                if (roll.state() != Roll.State.WITHDRAWN && hasFrames(roll, moment.at(), end)) {
                    held.add(roll.id());
                }
            }
            all.add(new Held(moment, held));
        }
        return all;
    }

    private static boolean hasFrames(Roll roll, LocalDateTime from, LocalDateTime to) {
        for (Frame frame : roll.frames()) {
            Optional<LocalDateTime> at = frame.exposure().at().map(it -> it.toLocalDateTime());
            if (frame.mayComeBack()
                    && frame.kind() != Frame.Kind.LOST
                    && at.isPresent()
                    && !at.get().isBefore(from)
                    && at.get().isBefore(to)) {
                return true;
            }
        }
        return false;
    }
}
