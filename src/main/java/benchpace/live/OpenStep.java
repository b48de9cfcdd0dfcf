package benchpace.live;

import java.time.Instant;

/**
 * A step that the class as a whole has come to.
 *
 * @param index its position in the plan, from 0; -1 while nothing is open
 * @param since since when the class has been there
 */
public record OpenStep(int index, Instant since) {

    /** The further of the two; this one, with its own instant, if they are the same. */
    OpenStep orFurther(OpenStep other) {
        return other.index > index ? other : this;
    }
}
