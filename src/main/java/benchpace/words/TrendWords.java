package benchpace.words;

import benchpace.history.Cause;
import benchpace.history.ClassFigures;
import benchpace.history.Dot;
import benchpace.history.Measure;
import benchpace.history.PastClass;
import benchpace.history.Punctuality;
import benchpace.history.Series;
import benchpace.history.Trend;
import benchpace.history.WhatCost;
import benchpace.report.Medians;
import java.time.Instant;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;

/** Says what figures from class to class tell, and no more than that. */
public final class TrendWords {
    private static final double SECONDS_A_DAY = 86_400;
    /** Less would be said to be nothing. */
    private static final double LEAST_MINUTES = 0.5;

    private TrendWords() { }

    /** What a drawing asks. */
    public static String title(Measure measure) {
        return switch (measure) {
            case LATE -> "Did classes end on time?";
            case IDLE -> "How long did a seat sit idle in the wait?";
            case FLAGS -> "How often was a seat flagged?";
            case ANSWERS -> "How fast were flags answered?";
            case CURE -> "Did candles set when they were likely to?";
        };
    }

    /** What stands at the drawing's upright axis. */
    public static String unit(Measure measure) {
        return switch (measure) {
            case LATE -> "minutes after the promise";
            case IDLE -> "idle minutes a seat";
            case FLAGS -> "flags a class";
            case ANSWERS -> "minutes to the middle answer";
            case CURE -> "minutes later than likely";
        };
    }

    /** What is drawn, in sentences. @param classes those that do not count are passed over */
    public static List<String> of(Measure measure, List<PastClass> classes, Series series, Times times) {
        if (series.dots().isEmpty()) {
            return List.of(nothing(measure));
        }
        List<ClassFigures> figures = classes.stream().filter(PastClass::counts).map(c -> c.figures().orElseThrow())
                .filter(f -> measure.of(f).isPresent()).toList();
        double middle = Medians.of(figures.stream().mapToDouble(f -> measure.of(f).orElseThrow()).toArray());
        return Stream.of(fact(measure, figures, middle), together(series),
                trend(series, measure == Measure.FLAGS ? "flags" : "min", times)).filter(s -> !s.isEmpty()).toList();
    }

    private static String nothing(Measure measure) {
        return switch (measure) {
            case LATE, FLAGS -> "No class is there to tell it from.";
            case IDLE -> "No class here had a wait to fill.";
            case ANSWERS -> "No flag was answered in these classes.";
            case CURE -> "No candle of these classes was tried by hand.";
        };
    }

    private static String fact(Measure measure, List<ClassFigures> figures, double middle) {
        return switch (measure) {
            case LATE -> punctual(figures, middle);
            case IDLE -> of(figures.size()) + "a seat had nothing to do for "
                    + (middle < LEAST_MINUTES ? "less than a minute" : FiguresWords.minutes(middle)) + " of its wait.";
            case FLAGS -> sum(figures, f -> f.flags().raised()) == 0 ? "Nobody was flagged in "
                    + HistoryWords.classes(figures.size()) + "."
                    : of(figures.size()) + flags(middle) + ". Answered: "
                    + sum(figures, f -> f.flags().answered()) + " of " + sum(figures, f -> f.flags().raised())
                    + " in all; wrong in hindsight: " + sum(figures, f -> f.flags().wrong()) + ".";
            case ANSWERS -> of(figures.size()) + "half of the answers came within " + FiguresWords.minutes(middle)
                    + ".";
            case CURE -> of(figures.size()) + "candles were judged set " + FiguresWords.later(middle) + "; "
                    + sum(figures, f -> f.cures().inRange()) + " of " + sum(figures, f -> f.cures().judged())
                    + " lay within the range said of them.";
        };
    }

    private static String punctual(List<ClassFigures> figures, double middle) {
        long kept = figures.stream().filter(f -> f.punctuality() == Punctuality.ON_TIME).count();
        long minutes = Math.round(Math.abs(middle));
        String all = figures.size() == 1 ? kept == 1 ? "The one class ended" : "The one class did not end"
                : kept == figures.size() ? "All " + figures.size() + " classes ended"
                : kept == 0 ? "None of " + figures.size() + " classes ended"
                : kept + " of " + figures.size() + " classes ended";
        return all + " on time, at most " + Phrases.length(Punctuality.GRACE) + " after the promise"
                + (figures.size() == 1 ? ": it was " : "; the middle one was ") + (minutes == 0 ? "just at it."
                : Phrases.count((int) minutes) + (middle < 0 ? " sooner." : " later."));
    }

    private static String of(int classes) {
        return classes == 1 ? "In the one class " : "In the middle of " + classes + " classes ";
    }

    private static String flags(double count) {
        return count == 1 ? "there was 1 flag" : "there were " + number(count) + " flags";
    }

    private static int sum(List<ClassFigures> figures, ToIntFunction<ClassFigures> of) {
        return figures.stream().mapToInt(of).sum();
    }

    private static String together(Series series) {
        int most = series.dots().stream().mapToInt(Dot::classes).max().orElse(1);
        return most == 1 ? "" : "Each dot is the middle of " + most + " classes that followed one another.";
    }

    /** "From 4 March 2026 to 9 June 2026 it went down, by about 6 min." Or that none can be told. */
    static String trend(Series series, String unit, Times times) {
        Trend trend = series.trend();
        return switch (trend.said()) {
            case TOO_FEW -> "That is too few to tell whether it changes.";
            case NONE -> "Whether it goes up or down cannot be told from this.";
            case RISES, FALLS -> "From " + times.dateOfYear(at(series.dots().get(0))) + " to "
                    + times.dateOfYear(at(series.dots().get(series.dots().size() - 1))) + " it went "
                    + (trend.said() == Trend.Said.RISES ? "up" : "down") + ", by about "
                    + number(Math.abs(trend.change())) + " " + unit + ".";
        };
    }

    /** When a dot is. */
    public static Instant at(Dot dot) {
        return Instant.ofEpochSecond(Math.round(dot.day() * SECONDS_A_DAY));
    }

    /** Halves where it is small, else whole. */
    private static String number(double value) {
        double halves = Math.round(2 * value) / 2.0;
        return halves == Math.rint(halves) || halves >= 10 ? String.valueOf(Math.round(value))
                : String.valueOf(halves);
    }

    // ---- what held classes

    /** "Wicks", "Openings after all were done". */
    public static String name(WhatCost cost) {
        return Phrases.sentence(cost.cause() == Cause.STEP ? cost.step() : FiguresWords.what(cost.cause()));
    }

    /** What cost most, in sentences. @param costs the costliest first @param classes how many they rest on */
    public static List<String> of(List<WhatCost> costs, int classes, Times times) {
        if (classes == 0) {
            return List.of("No class is there to tell it from.");
        }
        if (costs.isEmpty()) {
            return List.of("Nothing alone held " + (classes == 1 ? "the one class." : "any of " + classes
                    + " classes."));
        }
        WhatCost most = costs.get(0);
        Trend trend = most.series().trend();
        return Stream.of(name(most) + " held " + (classes == 1 ? "the one class for " + number(most.meanMinutes())
                        + " min." : most.classes() + " of " + classes + " classes, and costs "
                        + number(most.meanMinutes()) + " min a class in the mean."),
                trend.told() ? trend(most.series(), "min", times) : "",
                "So much earlier the last candle would have been ready had this alone kept to the plan; such minutes "
                        + "overlap.").filter(s -> !s.isEmpty()).toList();
    }
}
