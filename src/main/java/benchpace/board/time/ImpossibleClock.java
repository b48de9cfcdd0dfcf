package benchpace.board.time;

import java.time.Instant;

/** The computer's clock shows a time that cannot be. */
public final class ImpossibleClock extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Instant told;

    public ImpossibleClock(Instant told) {
        super("the computer's clock says " + told);
        this.told = told;
    }

    /** What the computer's clock shows. */
    public Instant told() {
        return told;
    }
}
