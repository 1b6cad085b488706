package takeup.dispatch;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import takeup.history.ShootState;
import takeup.kit.Kit;
import takeup.text.Nearest;

/**
 * What people type who do not know the words: {@code m8 250}, {@code 8/250}, {@code spot 9 z3}, {@code finish}. What
 * has one meaning is taken; what could be meant is offered as the line to type. Asked only for lines that are refused.
 */
final class NaturalLine {
    private static final String NUMBER = "(\\d+(?:\\.\\d+)*)";

    /** How a line is put in the program's own words. */
    private record Rule(Pattern typed, String line) {
        static Rule of(String typed, String line) {
            return new Rule(Pattern.compile("^(?:" + typed + ")$"), line);
        }

        Optional<String> apply(String text) {
            Matcher matcher = typed.matcher(text);
            return matcher.matches() ? Optional.of(matcher.replaceFirst(line)) : Optional.empty();
        }
    }

    /** One meaning each. */
    private static final List<Rule> TAKEN = List.of(
            Rule.of("m([.\\d].*)", "m $1"),
            Rule.of("(?:meter|metered|light|reading) (\\d.*)", "m $1"),
            Rule.of("((?:spot|reflected|incident|sky|camera) .*)", "m $1"),
            Rule.of("ev ?(-?\\d.*)", "m ev$1"),
            Rule.of("(-?\\d[\\d.]*) ?ev", "m ev$1"),
            Rule.of("(\\d+) ?(?:lux|lx)", "m $1lx"),
            Rule.of("(\\d+) ?(fc|cd)", "m $1$2"),
            Rule.of("flash f?/?" + NUMBER + "(.*)", "m flash $1$2"),
            Rule.of("(\\d+) ?(?:sec|secs|seconds?)", "$1s"),
            Rule.of("(?:full )?(?:sun|sunny)", "m sky sun"),
            Rule.of("(?:open |in the )?(shade|hazy|cloudy|overcast|snow)", "m sky $1"),
            Rule.of("f?/?" + NUMBER + " ?(?:/|, | at ) ?(?:1/)?(\\d+)", "f$1 1/$2"),
            Rule.of("(?:1/)?(\\d+) ?(?:, | at ) ?f/?" + NUMBER, "f$2 1/$1"),
            Rule.of("\\. ?x?(\\d+)", "x$1"),
            Rule.of("(?:again|same|same again) x?(\\d+)", "x$1"),
            Rule.of("(\\d+) (?:more|frames|shots|again)", "x$1"),
            Rule.of("same|again|same again|another|another one|next|next frame|shot|click", "."),
            Rule.of("(nd ?[\\d.]+|yellow|yellow-green|orange|red|green|skylight|warming)(?: filter)?", "filter $1"),
            Rule.of("(?:filter )?polari[sz]er", "filter polariser"),
            Rule.of("(?:no|without|remove) filter|filter (?:none|no|0)", "filter off"),
            Rule.of("bulb|timer|stopwatch|start timer|stop timer|start|stop", "time"),
            Rule.of("bulb (\\d+) ?s?", "set b$1s"),
            Rule.of("(?:aperture|f-stop) f?/?" + NUMBER, "set f$1"),
            Rule.of("(?:shutter|shutter speed) (?:1/)?(\\d+)", "set 1/$1"),
            Rule.of("(?:time|shutter|exposure) (\\d+) ?(s|sec|seconds|min|m)", "set $1$2"),
            Rule.of("finish|finished|finish roll|finish the roll|end roll|roll finished|take out|close roll", "unload"),
            Rule.of("new roll|next roll|reload|new film", "load"),
            Rule.of("y|ok|yeah|yep|sure", "yes"),
            Rule.of("n|nope", "no"),
            Rule.of("q|:q|exit|bye|leave|end program", "quit"),
            Rule.of("no tripod|hand-?held", "tripod off"),
            Rule.of("no flash|without flash", "flash off"),
            Rule.of("push ?\\+?(\\d.*)", "push $1"),
            Rule.of("pull ?-?(\\d.*)", "pull $1"),
            Rule.of("status|state|info|frames left|left|how many left|how many", "say"),
            Rule.of("last|last reading|light", "m"),
            Rule.of("list|list frames|show frames", "frames"),
            Rule.of("list rolls|show rolls", "rolls"),
            Rule.of("(?:search|search for|look for|find me|show me) (.+)", "find $1"),
            Rule.of("end|end of day|end of the day|eod|day end|hand over|handover", "day-end"),
            Rule.of("counter (?:is|shows|says) (\\d+)", "counter $1"),
            Rule.of("(?:double|multiple) exposure", "double"),
            Rule.of("frame (\\d+) was (.*)", "fix $1 $2"),
            Rule.of("(?:frame )?(\\d+) (?:is |was )?(?:lost|fogged)", "lost $1"),
            Rule.of("(?:blank|wasted) frame|wasted", "blank"),
            Rule.of("(\\d+) ?mm lens|lens (\\d+) ?mm", "lens $1$2"),
            Rule.of("u|undo (?:that|it|last)|oops", "undo"));

