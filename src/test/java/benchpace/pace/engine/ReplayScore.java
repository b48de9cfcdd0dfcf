package benchpace.pace.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Scores a replay against what really happened. A stall counts when it lasted five minutes or more, up to and including
 * the pour. A "behind" is false when the seat was not stalled (until two minutes after that step was done) and did not
 * pour over six minutes after the middle of the class. Detection times are Kaplan-Meier quantiles: a stall that ended
 * unflagged is censored at its end.
 */
public final class ReplayScore {
    /** A time, and whether the event was seen then; otherwise observation only ended there. */
    public record Observed(double time, boolean seen) { }

    private record Interval(double on, double off) { }

    private final Map<String, List<String[]>> changes = new HashMap<>();
    private final Map<String, List<double[]>> forecasts = new HashMap<>();
    private int classes;
    private int falseBehind;
    private int flags;
    private final List<Observed> behind = new ArrayList<>();
    private final List<Observed> noticed = new ArrayList<>();
    private int covered;
    private int forecastCount;
    private double pinball;

    ReplayScore(String flagsCsv, String forecastsCsv) {
        flagsCsv.lines().skip(1).map(l -> l.split(",")).forEach(r ->
                changes.computeIfAbsent(r[0] + "/" + r[1], k -> new ArrayList<>()).add(r));
        forecastsCsv.lines().skip(1).map(l -> l.split(",")).forEach(r -> forecasts.computeIfAbsent(r[0],
                k -> new ArrayList<>()).add(Arrays.stream(r).skip(1).mapToDouble(Double::parseDouble).toArray()));
    }

    void add(ClassSimulator.Truth truth) {
        classes++;
        double[] pours = Arrays.stream(truth.pourDone()).filter(p -> !Double.isNaN(p)).sorted().toArray();
        double median = 0.5 * (pours[(pours.length - 1) / 2] + pours[pours.length / 2]);
        for (int seat = 1; seat <= truth.seats(); seat++) {
            addSeat(truth, seat, median);
        }
        for (int minute : new int[] {10, 20, 30, 45}) {
            double[] latest = null;
            for (double[] forecast : forecasts.getOrDefault(truth.classId(), List.of())) {
                latest = forecast[0] <= minute * 60 ? forecast : latest;
            }
            if (latest != null) {
                double y = truth.finish();
                forecastCount++;
                covered += latest[1] <= y && y <= latest[3] ? 1 : 0;
                pinball += (pinball(0.1, y, latest[1]) + pinball(0.5, y, latest[2]) + pinball(0.9, y, latest[3])) / 180;
            }
        }
    }

    private void addSeat(ClassSimulator.Truth truth, int seat, double median) {
        List<Interval> calls = intervals(truth.classId() + "/" + seat, List.of("behind"));
        List<Interval> any = intervals(truth.classId() + "/" + seat, List.of("behind", "slipping"));
        List<ClassSimulator.Stall> stalls = truth.stalls().stream()
                .filter(s -> s.seat() == seat && s.step() <= 4).toList();
        flags += any.size();
        double pour = truth.pourDone()[seat - 1];
        for (Interval call : calls) {
            boolean inside = stalls.stream().anyMatch(s -> s.start() <= call.on && call.on <= s.stepDone() + 120
                    || call.on <= s.start() && s.start() <= call.off);
            boolean slow = Double.isNaN(pour) || pour > median + 360 && call.on <= pour;
            falseBehind += inside || slow ? 0 : 1;
        }
        for (ClassSimulator.Stall stall : stalls) {
            if (stall.end() - stall.start() >= 300) {
                behind.add(observe(stall, calls));
                noticed.add(observe(stall, any));
            }
        }
    }

    private static Observed observe(ClassSimulator.Stall stall, List<Interval> intervals) {
        double first = intervals.stream().filter(i -> i.off > stall.start() && i.on <= stall.end())
                .mapToDouble(i -> Math.max(i.on, stall.start())).min().orElse(Double.NaN);
        return Double.isNaN(first) ? new Observed((stall.end() - stall.start()) / 60, false)
                : new Observed((first - stall.start()) / 60, true);
    }

    private List<Interval> intervals(String key, List<String> levels) {
        List<Interval> intervals = new ArrayList<>();
        double on = Double.NaN;
        for (String[] row : changes.getOrDefault(key, List.of())) {
            boolean up = levels.contains(row[3]);
            double t = Double.parseDouble(row[2]);
            if (up && Double.isNaN(on)) {
                on = t;
            } else if (!up && !Double.isNaN(on)) {
                intervals.add(new Interval(on, t));
                on = Double.NaN;
            }
        }
        if (!Double.isNaN(on)) {
            intervals.add(new Interval(on, Double.POSITIVE_INFINITY));
        }
        return intervals;
    }

    /** The quantile (pinball) loss of forecasting v for the share q when y happened. */
    static double pinball(double q, double y, double v) {
        return Math.max(q * (y - v), (q - 1) * (y - v));
    }

    /** The product-limit estimate of P(time &gt; t). */
    public static double kaplanMeier(List<Observed> observed, double t) {
        double survival = 1;
        for (double time : observed.stream().filter(Observed::seen).mapToDouble(Observed::time).distinct().sorted()
                .toArray()) {
            if (time <= t) {
                double atRisk = observed.stream().filter(o -> o.time >= time).count();
                double events = observed.stream().filter(o -> o.seen && o.time == time).count();
                survival *= 1 - events / atRisk;
            }
        }
        return survival;
    }

    /** The first time by which half are seen; infinity when that never happens. */
    public static double median(List<Observed> observed) {
        return observed.stream().filter(Observed::seen).mapToDouble(Observed::time).sorted()
                .filter(t -> kaplanMeier(observed, t) <= 0.5 + 1e-9).findFirst().orElse(Double.POSITIVE_INFINITY);
    }

    public double falseBehindPerClass() {
        return (double) falseBehind / classes;
    }

    double flagsPerClass() {
        return (double) flags / classes;
    }

    public double shareMissed() {
        return (double) behind.stream().filter(o -> !o.seen).count() / behind.size();
    }

    double medianToBehind() {
        return median(behind);
    }

    double medianToAnyFlag() {
        return median(noticed);
    }

    double coverage() {
        return (double) covered / forecastCount;
    }

    double pinballMinutes() {
        return pinball / forecastCount;
    }
}
