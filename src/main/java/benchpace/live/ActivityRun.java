package benchpace.live;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the instructor has decided about one activity tonight. Decisions are added up in the order of the log, and each
 * counts from the time of its tap: an opening that arrives after the closing opens the activity again, since then.
 *
 * @param openedAt    when it was opened, if it was
 * @param closedAt    when it was closed, if it was and is not open again
 * @param extensions  by how much longer than planned it shall go on, in the order of the log
 * @param move        when it shall begin, if the instructor chose and did not open it since
 * @param withdrawnAt since when nobody is sent to it, because it was closed or skipped and not taken up again since
 */
public record ActivityRun(Optional<Instant> openedAt, Optional<Instant> closedAt, List<Extension> extensions,
                          Optional<Move> move, boolean skipped, Optional<Instant> withdrawnAt) {

    /** Decided at an instant: it takes so much longer, for those in it and those to come. */
    public record Extension(Instant at, Duration by) { }

    /** Decided at an instant: it begins then. A class break leaves out who cannot take part. */
    public record Move(Instant at, Instant to) { }

    /** Nothing decided yet. */
    public static final ActivityRun UNTOUCHED = new ActivityRun(Optional.empty(), Optional.empty(), List.of(),
            Optional.empty(), false, Optional.empty());

    public ActivityRun {
        extensions = List.copyOf(extensions);
    }

    public boolean open() {
        return openedAt.isPresent() && closedAt.isEmpty() && !skipped;
    }

    /** Whether anybody may still be sent to it. */
    public boolean offered() {
        return withdrawnAt.isEmpty();
    }

    /** Whether it was opened by then. */
    public boolean begunBy(Instant instant) {
        return openedAt.filter(at -> !at.isAfter(instant)).isPresent();
    }

    /** How much longer than planned it takes. */
    public Duration extension() {
        return extensions.stream().map(Extension::by).reduce(Duration.ZERO, Duration::plus);
    }

    /** How much longer it became by decisions later than an instant. */
    public Duration extensionSince(Instant instant) {
        return extensions.stream().filter(e -> e.at().isAfter(instant)).map(Extension::by)
                .reduce(Duration.ZERO, Duration::plus);
    }

    /** The same after it was opened. */
    public ActivityRun opened(Instant at) {
        return new ActivityRun(Optional.of(at), Optional.empty(), extensions, Optional.empty(), false,
                Optional.empty());
    }

    /** The same after it was closed: whoever is in it is free, and nobody is sent to it any more. */
    public ActivityRun closed(Instant at) {
        return new ActivityRun(openedAt, Optional.of(at), extensions, move, skipped, Optional.of(at));
    }

    /** The same after it was made longer. */
    public ActivityRun extended(Instant at, Duration by) {
        return new ActivityRun(openedAt, closedAt,
                Stream.concat(extensions.stream(), Stream.of(new Extension(at, by))).toList(), move, skipped,
                withdrawnAt);
    }

    /** The same after it was moved to a time. */
    public ActivityRun moved(Instant at, Instant to) {
        return new ActivityRun(openedAt, closedAt, extensions, Optional.of(new Move(at, to)), false,
                Optional.empty());
    }

    /** The same after it was left out. */
    public ActivityRun skipped(Instant at) {
        return new ActivityRun(openedAt, closedAt, extensions, move, true, Optional.of(at));
    }
}
