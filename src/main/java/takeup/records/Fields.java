package takeup.records;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import takeup.json.Json;

/** The fields of a record, read one by one; what is not as it must be makes the record unreadable. */
public record Fields(Json.Obj object) {
    /** No count is larger. */
    public static final int MOST = 1_000_000;

    /** A record that does not say what it must. */
    public static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1;

        public Unreadable(String why) {
            super(why.length() > 200 ? why.substring(0, 200) + " …" : why, null, false, false);
        }
    }

    public static Fields of(Json json) {
        if (json instanceof Json.Obj object) {
            return new Fields(object);
        }
        throw new Unreadable("an object is expected");
    }

    private Json need(String name) {
        return known(object.field(name), name + " is missing");
    }

    /** What is there, or could be read; the record is unreadable for that reason where nothing is. */
    static <T> T known(Optional<T> read, String otherwise) {
        if (read.isEmpty()) {
            throw new Unreadable(otherwise);
        }
        return read.get();
    }

    /** The names of the fields, in their order. */
    Set<String> names() {
        return object.fields().keySet();
    }

    boolean has(String name) {
        return object.field(name).isPresent();
    }

    public Optional<Fields> inside(String name) {
        return has(name) ? Optional.of(inner(name)) : Optional.empty();
    }

    Fields inner(String name) {
        return of(need(name));
    }

    public String text(String name) {
        return string(need(name));
    }

    Optional<String> maybeText(String name) {
        return has(name) ? Optional.of(text(name)) : Optional.empty();
    }

    private static String string(Json json) {
        if (json instanceof Json.Text text) {
            return text.value();
        }
        throw new Unreadable("text is expected");
    }

    double number(String name) {
        if (need(name) instanceof Json.Num number) {
            return number.value();
        }
        throw new Unreadable("a number is expected");
    }

    /** A number that can be: what is far beyond all that is typed would spoil every sum that it comes into. */
    double number(String name, double least, double most) {
        double number = number(name);
        if (!(number >= least && number <= most)) {
            throw new Unreadable(name + " is out of range");
        }
        return number;
    }

    OptionalDouble maybeNumber(String name, double least, double most) {
        return has(name) ? OptionalDouble.of(number(name, least, most)) : OptionalDouble.empty();
    }

    public long whole(String name) {
        double number = number(name);
        if (number != Math.rint(number) || Math.abs(number) > 1e15) {
            throw new Unreadable(name + " is a whole number");
        }
        return (long) number;
    }

    public int count(String name) {
        long whole = whole(name);
        if (Math.abs(whole) > MOST) {
            throw new Unreadable(name + " is out of range");
        }
        return (int) whole;
    }

    OptionalInt maybeCount(String name) {
        return has(name) ? OptionalInt.of(count(name)) : OptionalInt.empty();
    }

    Optional<Boolean> maybeFlag(String name) {
        if (!has(name)) {
            return Optional.empty();
        }
        if (need(name) instanceof Json.Bool bool) {
            return Optional.of(bool.value());
        }
        throw new Unreadable(name + " is true or false");
    }

    boolean flag(String name) {
        return maybeFlag(name).orElse(false);
    }

    public OffsetDateTime time(String name) {
        return known(maybeTime(name), name + " is missing");
    }

    Optional<OffsetDateTime> maybeTime(String name) {
        return has(name) ? Optional.of(known(FastIsoParser.time(text(name)), name + " is no time")) : Optional.empty();
    }

    List<Json> list(String name) {
        if (need(name) instanceof Json.Arr array) {
            return array.items();
        }
        throw new Unreadable(name + " is a list");
    }

    Optional<List<Json>> maybeList(String name) {
        return has(name) ? Optional.of(list(name)) : Optional.empty();
    }
}
