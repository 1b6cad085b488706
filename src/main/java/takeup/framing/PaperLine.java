package takeup.framing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.CommandContext;
import takeup.command.FrameNumbering;
import takeup.command.KnownNames;
import takeup.prompt.CommandRejected;
import takeup.prompt.DateTimeParser;
import takeup.prompt.FrameArguments;
import takeup.prompt.SceneWords;
import takeup.prompt.Token;
import takeup.prompt.Tokens;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/**
 * A line of a paper form, {@code 7 5.6 125 veil}: the setting, then words, letter for letter; or who and where, with
 * the words behind a semicolon, {@code 7 5.6 125 lens 28 with Anna at boathouse; veil}.
 *
 * @param frames the frames that it is about
 * @param change what it says of them
 * @param note what follows the setting
 */
record PaperLine(FrameRange frames, SettingPatch change, Optional<String> note) {
    private static final String BEGINS = "a line of the form begins with the frame's number: 7 5.6 125 and words";

    static PaperLine of(Arguments arguments, Roll roll, CommandContext context) {
        int semicolon = arguments.line().indexOf(';');
        List<String> words = DateTimeParser.of(
                semicolon < 0 ? arguments.line() : arguments.line().substring(0, semicolon));
        FrameRange frames = frames(bare(words.get(0)));
        int at = 1;
        List<String> set = new ArrayList<>();
        int same = 0;
        while (at < words.size()
                && (isLens(words, at)
                        || isSame(words.get(at))
                        || !Tokens.token(point(words.get(at))).is(Token.Kind.WORD))) {
            if (isLens(words, at)) {
                set.add("lens");
                at++;
                set.add(DateTimeParser.small(words.get(at)));
            } else if (isSame(words.get(at))) {
                same++;
            } else {
                set.add(point(words.get(at)));
            }
            at++;
        }
        Optional<SettingPatch> lens = Correction.lens(roll, context).map(SettingPatch::lens);
        FrameArguments said = FrameArguments.ofFrame(
                set, roll.camera(), lens.map(Setting.NONE::with).orElse(Setting.NONE));
        if (said.count().isPresent() || said.question().isPresent()) {
            throw new CommandRejected(
                    said.question().orElse("a count is not taken here; several frames are 7-9 5.6 125"));
        }
        SettingPatch change = same == 0 ? said.change() : above(roll, frames.from(), same, said.change());
        Optional<Frame.Kind> kind = at < words.size()
                ? Frame.Kind.named(DateTimeParser.small(words.get(at)))
                        .filter(it -> it != Frame.Kind.EXPOSED && it != Frame.Kind.SLATE)
                : Optional.empty();
        if (kind.isPresent()) {
            if (kind.get() != Frame.Kind.LOST && !change.isNothing()) {
                throw new CommandRejected(kind.get() + " says that there is no setting; leave out one of the two");
            }
            change = change.and(SettingPatch.kind(kind.get()));
            at++;
        }
        boolean isSet = change.aperture().isPresent() || change.time().isPresent();
        if (isSet && lens.isPresent()) {
            change = lens.get().and(change);
        }
        SceneWords scene = scene(words.subList(at, words.size()), context);
        if (!scene.isNothing()) {
            change = change.and(scene.change());
            at = words.size();
        }
        return new PaperLine(frames, change, note(words.subList(at, words.size()), arguments.note()));
    }

    private static boolean isLens(List<String> words, int at) {
        return at + 1 < words.size() && words.get(at).equalsIgnoreCase("lens");
    }

    /** Who and where, where that stands before all other words; behind them it is part of the note. */
    private static SceneWords scene(List<String> words, CommandContext context) {
        String first = words.isEmpty() ? "" : DateTimeParser.small(words.get(0));
        return first.equals("with") || first.equals("at")
                ? KnownNames.of("- " + String.join(" ", words), context)
                : SceneWords.NOTHING;
    }

    private static Optional<String> note(List<String> words, Optional<String> typed) {
        String note = String.join(" ", words);
        String all = note + (note.isEmpty() || typed.isEmpty() ? "" : "; ") + typed.orElse("");
        return Optional.of(all).filter(it -> !it.isEmpty());
    }

    private static FrameRange frames(String word) {
        int dash = word.indexOf('-');
        int from = FrameNumbering.number(dash > 0 ? word.substring(0, dash) : word, BEGINS);
        int to = dash > 0 ? FrameNumbering.number(word.substring(dash + 1), BEGINS) : from;
        if (to < from) {
            throw new CommandRejected(word + " runs backwards");
        }
        return new FrameRange(from, to);
    }

    private static String bare(String word) {
        boolean isMarked = word.length() > 1
                && (word.endsWith(".") || word.endsWith(")") || word.endsWith(":") || word.endsWith(","));
        return isMarked ? word.substring(0, word.length() - 1) : word;
    }

    /** A word as a setting is typed: small, a decimal comma as a point. */
    private static String point(String word) {
        return DateTimeParser.small(word).replace(',', '.');
    }

    private static boolean isSame(String word) {
        return word.equals("\"")
                || word.equals("''")
                || word.equals("\u2033")
                || word.equals("\u201d")
                || word.equals("\u3003");
    }

    /**
     * What a ditto mark stands for: both values of the frame above where it stands alone, else the one that is not
     * written.
     */
    private static SettingPatch above(Roll roll, int number, int same, SettingPatch said) {
        int at = roll.indexOf(number - 1);
        Setting above = at < 0 ? Setting.NONE : roll.frames().get(at).exposure().setting();
        boolean both = said.aperture().isEmpty() && said.time().isEmpty();
        boolean aperture = both || said.aperture().isEmpty();
        boolean time = both || said.time().isEmpty();
        if (same > 2
                || !aperture && !time
                || aperture && above.aperture().isEmpty()
                || time && above.time().isEmpty()) {
            throw new CommandRejected("nothing stands above that \" could repeat");
        }
        SettingPatch change = said;
        change = aperture ? change.and(SettingPatch.aperture(above.aperture().orElseThrow())) : change;
        return time ? change.and(SettingPatch.time(above.time().orElseThrow())) : change;
    }
}
