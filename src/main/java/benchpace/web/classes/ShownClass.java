package benchpace.web.classes;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.view.ClassView.Stage;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which class is meant by the addresses that name none. The one that runs; of several the one that began last; while
 * none runs, the next to begin today, the nearest first. A class that was left open runs no longer.
 */
public final class ShownClass {
    /** So long the guests of a class that was closed are bid farewell, where none of today begins sooner. */
    private static final Duration JUST_OVER = Duration.ofMinutes(30);

    private final Boards boards;
    private final InstantSource clock;
    private final ZoneId zone;

    public ShownClass(Boards boards, InstantSource clock, ZoneId zone) {
        this.boards = boards;
        this.clock = clock;
        this.zone = zone;
    }

    /**
     * What there is to show.
     *
     * @param board    the class that is meant, if any
     * @param running  those that run, the one that began last first
     * @param next     the next to begin on whatever day, while none is meant
     * @param justOver one that was closed a moment ago among its guests, while none runs nor is about to begin
     */
    record Choice(Optional<ClassBoard> board, List<ClassBoard> running, Optional<ClassBoard> next,
                  Optional<ClassBoard> justOver) {

        /** Changes whenever another page is the one to show. */
        String mark() {
            return board.map(ClassBoard::id).orElseGet(() -> "none." + next.map(b -> b.id() + "."
                    + b.live().startsAt().getEpochSecond()).orElse(""))
                    + justOver.map(b -> "." + b.id()).orElse("");
        }
    }

    Choice now() {
        Instant now = clock.instant();
        List<ClassBoard> running = boards.atHand().stream().filter(b -> runs(b, now))
                .sorted(Comparator.comparing((ClassBoard b) -> begunAt(b.live())).reversed()).toList();
        Optional<ClassBoard> meant = running.stream().findFirst().or(() -> today(now));
        boolean free = meant.filter(b -> !running.isEmpty() || !b.live().startsAt().isAfter(now.plus(JUST_OVER)))
                .isEmpty();
        return new Choice(meant, running, meant.isPresent() ? Optional.empty() : next(now),
                free ? justOver(now) : Optional.empty());
    }

    private static boolean runs(ClassBoard board, Instant now) {
        return begun(board) && !board.live().isLeftOpen(now);
    }

    /** Begun, never closed, and long silent. */
    static boolean leftOpen(ClassBoard board, Instant now) {
        return begun(board) && !runs(board, now);
    }

    private static boolean begun(ClassBoard board) {
        return board.stage() != Stage.BEFORE && board.stage() != Stage.CLOSED;
    }

    /** The first step opened or tapped; a class whose first step needs no opening begins with its time. */
    static Instant begunAt(LiveClass live) {
        return live.corrected().stream()
                .filter(r -> r.event() instanceof ClassEvent.StepOpened || r.event() instanceof ClassEvent.StepFinished)
                .map(r -> r.at()).min(Comparator.naturalOrder()).orElse(live.startsAt());
    }

    private Optional<ClassBoard> today(Instant now) {
        LocalDate today = day(now);
        return boards.atHand().stream()
                .filter(b -> b.stage() == Stage.BEFORE && day(b.live().startsAt()).equals(today))
                .min(Comparator.comparing(b -> Duration.between(b.live().startsAt(), now).abs()));
    }

    private Optional<ClassBoard> next(Instant now) {
        return boards.atHand().stream().filter(b -> b.stage() == Stage.BEFORE && b.live().startsAt().isAfter(now))
                .min(Comparator.comparing(b -> b.live().startsAt()));
    }

    private Optional<ClassBoard> justOver(Instant now) {
        return boards.atHand().stream()
                .filter(b -> b.live().closedAt().filter(at -> at.plus(JUST_OVER).isAfter(now)).isPresent())
                .filter(b -> b.live().closedAmongGuests())
                .max(Comparator.comparing(b -> b.live().closedAt().orElseThrow()));
    }

    private LocalDate day(Instant at) {
        return at.atZone(zone).toLocalDate();
    }
}
