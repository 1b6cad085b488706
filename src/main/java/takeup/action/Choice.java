package takeup.action;

import java.util.List;

/**
 * A row to pick from: what it adds to the line that is being made, and what is asked next.
 *
 * @param typed what it adds to the line; "" if nothing
 * @param name what it is, in a few words; "" where what is typed says it all
 * @param then what is asked once it is taken; nothing where the line is whole
 */
public record Choice(String typed, String name, List<Field> then) {
    public Choice {
        then = List.copyOf(then);
    }

    static Choice of(String typed, String name, Field... then) {
        return new Choice(typed, name, List.of(then));
    }

    static Choice value(String typed) {
        return of(typed, "");
    }
}
