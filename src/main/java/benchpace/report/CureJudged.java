package benchpace.report;

/**
 * What was said of a candle just after it was poured, against the hand test that it had later: on its sheet,
 * or by a tap for a step after the cure, which says that it was tried. All in minutes from the class's start; a second
 * pour is another candle.
 *
 * @param pouredMinutes when it was poured, as the board had it then
 * @param likelyMinutes the moment it was likely to be ready
 * @param fromMinutes   the beginning of the range that was said of it
 * @param untilMinutes  the end of that range
 * @param judgedMinutes when the hand test was told, either way
 */
public record CureJudged(int seat, double pouredMinutes, double likelyMinutes, double fromMinutes,
                         double untilMinutes, double judgedMinutes) {
    public CureJudged {
        if (!(fromMinutes <= untilMinutes)) {
            throw new IllegalArgumentException("a range from " + fromMinutes + " to " + untilMinutes);
        }
    }

    /** By how many minutes it was judged set later than likely; below 0 if sooner. */
    public double laterMinutes() {
        return judgedMinutes - likelyMinutes;
    }

    /** Whether the hand test fell into the range, its ends included. */
    public boolean withinRange() {
        return fromMinutes <= judgedMinutes && judgedMinutes <= untilMinutes;
    }
}
