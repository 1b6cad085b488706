package takeup.prompt;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import takeup.roll.Place;
import takeup.roll.Scene;
import takeup.roll.SettingPatch;

/**
 * Who and where at the end of a line, letter for letter: {@code 8 125 with Anna, Ben at boathouse}.
 *
 * @param head the line in front of it, without its note
 * @param people who is on the frames; empty where that is not said
 * @param place where they were; empty where that is not said
 */
public record SceneWords(String head, Optional<List<String>> people, Optional<Place> place) {
    private static final int LONGEST = 80;
    private static final int MOST = 30;

    /** An aperture or a time. */
    private static final String EXPOSURE = "(?i)(f/?|1/)?\\d[\\d.]*s?";

    /** Nothing said. */
    public static final SceneWords NOTHING = new SceneWords("", Optional.empty(), Optional.empty());

    /** Of a whole line; what stands behind its semicolon is a note. */
    public static SceneWords of(String line) {
        int semicolon = line.indexOf(';');
        List<String> words = Tokens.split(semicolon < 0 ? line : line.substring(0, semicolon));
        int at = 1;
        while (at < words.size() && !isSign(words, at)) {
            at++;
        }
        SceneWords said = new SceneWords(
                String.join(" ", words.subList(0, Math.min(at, words.size()))), Optional.empty(), Optional.empty());
        while (at < words.size()) {
            int end = at + 1;
            while (end < words.size() && !isSign(words, end)) {
                end++;
            }
            said = said.and(DateTimeParser.small(words.get(at)), String.join(" ", words.subList(at + 1, end)));
            at = end;
        }
        return said;
    }

    /** Whether names or a place begin here; {@code f8 at 1/250} speaks of no place. */
    private static boolean isSign(List<String> words, int at) {
        String small = DateTimeParser.small(words.get(at));
        // The pattern is made where the word stands, since it would cost milliseconds at the very first key.
        return small.equals("with")
                || small.equals("at")
                        && !(at + 1 < words.size() && words.get(at + 1).matches(EXPOSURE));
    }

    private SceneWords and(String sign, String words) {
        if (sign.equals("with") ? people.isPresent() : place.isPresent()) {
            throw new CommandRejected(sign + " is said twice");
        }
        return sign.equals("with")
                ? new SceneWords(head, Optional.of(people(words)), place)
                : new SceneWords(head, people, Optional.of(place(words)));
    }

    /** Names behind {@code with}, with commas or {@code and} between them; none for {@code nobody}. */
    public static List<String> people(String words) {
        List<String> names = new ArrayList<>();
        for (String name : words.split(",|(?i:\\s+and\\s+)", -1)) {
            if (!name.isBlank()) {
                names.add(shortEnough(name.strip(), "name"));
            }
        }
        if (names.isEmpty()) {
            throw new CommandRejected("who? such as with Anna, Ben; with nobody takes them off");
        }
        if (names.size() > MOST) {
            throw new CommandRejected("up to " + MOST + " names, this line has " + names.size());
        }
        String only = DateTimeParser.small(names.get(0));
        return names.size() == 1 && (only.equals("nobody") || only.equals("off")) ? List.of() : names;
    }

    /** A place behind {@code at}; an unknown one for {@code nowhere}. */
    public static Place place(String words) {
        if (words.isBlank()) {
            throw new CommandRejected("where? such as at boathouse; at nowhere takes it off");
        }
        String small = DateTimeParser.small(words);
        return small.equals("nowhere") || small.equals("off")
                ? Place.UNKNOWN
                : Place.named(shortEnough(words, "place"));
    }

    private static String shortEnough(String text, String what) {
        if (text.length() > LONGEST) {
            throw new CommandRejected(
                    "a " + what + " holds up to " + LONGEST + " characters, this one has " + text.length());
        }
        return text;
    }

    public boolean isNothing() {
        return people.isEmpty() && place.isEmpty();
    }

    /** The same with names and places as they were spelled before, whatever the case of their letters now. */
    public SceneWords spelledAs(Collection<String> known, Collection<String> places) {
        return new SceneWords(
                head,
                people.map(all ->
                        all.stream().map(it -> spelled(it, known)).distinct().toList()),
                place.map(it ->
                        it.name().isEmpty() ? it : Place.named(spelled(it.name().get(), places))));
    }

    private static String spelled(String typed, Collection<String> known) {
        return known.stream().filter(typed::equalsIgnoreCase).findFirst().orElse(typed);
    }

    /** A scene with what is said in place of what was. */
    public Scene on(Scene before) {
        Scene scene = people.isPresent() ? before.with(people.get()) : before;
        return place.isPresent() ? scene.with(place.get()) : scene;
    }

    /** As a change of frames. */
    public SettingPatch change() {
        SettingPatch change = people.map(SettingPatch::people).orElse(SettingPatch.NOTHING);
        return place.map(SettingPatch::place).map(change::and).orElse(change);
    }

    /** In words: {@code with Anna, Ben at boathouse}; {@code with nobody} where they are taken off. */
    public String words() {
        String who = people.map(it -> "with " + (it.isEmpty() ? "nobody" : String.join(", ", it)))
                .orElse("");
        String where = place.map(it -> "at " + it.name().orElse("no place that was named"))
                .orElse("");
        return who + (who.isEmpty() || where.isEmpty() ? "" : " ") + where;
    }
}
