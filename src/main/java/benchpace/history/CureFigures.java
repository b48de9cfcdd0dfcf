package benchpace.history;

import java.util.OptionalDouble;

/**
 * How the candles of one class that were tried by hand were foretold when they were poured.
 *
 * @param judged      how many were tried
 * @param inRange     how many of them were judged set within the range foretold
 * @param meanMinutes how much later than foretold, in the mean; negative if sooner, empty without any
 */
public record CureFigures(int judged, int inRange, OptionalDouble meanMinutes) {
    public static final CureFigures NONE = new CureFigures(0, 0, OptionalDouble.empty());

    public CureFigures {
        if (judged < 0 || inRange < 0 || inRange > judged || judged == 0 == meanMinutes.isPresent()) {
            throw new IllegalArgumentException("candles cannot be judged " + judged + ", in range " + inRange);
        }
    }
}
