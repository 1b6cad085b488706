package takeup.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import takeup.text.Plain;

/**
 * A JSON value as plain data, each part with the line it stood on in its file (0 if it came from no file).
 * {@link JsonText} reads and writes it.
 */
public sealed interface Json {
    /** The line in the file, from 1; 0 if it was made here. */
    int line();

    /** Whether it is a number from one to another, both included. */
    default boolean isNumber(double least, double most) {
        return this instanceof Num number && number.value() >= least && number.value() <= most;
    }

    /** Whether it is a whole number from one to another, both included. */
    default boolean isWhole(double least, double most) {
        return isNumber(least, most) && ((Num) this).value() == Math.rint(((Num) this).value());
    }

    /** An object; its fields keep their order. */
    record Obj(Map<String, Json> fields, int line) implements Json {
        /** The field, if it is there and not null. */
        public Optional<Json> field(String name) {
            Json value = fields.get(name);
            return value == null || value instanceof Nil ? Optional.empty() : Optional.of(value);
        }

        /** The same object with one more field, where there is a value for it. */
        public Obj andIfKnown(String name, Object value) {
            Json json = of(value);
            return json instanceof Nil ? this : and(name, json);
        }

        /** The same object with one more field. */
        public Obj and(String name, Object value) {
            fields.put(name, of(value));
            return this;
        }
    }

    /** An array. */
    record Arr(List<Json> items, int line) implements Json {}

    /** A string. */
    record Text(String value, int line) implements Json {}

    /** A finite number. */
    record Num(double value, int line) implements Json {}

    /** A finite number of a column of decimals: it is written with a point in any case, as 8.0. */
    record Decimal(double value, int line) implements Json {}

    /** true or false. */
    record Bool(boolean value, int line) implements Json {}

    /** null: not known. */
    record Nil(int line) implements Json {}

    /** An empty object to which fields are added. */
    static Obj object() {
        return new Obj(new LinkedHashMap<>(), 0);
    }

    /** A number rounded to so many significant digits. */
    static Json digits(double value, int significant) {
        return new Num(Plain.rounded(value, significant), 0);
    }

    /**
     * The JSON for a value: strings, numbers, booleans, lists, optionals (empty is null), JSON itself; anything else by
     * its {@code toString}.
     */
    static Json of(Object value) {
        if (value instanceof Json json) {
            return json;
        }
        if (value instanceof Optional<?> optional) {
            return optional.isPresent() ? of(optional.get()) : new Nil(0);
        }
        if (value instanceof OptionalDouble optional) {
            return optional.isPresent() ? new Num(optional.getAsDouble(), 0) : new Nil(0);
        }
        if (value instanceof OptionalInt optional) {
            return optional.isPresent() ? new Num(optional.getAsInt(), 0) : new Nil(0);
        }
        if (value instanceof Number number) {
            return new Num(number.doubleValue(), 0);
        }
        if (value instanceof Boolean bool) {
            return new Bool(bool, 0);
        }
        if (value instanceof List<?> list) {
            List<Json> items = new ArrayList<>();
            for (Object item : list) {
                items.add(of(item));
            }
            return new Arr(items, 0);
        }
        return new Text(String.valueOf(value), 0);
    }
}
