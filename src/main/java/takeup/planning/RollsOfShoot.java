package takeup.planning;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.day.ShootInfo;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.roll.Assignment;
import takeup.roll.NoteEvent;
import takeup.roll.Roll;
import takeup.text.English;
import takeup.text.Nearest;

/**
 * The rolls that are in a camera when a shoot is opened. A roll belongs to the shoot that it was loaded for: it comes
 * to another one only where that one is the same under a better name, or where it is asked about.
 *
 * @param shoot the shoot that is opened
 * @param own rolls that are its own without a question
 * @param asked rolls of another shoot that were likely meant for this one: unused ones, or those of a name mistyped
 * @param staying rolls of another shoot that stay with it
 */
record RollsOfShoot(Assignment shoot, List<Roll> own, List<Roll> asked, List<Roll> staying) {
    static RollsOfShoot of(ShootState state, Optional<ShootInfo> before, ShootInfo opened, OffsetDateTime now) {
        Assignment shoot = opened.assignment();
        Optional<Assignment> last = before.map(ShootInfo::assignment);
        List<Roll> own = new ArrayList<>();
        List<Roll> asked = new ArrayList<>();
        List<Roll> staying = new ArrayList<>();
        for (Roll roll : state.openRolls()) {
            if (roll.assignment().isEmpty()) {
                boolean isOfToday = roll.loadedAt().toLocalDate().equals(now.toLocalDate());
                if (roll.frames().isEmpty() || isOfToday) {
                    own.add(roll);
                }
            } else if (isSame(roll.assignment().get(), last, shoot)) {
                own.add(roll);
            } else if (roll.frames().isEmpty() || isMistyped(roll.assignment().get(), last, shoot)) {
                asked.add(roll);
            } else {
                staying.add(roll);
            }
        }
        return new RollsOfShoot(shoot, own, asked, staying);
    }

    /** The shoot that is open already, on another day or for somebody; or one that is opened again. */
    private static boolean isSame(Assignment ofRoll, Optional<Assignment> last, Assignment shoot) {
        boolean isOpen = last.filter(ofRoll::isSameShoot).isPresent();
        return ofRoll.isSameShoot(shoot) || isOpen && ofRoll.name().equalsIgnoreCase(shoot.name());
    }

    private static boolean isMistyped(Assignment ofRoll, Optional<Assignment> last, Assignment shoot) {
        String before = ofRoll.name().toLowerCase(Locale.ROOT);
        String now = shoot.name().toLowerCase(Locale.ROOT);
        boolean isAlike = now.startsWith(before)
                || before.startsWith(now)
                || Nearest.to(now, List.of(before)).isPresent();
        return isAlike && last.filter(ofRoll::isSameShoot).isPresent();
    }

    /** The entries that make rolls the shoot's, where they are not yet. */
    List<JournalEntry> assigned(List<Roll> rolls) {
        return rolls.stream()
                .filter(it -> !it.assignment().equals(Optional.of(shoot)))
                .map(it -> (JournalEntry) new JournalEntry.OnRoll(it.id(), new NoteEvent.ShootAssigned(shoot)))
                .toList();
    }

    /** What is said of the rolls that stay with another shoot, with a blank in front. */
    String stays() {
        Map<String, List<String>> byShoot = new LinkedHashMap<>();
        staying.forEach(
                it -> byShoot.computeIfAbsent(it.assignment().orElseThrow().name(), name -> new ArrayList<>())
                        .add(where(it)));
        StringBuilder words = new StringBuilder();
        byShoot.forEach((name, rolls) -> words.append(" ")
                .append(String.join(" and ", rolls))
                .append(rolls.size() == 1 ? " stays with " : " stay with ")
                .append(name)
                .append("; frames from now on are noted as ")
                .append(shoot.name())
                .append("."));
        return words.toString();
    }

    /** The question about the rolls that were likely meant for this shoot. */
    Optional<Outcome.NeedsConfirmation> question(CommandContext context) {
        if (asked.isEmpty()) {
            return Optional.empty();
        }
        List<String> all = asked.stream().map(RollsOfShoot::loadedFor).toList();
        boolean isOne = asked.size() == 1;
        return Optional.of(new Outcome.NeedsConfirmation(
                String.join("; ", all) + ". " + (isOne ? "Is it" : "Are they") + " for " + shoot.name() + " now? y/n",
                answer(context, assigned(asked), " for " + shoot.name()),
                Optional.of(answer(context, List.of(), " as loaded"))));
    }

    private Outcome.Accepted answer(CommandContext context, List<JournalEntry> entries, String how) {
        List<String> ids = asked.stream().map(it -> it.id().toString()).toList();
        return context.reply(entries)
                .event("shoot")
                .says(
                        String.join(", ", ids)
                                + (entries.isEmpty() ? " stay" + (ids.size() == 1 ? "s" : "") : "")
                                + how,
                        ".")
                .accepted();
    }

    private static String loadedFor(Roll roll) {
        int frames = roll.framesUsed();
        return where(roll) + " was loaded for "
                + roll.assignment().orElseThrow().name() + " and has "
                + (frames == 0 ? "no frame yet" : English.count(frames, "frame"));
    }

    private static String where(Roll roll) {
        return roll.id() + " in " + roll.place();
    }
}
