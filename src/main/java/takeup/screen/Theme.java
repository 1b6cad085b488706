package takeup.screen;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A named set of styles, one for each {@link Look}: {@code dark}, {@code mono}. Plain data; a new one is a table below
 * and a place in {@link #ALL}.
 */
public final class Theme {
    private static final int NIGHT = 0x12161a;
    private static final int SLATE = 0x222a31;

    /** Light on near black, for a room or a boathouse: bone, brass and teal. */
    private static final Theme DARK = new Theme("dark", Map.ofEntries(
            Map.entry(Look.NORMAL, Style.of(0xd3d7d2, NIGHT)),
            Map.entry(Look.QUIET, Style.of(0x98a2a6, NIGHT)),
            Map.entry(Look.STRONG, Style.of(0xf6f3ea, NIGHT).strong()),
            Map.entry(Look.READOUT, Style.of(0xf5cf7b, NIGHT).strong()),
            Map.entry(Look.LABEL, Style.of(0x8fb3bd, NIGHT)),
            Map.entry(Look.GOOD, Style.of(0x8fd19e, NIGHT)),
            Map.entry(Look.CAUTION, Style.of(0xffb86b, NIGHT).strong()),
            Map.entry(Look.ALARM, Style.of(0xffffff, 0x8f1d1d).strong()),
            Map.entry(Look.PROMPT, Style.of(0xf6f3ea, SLATE)),
            Map.entry(Look.CHOSEN, Style.of(0x12161a, 0xd9b662)),
            Map.entry(Look.FILM, Style.of(0xa89a84, NIGHT)),
            Map.entry(Look.FRAME, Style.of(0xe2a866, NIGHT)),
            Map.entry(Look.EMPTY, Style.of(0x8d979b, NIGHT)),
            Map.entry(Look.KEY, Style.of(0xf5cf7b, SLATE)),
            Map.entry(Look.BAR, Style.of(0xc3cbcd, SLATE))));

    /** No colour at all: weight, underlining and reversal. Also what every theme turns into under NO_COLOR. */
    static final Theme MONO = new Theme("mono", Map.ofEntries(
            Map.entry(Look.NORMAL, Style.PLAIN),
            Map.entry(Look.QUIET, Style.PLAIN),
            Map.entry(Look.STRONG, Style.PLAIN.strong()),
            Map.entry(Look.READOUT, Style.PLAIN.strong()),
            Map.entry(Look.LABEL, Style.PLAIN),
            Map.entry(Look.GOOD, Style.PLAIN),
            Map.entry(Look.CAUTION, Style.PLAIN.strong().underlined()),
            Map.entry(Look.ALARM, Style.PLAIN.strong().turned()),
            Map.entry(Look.PROMPT, Style.PLAIN),
            Map.entry(Look.CHOSEN, Style.PLAIN.turned()),
            Map.entry(Look.FILM, Style.PLAIN),
            Map.entry(Look.FRAME, Style.PLAIN.strong()),
            Map.entry(Look.EMPTY, Style.PLAIN),
            Map.entry(Look.KEY, Style.PLAIN.strong()),
            Map.entry(Look.BAR, Style.PLAIN.underlined())));

    private static final List<Theme> ALL = List.of(DARK, MONO);

    private final String name;
    private final Map<Look, Style> styles;

    private Theme(String name, Map<Look, Style> styles) {
        this.name = name;
        this.styles = new EnumMap<>(styles);
    }

    /** The theme of this name, {@code dark}; empty if there is none. */
    public static Optional<Theme> named(String name) {
        for (Theme theme : ALL) {
            if (theme.name.equals(name)) {
                return Optional.of(theme);
            }
        }
        return Optional.empty();
    }

    /** All names, in the order in which {@link #next()} goes round. */
    public static List<String> names() {
        List<String> names = new ArrayList<>();
        for (Theme theme : ALL) {
            names.add(theme.name);
        }
        return List.copyOf(names);
    }

    public String name() {
        return name;
    }

    /** The theme after this one; after the last the first. */
    public Theme next() {
        return ALL.get((ALL.indexOf(this) + 1) % ALL.size());
    }

    Style style(Look look) {
        return styles.get(look);
    }
}
