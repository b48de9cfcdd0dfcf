package benchpace.board.time;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** The computer's clock shows a time that cannot be. */
public final class ImpossibleClock extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private final transient Instant told;

    public ImpossibleClock(Instant told) {
        super("the computer's clock says " + told);
        this.told = told;
    }

    /** What to do about it, in two sentences. */
    public String sentence(ZoneId zone) {
        return "The computer's clock says " + DATE.format(told.atZone(zone))
                + ". Set it right, then set up the class.";
    }
}
