package benchpace.files.export;

/** What a row of the table tells of, in the order of the table; in the JSON each kind is a list, or one object. */
public enum RowKind {
    CLASS("class", "class"), EVENT("event", "events"), SEAT("seat", "seats"), CAUSE("cause", "causes"),
    WAY("way", "way"), CANDLE("candle", "candles"), CURE("cure", "cures"), STEP("step", "steps"), FLAG("flag", "flags"),
    MISSED("missed", "missed"), WAIT("wait", "waits"), SHELF("shelf", "shelf"), NOTE("note", "notes"),
    MISSING("missing", "missing");

    private final String word;
    private final String key;

    RowKind(String word, String key) {
        this.word = word;
        this.key = key;
    }

    /** As the first column says it. */
    public String word() {
        return word;
    }

    /** As the JSON calls all of its kind. */
    public String key() {
        return key;
    }

    /** Whether it belongs to what was reckoned from the events: the {@code report} of the JSON. */
    public boolean ofReport() {
        return this != CLASS && this != EVENT;
    }
}
