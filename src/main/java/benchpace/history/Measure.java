package benchpace.history;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** A figure that is followed from class to class. */
public enum Measure {
    /** Minutes that a class ended after the promise; below 0 if sooner. */
    LATE(f -> OptionalDouble.of(f.lateMinutes())),
    /** Minutes a seat with nothing to do in its wait, in the mean. */
    IDLE(f -> f.idleSeats() == 0 ? OptionalDouble.empty()
            : OptionalDouble.of((double) f.idleMinutes() / f.idleSeats())),
    /** Flags of a class. */
    FLAGS(f -> OptionalDouble.of(f.flags().raised())),
    /** Minutes within which half of its answers came. */
    ANSWERS(f -> f.flags().answerMinutes()),
    /** Minutes that candles were judged set after they were likely to be, in the mean; below 0 if sooner. */
    CURE(f -> f.cures().meanMinutes());

    private static final double SECONDS_A_DAY = 86_400;

    private final Function<ClassFigures, OptionalDouble> figure;

    Measure(Function<ClassFigures, OptionalDouble> figure) {
        this.figure = figure;
    }

    /** Empty where a class has no such figure. */
    public OptionalDouble of(ClassFigures figures) {
        return figure.apply(figures);
    }

    /** The figure of those classes that count and have it. */
    public Series series(List<PastClass> classes) {
        return Series.of(classes.stream().filter(PastClass::counts)
                .flatMap(c -> of(c.figures().orElseThrow()).stream().mapToObj(value -> dot(c, value))).toList());
    }

    static Dot dot(PastClass past, double value) {
        return new Dot(past.startsAt().getEpochSecond() / SECONDS_A_DAY, value, 1);
    }
}
