package takeup.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A list that goes out item by item is the text of the whole document. */
class JsonListTextTest {
    private final List<String> pieces = new ArrayList<>();

    private String streamed(List<?> items) {
        pieces.clear();
        JsonListText text =
                new JsonListText(Json.object().and("format", "takeup-rolls").and("stops", 2), "rolls", pieces::add);
        items.forEach(text::item);
        text.end(Json.object().and("due", List.of("soon")));
        return String.join("", pieces);
    }

    private static String whole(List<?> items) {
        return JsonText.pretty(DecimalFields.in(Json.object()
                .and("format", "takeup-rolls")
                .and("stops", 2)
                .and("rolls", items)
                .and("due", List.of("soon"))));
    }

    private static Json.Obj roll(int number) {
        return Json.object()
                .and("roll", "R" + number)
                .and("name", "Bjørn's \u202e crew \ud83d\ude00 \ud800")
                .and("exposureIndex", 400)
                .and("tags", List.of())
                .and("films", List.of(Json.object().and("ev100", 10)));
    }

    @Test
    void itIsTheTextOfTheWholeDocument() {
        List<Json.Obj> many = new ArrayList<>();
        for (int i = 0; i < 2000; i++) {
            many.add(roll(i));
        }
        for (List<?> items : List.of(List.of(), List.of(roll(1)), List.of("R0001", "R0002"), many)) {
            assertEquals(whole(items), streamed(items));
        }
    }

    @Test
    void noPieceIsLong() {
        List<Json.Obj> many = new ArrayList<>();
        for (int i = 0; i < 2000; i++) {
            many.add(roll(i));
        }
        streamed(many);
        assertTrue(pieces.size() > 5 && pieces.stream().allMatch(it -> it.length() < 50_000));
    }
}
