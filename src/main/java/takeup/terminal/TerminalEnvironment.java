package takeup.terminal;

import java.util.Locale;
import java.util.Map;
import takeup.grid.CharacterSet;
import takeup.grid.ColourDepth;

/**
 * What the environment says about the terminal, each "" where not set: {@code TERM=xterm-256color},
 * {@code LANG=en_GB.UTF-8}.
 *
 * @param term {@code TERM}
 * @param colorTerm {@code COLORTERM}
 * @param noColor {@code NO_COLOR}; anything but "" asks for no colour
 * @param lcAll {@code LC_ALL}, which wins over
 * @param lcCtype {@code LC_CTYPE}, which wins over
 * @param lang {@code LANG}
 * @param ascii true if only ASCII was asked for
 */
public record TerminalEnvironment(
        String term, String colorTerm, String noColor, String lcAll, String lcCtype, String lang, boolean ascii) {

    /** Picked from all environment variables. */
    public static TerminalEnvironment of(Map<String, String> variables, boolean ascii) {
        return new TerminalEnvironment(
                variables.getOrDefault("TERM", ""),
                variables.getOrDefault("COLORTERM", ""),
                variables.getOrDefault("NO_COLOR", ""),
                variables.getOrDefault("LC_ALL", ""),
                variables.getOrDefault("LC_CTYPE", ""),
                variables.getOrDefault("LANG", ""),
                ascii);
    }

    /** False for a terminal that says it can do nothing, or says nothing at all. */
    boolean canMoveItsCursor() {
        return !term.isEmpty() && !term.equals("dumb");
    }

    /**
     * How many colours may be asked for; none with NO_COLOR. By name, as the terminal database (terminfo) counts them:
     * the terminals of DEC and what is called monochrome have none, the consoles of kernels and what is named after 16
     * colours have 16, a "direct" one has all. Any other one today has 256.
     */
    ColourDepth depth() {
        if (!noColor.isEmpty() || term.startsWith("vt") || term.endsWith("-m") || term.endsWith("-mono")) {
            return ColourDepth.NONE;
        }
        if (colorTerm.equals("truecolor") || colorTerm.equals("24bit") || term.endsWith("-direct")) {
            return ColourDepth.TRUE;
        }
        return term.startsWith("linux")
                        || term.endsWith("-16color")
                        || term.endsWith("-color")
                        || term.equals("ansi")
                        || term.equals("cygwin")
                        || term.equals("cons25")
                ? ColourDepth.SIXTEEN
                : ColourDepth.INDEXED;
    }

    /** Which characters may be sent. The first of the three locale variables that is set decides, as POSIX has it. */
    public CharacterSet characterSet() {
        String ofCharacters = lcCtype.isEmpty() ? lang : lcCtype;
        String locale = lcAll.isEmpty() ? ofCharacters : lcAll;
        String small = locale.toLowerCase(Locale.ROOT);
        if (ascii || !(small.contains("utf-8") || small.contains("utf8"))) {
            return CharacterSet.ASCII;
        }
        // The kernel's own console knows UTF-8, but its font of 256 or 512 signs lacks most of our glyphs.
        return term.startsWith("linux") ? CharacterSet.PLAIN_GLYPHS : CharacterSet.UNICODE;
    }
}
