package takeup.kit;

import java.util.ArrayList;
import java.util.List;
import takeup.json.Json;

/** What is to be said of a profile that is being read, and where its reading stopped. */
final class ProfileNotes {
    private final List<String> remarks = new ArrayList<>();
    private Json.Obj object;
    private String field;

    List<String> remarks() {
        return remarks;
    }

    void remark(String text) {
        remarks.add(text);
    }

    /** A value of this object is wrong, or missing. */
    void stoppedAt(Json.Obj where, String name) {
        object = where;
        field = name.replace(":", "");
    }

    boolean isAt(Json json) {
        return json == object;
    }

    String field() {
        return field;
    }
}
