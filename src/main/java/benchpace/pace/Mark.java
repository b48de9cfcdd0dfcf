package benchpace.pace;

/**
 * A remark about a seat's present step: the instructor's "still at it", or a guest's own "we are done".
 *
 * @param step index of the step it was said about, from 0
 * @param atMinutes when, in minutes from the class's start
 */
public record Mark(int step, double atMinutes) {
    public Mark {
        if (step < 0 || Double.isNaN(atMinutes)) {
            throw new IllegalArgumentException("mark on step " + step + " at " + atMinutes);
        }
    }
}
