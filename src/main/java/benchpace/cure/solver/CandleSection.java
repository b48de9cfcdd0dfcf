package benchpace.cure.solver;

import benchpace.cure.CoolingCase;
import java.util.ArrayList;
import java.util.List;

/**
 * A candle cut open at one instant, from the solver's own field: fronts for drawing and the facts for describing it.
 *
 * @param minutes from the pour
 * @param radiusMillimetres of the wax
 * @param heightMillimetres of the wax
 * @param solidFraction of the whole, 0 to 1
 * @param wallShellMillimetres thickness at mid height of what is at least half solid, from the wall inward
 * @param baseShellMillimetres the same on the axis from the base up
 * @param topShellMillimetres the same on the axis from the top down
 * @param fronts where the wax is less solid than 25, 50, 75 and 95 per cent, in this order, each inside the next
 */
public record CandleSection(double minutes, double radiusMillimetres, double heightMillimetres, double solidFraction,
        double wallShellMillimetres, double baseShellMillimetres, double topShellMillimetres, List<SolidFront> fronts) {

    /** The levels drawn. */
    public static final List<Double> LEVELS = List.of(0.25, 0.5, 0.75, 0.95);

    public CandleSection {
        fronts = List.copyOf(fronts);
    }

    /**
     * The sections at every whole minute from the pour in a span, by one solution of the case.
     *
     * @param fromMinute 0 or more
     * @param toMinute at least fromMinute and at most 24 hours
     */
    public static List<CandleSection> everyMinute(CoolingCase c, int fromMinute, int toMinute) {
        if (fromMinute < 0 || toMinute < fromMinute || toMinute > CureMilestones.HORIZON_MINUTES) {
            throw new IllegalArgumentException("no span of minutes: " + fromMinute + ".." + toMinute);
        }
        List<CandleSection> sections = new ArrayList<>();
        Resolution resolution = Resolution.working(c);
        if (fromMinute == 0) {
            HeatFlow flow = new HeatFlow(c, resolution);
            sections.add(cut(0, flow, flow.start()));
        }
        int first = Math.max(fromMinute, 1);
        CureSolver.watch(c, resolution, toMinute, new CureSolver.MinuteWatcher() {
            private int next = first;

            @Override
            public double nextMinute() {
                return next <= toMinute ? next : Double.POSITIVE_INFINITY;
            }

            @Override
            public void see(double minute, HeatFlow flow, double[] y) {
                sections.add(cut(minute, flow, y));
                next++;
            }
        });
        return List.copyOf(sections);
    }

    private static CandleSection cut(double minute, HeatFlow flow, double[] y) {
        SectionField field = new SectionField(flow, y);
        FrontTracer tracer = new FrontTracer(field.r, field.z, field.solid);
        List<SolidFront> fronts = new ArrayList<>();
        for (double level : LEVELS) {
            fronts.add(new SolidFront(level, tracer.below(level)));
        }
        double radius = flow.grid.radius * 1000;
        double height = flow.grid.height * 1000;
        return new CandleSection(minute, radius, height, new FieldReading(flow).solidFraction(y),
                field.wallShell() * radius, field.baseShell() * height, field.topShell() * height, fronts);
    }
}
