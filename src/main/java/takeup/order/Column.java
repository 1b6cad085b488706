package takeup.order;

import java.util.ArrayList;
import java.util.List;

/**
 * What a lab's form may ask of each roll beside roll number, film size, process and development, which it always gets.
 */
enum Column {
    LAB_NUMBER("labNumber"),
    FRAME_SIZE("frameSize"),
    STOCK("stock"),
    BOX_SPEED("boxSpeed"),
    RATING("exposureIndex"),
    FRAMES("framesExpected"),
    CONDITION("condition");

    private final String field;

    Column(String field) {
        this.field = field;
    }

    String field() {
        return field;
    }

    static List<String> fields() {
        List<String> fields = new ArrayList<>();
        for (Column column : values()) {
            fields.add(column.field);
        }
        return fields;
    }
}
