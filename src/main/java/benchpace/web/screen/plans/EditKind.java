package benchpace.web.screen.plans;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The lists of a plan, each a section of the page, in its order. */
public enum EditKind {
    STEPS("/steps", "Steps", "step", EditFields.STEP, "kind minutes", 30,
            "What the class does, one after the other. One step pours at most; cure and finish come after it."),
    CANDLES("/candles", "Candles", "candle", EditFields.CANDLE, "_wax fillGrams brimMillilitres", 20,
            "What a seat may make. The first is the usual one."),
    ACTIVITIES("/activities", "Activities", "activity", EditFields.ACTIVITY, "kind typicalMinutes", 20,
            "What fills the wait while the wax sets."),
    SUPPLIES("/prep/supplies", "Supplies", "supply", EditFields.SUPPLY, "perSeat perClass inStock", 100,
            "What has to be there: counted for the setting-out list, the packing list and what to buy."),
    MELTERS("/prep/melters", "Melters", "melter", EditFields.MELTER, "wax watts", 20,
            "What the wax is melted in. A figure that is missing is asked for on the prep sheet, never guessed."),
    CIRCUITS("/prep/circuits", "Circuits", "circuit", EditFields.CIRCUIT, "volts amps", 20,
            "All the sockets behind one breaker or fuse. Ask the venue; a licensed electrician decides."),
    APPLIANCES("/prep/appliances", "Appliances", "appliance", EditFields.APPLIANCE, "watts onMinutes", 20,
            "All that is plugged in, melters too.");

    private final String place;
    private final String title;
    private final String one;
    private final List<EditField> fields;
    private final String brief;
    private final int most;
    private final String words;

    EditKind(String place, String title, String one, List<EditField> fields, String brief, int most, String words) {
        this.place = place;
        this.title = title;
        this.one = one;
        this.fields = fields;
        this.brief = brief;
        this.most = most;
        this.words = words;
    }

    /** Where the list stands in the plan, as a JSON pointer. */
    public String place() {
        return place;
    }

    public String title() {
        return title;
    }

    /** What one of them is called. */
    public String one() {
        return one;
    }

    /** "a step", "an activity". */
    public String aOne() {
        return ("aeiou".indexOf(one.charAt(0)) < 0 ? "a " : "an ") + one;
    }

    public List<EditField> fields() {
        return fields;
    }

    /** Of which fields the line of a folded row speaks, apart by spaces. */
    public String brief() {
        return brief;
    }

    /** How many there may be. */
    public int most() {
        return most;
    }

    public String words() {
        return words;
    }

    /** Its name in the page. */
    public String token() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The last part of its place: the name of the list. */
    public String field() {
        return place.substring(place.lastIndexOf('/') + 1);
    }

    /** Whether its section stands open at first: what a plan cannot do without. */
    public boolean opens() {
        return this == STEPS || this == CANDLES;
    }

    /** What is said while there is none. */
    public String none() {
        return switch (this) {
            case STEPS -> "No step yet. A plan needs one that the seats do.";
            case CANDLES -> "No candle yet: the wait then takes what its step says.";
            case ACTIVITIES -> "Nothing to do while the wax sets, yet.";
            default -> "None yet.";
        };
    }

    /** Whether it belongs to what a plan says of the day before. */
    public boolean ofPrep() {
        return place.startsWith("/prep/");
    }

    static List<EditKind> all() {
        return Arrays.asList(values());
    }
}
