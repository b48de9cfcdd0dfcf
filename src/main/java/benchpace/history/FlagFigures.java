package benchpace.history;

import java.util.OptionalDouble;

/**
 * The flags of one class.
 *
 * @param raised        how many there were
 * @param answered      how many of them were answered
 * @param answerMinutes half of the answers came within so much; empty without any
 * @param wrong         how many were wrong in hindsight
 */
public record FlagFigures(int raised, int answered, OptionalDouble answerMinutes, int wrong) {
    public static final FlagFigures NONE = new FlagFigures(0, 0, OptionalDouble.empty(), 0);

    public FlagFigures {
        if (raised < 0 || answered < 0 || answered > raised || wrong < 0 || wrong > raised) {
            throw new IllegalArgumentException(
                    "flags cannot be " + raised + ", answered " + answered + ", wrong " + wrong);
        }
        if (answered == 0 == answerMinutes.isPresent()) {
            throw new IllegalArgumentException("answers take a time, and nothing else does");
        }
    }
}
