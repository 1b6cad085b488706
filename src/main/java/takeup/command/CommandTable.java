package takeup.command;

import java.util.List;
import java.util.Optional;

/** All words that are understood on the prompt: for reading, help, completion and {@code takeup keys}. */
public final class CommandTable {
    /**
     * A word of the prompt.
     *
     * @param word the first word of a line
     * @param usage how the line is typed
     * @param does what it does, in a few words
     */
    public record Word(String word, String usage, String does) {
        /** The first form, as an example: {@code fix 7 4 125}. */
        public String example() {
            int end = usage.length();
            for (String mark : EXAMPLE_ENDS) {
                int at = usage.indexOf(mark);
                end = at >= 0 ? Math.min(end, at) : end;
            }
            return usage.substring(0, end);
        }
    }

    private static final List<String> EXAMPLE_ENDS = List.of(" · ", "  ");

    /** The words, the usual ones first. */
    public static final List<Word> WORDS = List.of(
            new Word("4 125", "4 125 ; words", "one frame at f/4 and 1/125; what is left out stays as set"),
            new Word(".", ".   or  x5", "one more frame, or five, with the setting in hand"),
            new Word(";", "; words", "a note on the newest frame"),
            new Word("n", "n words", "a note on the newest frame"),
            new Word(
                    "m",
                    "m 5.6 125 · m ev11.3 · m low 5.6 125 and 11 125",
                    "a light reading; alone: the last one again"),
            new Word("set", "set 4 125", "changes the setting in hand, logs nothing"),
            new Word(
                    "load",
                    "load cn400 @200 · load bw400 120 @800 push 1 frames 24",
                    "puts a film in; without a stock the same as before"),
            new Word("unload", "unload", "finishes the roll and writes its JSON"),
            new Word("rewind", "rewind", "a 35mm roll comes out before its end; load r3 goes on with it"),
            new Word("cam", "cam 645 2", "takes up a camera, and a back of it"),
            new Word("back", "back 2", "takes up another back"),
            new Word("undo", "undo  (u)", "takes back the last line that changed anything"),
            new Word("redo", "redo", "does again what undo took back"),
            new Word(
                    "fix",
                    "fix 7 4 125 · fix 3-5 filter yellow · fix roll @400",
                    "corrects frames, or what was said of the roll"),
            new Word("insert", "insert 7 4 125", "a frame was forgotten before frame 7"),
            new Word("drop", "drop 7", "frame 7 never happened; later ones are renumbered"),
            new Word("move", "move 3-5 cam 645 2", "these frames were shot on that camera's roll"),
            new Word("counter", "counter 9", "the camera's counter shows 9 for the next frame"),
            new Word("blank", "blank x2", "wasted frames"),
            new Word("unlogged", "unlogged x3", "exposed, but nobody wrote them down"),
            new Word("slate", "slate · slate clock", "a sheet with the roll's number, to photograph as a frame"),
            new Word("tally", "tally x3", "counts frames that are written down later; Ctrl-T counts one"),
            new Word("paper", "paper r1", "reads a paper form back, a line a frame: 7 5.6 125 veil; done ends it"),
            new Word("done", "done", "ends the reading of a paper form, and names the lines that did not fit"),
            new Word("rating", "rating", "a rating test: a bracket with cards, frame by frame"),
            new Word("lost", "lost 7", "frame 7 is fogged or lost"),
            new Word("double", "double", "the next exposure goes on the same frame"),
            new Word("meter", "meter hand · meter preset 1/125", "the meter in hand, and the time it is preset to"),
            new Word("hold", "hold f2.8 · hold 1/250 · hold off", "suggestions keep this aperture or time"),
            new Word("bias", "bias +1/3 · bias 0", "deliberate deviation; + is more light on the film"),
            new Word("filter", "filter yellow and nd0.9 · filter off", "what is on the lens, and the light it takes"),
            new Word("ext", "ext 110mm · ext off", "from lens to film, the whole draw"),
            new Word("tube", "tube 30mm", "what is added to the lens"),
            new Word("mag", "mag 0.5 · mag 0.5m", "magnification on the film, or the distance it follows from"),
            new Word("lens", "lens 80", "the lens on the camera"),
            new Word(
                    "flash",
                    "flash on · flash gn36m 3m 1/4",
                    "flash is on or off, or its guide number, distance and power"),
            new Word("tripod", "tripod on", "a tripod lifts the hand-held limit"),
            new Word("why", "why", "why this setting is the best, and what else would do"),
            new Word("time", "time", "starts the bulb timer; again, stops it and puts the time in hand"),
            new Word("push", "push 1", "development of the whole roll, longer"),
            new Word("pull", "pull 1", "development of the whole roll, shorter"),
            new Word("normal", "normal", "development as usual"),
            new Word("note", "note the eight in two rows · note r7 words", "a note on the roll"),
            new Word(
                    "condition",
                    "condition torn at the rewind",
                    "what the lab must know: torn, opened, stuck, partial"),
            new Word("say", "say", "the state in words"),
            new Word("quiet", "quiet hand-held", "one warning silenced for the day"),
            new Word(
                    "shoot",
                    "shoot Regatta day on 2026-09-12 at 59.33,18.07",
                    "opens a shoot, also client WORDS; alone: the shoot screen"),
            new Word(
                    "plan",
                    "plan 16:30 Prize-giving wants 12 · plan late 20",
                    "a key moment; also must, cam 645, light ev12, on DATE; alone: the plan"),
            new Word(
                    "bag",
                    "bag add 10 cn400 120 price 6.20 · bag take 1 cn400 120",
                    "film into the bag or out of it; alone: what is in it"),
            new Word(
                    "day-end",
                    "day-end · day-end r1 r2 r4-r7",
                    "where every roll of the day is; with the rolls that you hold: which are missing"),
            new Word("frames", "frames", "the frames of this roll"),
            new Word("rolls", "rolls", "all rolls"),
            new Word("help", "help fix", "all keys and words of this place, or one word"),
            new Word("theme", "theme sun", "the look of the screen: dark, sun, night or mono"),
            new Word("big", "big", "the counter across the room"),
            new Word("routine", "routine off", "three looks after loading: on, off, skip; alone: what is asked"),
            new Word("yes", "yes", "answers a question"),
            new Word("no", "no", "answers a question, or a look of the load routine: not so"),
            new Word("quit", "quit", "leaves; everything is on disk"));

    /** The looks of the screen, in the order in which F9 goes through them. */
    public static final List<String> THEMES = List.of("dark", "sun", "night", "mono");

    private CommandTable() {}

    /** The entry of a word; {@code u} is {@code undo}. */
    public static Optional<Word> find(String word) {
        String known = word.equals("u") ? "undo" : word;
        return WORDS.stream().filter(it -> it.word().equals(known)).findFirst();
    }

    /** The first words that are made of letters. */
    public static List<String> firstWords() {
        return WORDS.stream().map(Word::word).filter(it -> it.charAt(0) >= 'a').toList();
    }
}
