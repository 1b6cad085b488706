package takeup.search;

/** What is known of a frame, one value each; named in JSON as in {@code takeup frames --json}. */
public enum FrameColumn {
    SEQUENCE("sequence", Sort.NUMBER),
    FRAME("frame", Sort.NUMBER),
    KIND("kind", Sort.TEXT),
    AT("at", Sort.TEXT),
    APERTURE("aperture", Sort.TEXT),
    F_NUMBER("fNumber", Sort.DECIMAL),
    TIME("time", Sort.TEXT),
    SECONDS("seconds", Sort.DECIMAL),
    LENS("lens", Sort.TEXT),
    FOCAL_LENGTH("focalLengthMm", Sort.DECIMAL),
    FILTERS("filters", Sort.TEXT),
    ERROR("errorStops", Sort.DECIMAL),
    FLASH("flash", Sort.FLAG),
    TRIPOD("tripod", Sort.FLAG),
    PEOPLE("people", Sort.TEXT),
    PLACE("place", Sort.TEXT),
    SHOOT("shoot", Sort.TEXT),
    NOTE("note", Sort.TEXT),
    SCAN("scan", Sort.TEXT),
    VERDICT("verdict", Sort.TEXT),
    /** Whether all on it signed a release: private, and in no JSON. */
    RELEASE("release", Sort.PRIVATE);

    /** How a value leaves as JSON. */
    enum Sort {
        TEXT,
        NUMBER,
        DECIMAL,
        FLAG,
        PRIVATE
    }

    private final String jsonName;
    private final Sort sort;

    FrameColumn(String jsonName, Sort sort) {
        this.jsonName = jsonName;
        this.sort = sort;
    }

    String jsonName() {
        return jsonName;
    }

    Sort sort() {
        return sort;
    }
}