    /** What could be meant; it is typed before it is done. */
    private static final List<Rule> OFFERED = List.of(
            Rule.of("(?:(?:iso|asa|ei|rated|rate|index) ?@?|@)(\\d+)", "fix roll @$1"),
            Rule.of("(?:delete|del|remove|rm|erase)(?: frame)? (\\d+)", "drop $1"),
            Rule.of("(?:delete|del|remove|rm|erase|wrong|mistake|cancel|no that).*", "undo"),
            Rule.of("(?:missed|forgot|forgotten) (\\d+).*", "unlogged x$1"),
            Rule.of("(?:change|correct|edit) (?:frame )?(\\d+) (.*)", "fix $1 $2"),
            Rule.of("wind(?: back)?", "rewind"),
            Rule.of("flash", "flash on"),
            Rule.of("tripod", "tripod on"),
            Rule.of("([+-]\\d.*)", "bias $1"),
            Rule.of("(\\d[\\d/]*) (?:stops? )?over(?:exposed?)?", "bias +$1"),
            Rule.of("(\\d[\\d/]*) (?:stops? )?under(?:exposed?)?", "bias -$1"),
            Rule.of("(\\D.*) at (\\d{1,2}:\\d\\d)", "plan $2 $1"),
            Rule.of("(?:comment|remark|text|write) (.*)", "; $1"),
            Rule.of("(?:client|customer) (.*)", "shoot Portraits client $1"),
            Rule.of("(?:theme|colours?|colors?|dark|light mode|bright)", "theme sun"),
            Rule.of("(?:search|how|what|keys|commands).*", "help"));

    private NaturalLine() {}

    /** A line of the program's own words that means the same; empty where none surely does. */
    static Optional<String> meant(String line, ShootState s) {
        String typed = line.toLowerCase(Locale.ROOT);
        return kit(typed, s).or(() -> first(TAKEN, typed));
    }

    /** A line that could be meant. */
    static Optional<String> offered(String line, ShootState s) {
        String typed = line.toLowerCase(Locale.ROOT);
        boolean isCamera = s.kit().keys(Kit.Sort.CAMERAS).contains(typed.split(" ")[0]);
        return isCamera ? Optional.of("cam " + typed) : first(OFFERED, typed).or(() -> spelled(typed));
    }

    /** The same with its first word spelled as it is known. */
    private static Optional<String> spelled(String typed) {
        String word = typed.split(" ")[0];
        return Character.isLetter(word.charAt(0))
                ? Nearest.to(word, CommandTable.firstWords())
                        .filter(it -> !it.equals(word))
                        .map(it -> it + typed.substring(word.length()))
                : Optional.empty();
    }

    private static Optional<String> first(List<Rule> rules, String typed) {
        for (Rule rule : rules) {
            Optional<String> line = rule.apply(typed);
            if (line.isPresent()) {
                return line;
            }
        }
        return Optional.empty();
    }

    /** A camera or a stock by its key alone, or behind a word that is none here. */
    private static Optional<String> kit(String typed, ShootState s) {
        String[] words = typed.split(" ");
        int at = switch (words[0]) {
            case "camera", "use", "take", "body", "film", "stock", "switch" -> 1;
            default -> 0;
        };
        at += at < words.length && words[at].equals("to") ? 1 : 0;
        if (at >= words.length) {
            return Optional.empty();
        }
        String rest = String.join(" ", List.of(words).subList(at, words.length));
        // A number alone is rather a slip in a frame than another camera.
        boolean isNamed = at > 0 || !Character.isDigit(words[at].charAt(0));
        if (isNamed && s.kit().keys(Kit.Sort.CAMERAS).contains(words[at])) {
            return Optional.of("cam " + rest);
        }
        return s.kit().keys(Kit.Sort.STOCKS).contains(words[at]) ? Optional.of("load " + rest) : Optional.empty();
    }
}
