package takeup.order;

import java.util.Arrays;
import java.util.List;

/**
 * What a lab's form may ask of each roll beside roll number, film size, process and development, which it always gets.
 */
enum FormColumn {
    LAB_NUMBER("labNumber"),
    FRAME_SIZE("frameSize"),
    STOCK("stock"),
    BOX_SPEED("boxSpeed"),
    RATING("exposureIndex"),
    FRAMES("framesExpected"),
    CONDITION("condition");

    private final String field;

    FormColumn(String field) {
        this.field = field;
    }

    String field() {
        return field;
    }

    static List<String> fields() {
        return Arrays.stream(values()).map(FormColumn::field).toList();
    }
}
