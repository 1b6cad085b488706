package takeup.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.grid.Colour;
import takeup.grid.ColourDepth;
import takeup.grid.Contrast;
import takeup.grid.Style;
import takeup.grid.TextRole;
import takeup.grid.Theme;

/**
 * What a theme looks like: a few lines of the screen, and its colours for other programs.
 *
 * @param role what is drawn so, {@code readout}
 * @param foreground {@code #f5cf7b}; empty for the terminal's own
 * @param background the same
 * @param contrast from 1 to 21 after WCAG 2.2; empty where the terminal's own colours decide
 * @param bold whether it is heavy
 * @param underline whether it is underlined
 * @param reverse whether the two colours are swapped
 */
public record ThemeSample(
        String role,
        Optional<String> foreground,
        Optional<String> background,
        OptionalDouble contrast,
        boolean bold,
        boolean underline,
        boolean reverse) {

    /** A piece of text and how it looks. */
    private record Piece(String text, TextRole role) {}

    private static final List<List<Piece>> LINES = List.of(
            List.of(new Piece(" 645 reflex, back 1 · 80mm f/2.8                  R0002  15:16  ", TextRole.BAR)),
            List.of(
                    new Piece(" next frame ", TextRole.LABEL),
                    new Piece("11   6 left   f/5.6 1/125   ", TextRole.READOUT),
                    new Piece("0.3 over for this light ", TextRole.STRONG)),
            List.of(
                    new Piece(" ", TextRole.NORMAL),
                    new Piece("FEW LEFT", TextRole.CAUTION),
                    new Piece(" · ", TextRole.QUIET),
                    new Piece("meter again after 30 minutes                        ", TextRole.NORMAL)),
            List.of(
                    new Piece(" ▆▆ ▆▆ ▄▄ ", TextRole.FRAME),
                    new Piece(" ·  · ", TextRole.EMPTY),
                    new Piece("  10  11  ", TextRole.FILM),
                    new Piece("  frame 10 is on disk                 ", TextRole.GOOD)),
            List.of(new Piece(" NOT SAVED: frame 11 on R0002, the disk is full                 ", TextRole.ALARM)),
            List.of(new Piece(" ►[f/5.6 1/125]  0.3 over  1.3                                  ", TextRole.CHOSEN)),
            List.of(new Piece(" > 4 125 ; bow seat                                             ", TextRole.PROMPT)),
            List.of(
                    new Piece(" Space", TextRole.KEY),
                    new Piece(" same again  ", TextRole.BAR),
                    new Piece("F9", TextRole.KEY),
                    new Piece(" theme                                     ", TextRole.BAR)));

    /** Whether it is what must be read from two metres away: counters, the pair to set, warnings, NOT SAVED. */
    public boolean isReadFromAfar() {
        return role.equals("readout") || role.equals("caution") || role.equals("alarm");
    }

    /** The lines without any colour, as a pipe gets them. */
    public static List<String> words() {
        return LINES.stream()
                .map(line ->
                        String.join("", line.stream().map(Piece::text).toList()).stripTrailing())
                .toList();
    }

    /** The lines as this terminal would show them, with the sequences that colour them. */
    public static List<String> painted(Theme theme, Map<String, String> environment) {
        TerminalEnvironment terminal = TerminalEnvironment.of(environment, false);
        ColourDepth depth = terminal.depth();
        Theme seen = depth == ColourDepth.NONE ? Theme.MONO : theme;
        List<String> painted = new ArrayList<>();
        for (List<Piece> line : LINES) {
            StringBuilder text = new StringBuilder();
            for (Piece piece : line) {
                text.append(seen.style(piece.role()).sequence(depth))
                        .append(terminal.characterSet().spelt(piece.text()));
            }
            painted.add(text.append("\u001b[0m").toString());
        }
        return painted;
    }

    /** How each look is drawn. */
    public static List<ThemeSample> of(Theme theme) {
        List<ThemeSample> all = new ArrayList<>();
        for (TextRole role : TextRole.values()) {
            Style style = theme.style(role);
            boolean isOwn = style.foreground().kind() == Colour.Kind.OWN;
            all.add(new ThemeSample(
                    role.name().toLowerCase(Locale.ROOT),
                    hex(style.foreground()),
                    hex(style.background()),
                    isOwn
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(Contrast.of(
                                    style.foreground().value(),
                                    style.background().value())),
                    style.bold(),
                    style.underline(),
                    style.reverse()));
        }
        return all;
    }

    private static Optional<String> hex(Colour colour) {
        if (colour.kind() != Colour.Kind.RGB) {
            return Optional.empty();
        }
        String digits = Integer.toHexString(colour.value());
        return Optional.of("#" + "000000".substring(digits.length()) + digits);
    }
}
