package benchpace.prep.evening;

/**
 * What a change does, on the same evenings.
 *
 * @param savedP50Minutes how much earlier the class is done on the middle evening; negative if later
 * @param savedP90Minutes the same where nine in ten are done
 * @param onTime          being done by the promised time with it
 * @param gained          how much likelier that is, -1 to 1
 * @param gainedError     the standard error of that difference, evening by evening
 */
public record Effect(Change change, double savedP50Minutes, double savedP90Minutes, Chance onTime, double gained,
                     double gainedError) {
    /** A gain in chance that is worth a line. */
    private static final double LEAST_GAIN = 0.005;
    private static final double LEAST_MINUTES = 0.5;
    private static final double ERRORS = 2;

    /** What can be said of it. */
    public enum Verdict {
        /** More evenings are on time, or the class is done sooner. */
        HELPS,
        /** Nothing to speak of. */
        NOTHING,
        /** It makes the class later. */
        HARMS
    }

    /** Beyond two standard errors the chance decides, else half a minute on the middle evening. */
    public Verdict verdict() {
        double sure = Math.max(LEAST_GAIN, ERRORS * gainedError);
        if (gained > sure || gained >= -sure && savedP50Minutes >= LEAST_MINUTES) {
            return Verdict.HELPS;
        }
        return gained < -sure || savedP50Minutes <= -LEAST_MINUTES ? Verdict.HARMS : Verdict.NOTHING;
    }

    static Effect of(Change change, Evenings before, Evenings after) {
        Quantiles was = before.timetable().done();
        Quantiles is = after.timetable().done();
        int n = before.count();
        double sum = 0;
        double squares = 0;
        for (int b = 0; b < n; b++) {
            int gain = (after.onTime(b) ? 1 : 0) - (before.onTime(b) ? 1 : 0);
            sum += gain;
            squares += gain * gain;
        }
        double mean = sum / n;
        double error = Math.sqrt(Math.max(0, squares / n - mean * mean) / n);
        return new Effect(change, was.p50() - is.p50(), was.p90() - is.p90(),
                after.doneBy(after.setting().promisedMinutes()), mean, error);
    }
}
