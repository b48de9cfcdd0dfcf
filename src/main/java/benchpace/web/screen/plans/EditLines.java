package benchpace.web.screen.plans;

import benchpace.plan.Plan;
import benchpace.plan.Step;
import benchpace.prep.evening.TypicalEvening;
import benchpace.web.screen.instructor.LinesChart;
import benchpace.words.Phrases;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * The pace lines of an evening that has not been yet, drawn as those of a class: time across, steps up, one line a
 * seat.
 */
final class EditLines {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 240;
    private static final int LEFT = 96;
    private static final int RIGHT = WIDTH - 8;
    private static final int TOP = 8;
    private static final int BOTTOM = HEIGHT - 18;
    private static final int LETTERS = 12;
    private static final int LINE_HEIGHT = 13;
    private static final List<Integer> TICKS = List.of(10, 15, 30, 60, 120, 240, 480);
    private static final int MOST_TICKS = 6;

    private EditLines() { }

    static LinesChart of(Plan plan, TypicalEvening evening) {
        double minutes = Math.max(10, evening.minutes());
        int steps = plan.steps().size();
        List<LinesChart.Line> lines = new ArrayList<>();
        for (int seat = 1; seat <= evening.seats(); seat++) {
            StringBuilder points = new StringBuilder(LEFT + "," + BOTTOM);
            for (int step = 0; step < steps; step++) {
                points.append(' ').append(x(evening.end(seat, step), minutes)).append(',').append(y(step + 1, steps));
            }
            lines.add(new LinesChart.Line(seat, "quiet", points.toString(), "Seat " + seat));
        }
        return new LinesChart(WIDTH, HEIGHT, LEFT, RIGHT, TOP, BOTTOM, rungs(plan.steps()), ticks(minutes), lines,
                List.of(), "", words(plan, evening));
    }

    private static int x(double minute, double minutes) {
        return (int) Math.round(LEFT + minute / minutes * (RIGHT - LEFT));
    }

    private static int y(int level, int of) {
        return (int) Math.round(BOTTOM - (double) level / of * (BOTTOM - TOP));
    }

    private static List<LinesChart.Rung> rungs(List<Step> steps) {
        int every = Math.max(1, (int) Math.ceil(LINE_HEIGHT * steps.size() / (double) (BOTTOM - TOP)));
        List<LinesChart.Rung> rungs = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            boolean named = (steps.size() - 1 - i) % every == 0;
            rungs.add(new LinesChart.Rung(y(i + 1, steps.size()), named ? shortened(steps.get(i).name()) : ""));
        }
        return rungs;
    }

    private static String shortened(String name) {
        return name.codePointCount(0, name.length()) <= LETTERS ? name
                : name.substring(0, name.offsetByCodePoints(0, LETTERS - 1)).stripTrailing() + "\u2026";
    }

    private static List<LinesChart.Tick> ticks(double minutes) {
        int every = TICKS.stream().filter(t -> minutes / t <= MOST_TICKS).findFirst().orElse(1440);
        List<LinesChart.Tick> ticks = new ArrayList<>();
        for (int at = every; at <= minutes; at += every) {
            ticks.add(new LinesChart.Tick(x(at, minutes), EditPreview.clock(Duration.ofMinutes(at))));
        }
        return ticks;
    }

    private static String words(Plan plan, TypicalEvening evening) {
        StringBuilder words = new StringBuilder("When the last seat is through: ");
        for (int step = 0; step < plan.steps().size(); step++) {
            int index = step;
            double last = java.util.stream.IntStream.rangeClosed(1, evening.seats())
                    .mapToDouble(seat -> evening.end(seat, index)).max().orElse(0);
            words.append(step == 0 ? "" : "; ").append(plan.steps().get(step).name()).append(" after ")
                    .append(Phrases.length(Duration.ofMinutes(Math.round(last))));
        }
        return words.append('.').toString();
    }
}
