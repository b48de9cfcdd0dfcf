package benchpace.web.screen.instructor;

import benchpace.board.cooling.CandleClock;
import benchpace.board.pacing.SeatFlag;
import benchpace.board.view.ClassView;
import benchpace.board.view.ClassView.Stage;
import benchpace.board.view.SeatView;
import benchpace.board.view.SeatView.Mark;
import benchpace.board.waiting.WaitView;
import benchpace.web.screen.shell.Counter;
import benchpace.words.CureWords;
import benchpace.words.SeatWords;
import benchpace.words.Times;
import benchpace.words.TurnWords;
import java.time.Instant;
import java.util.Optional;

/**
 * One seat's tile on the instructor's table.
 *
 * @param mark    names its shape and colour
 * @param word    the state in words; empty for on pace, which needs none
 * @param line    what it is doing, or when its candle is ready
 * @param offer   what it may be offered while it waits, where a tile has room for that; may be empty
 * @param helped  who was there a moment ago, and when, where a slow seat calls nobody for that; may be empty
 * @param count   the ticking time; none beside a flag, where it would be read as the time that the seat is behind by
 * @param detail  minutes over, or the clock time a candle is ready; may be empty
 * @param step    the step a tap finishes
 * @param triedFrom a tap before this instant asks first whether the candle was tried, RFC 3339; empty if it never asks
 * @param spoken  what a tap does, for screen readers
 * @param done    steps finished, of {@code all} that want a tap
 */
public record SeatTile(int seat, String name, String mark, String word, String line, String offer, String helped,
                       Optional<Counter> count, String detail, String step, boolean canFinish, String triedFrom,
                       String helper, boolean asks, int done, int all, String spoken) {

    public static SeatTile of(SeatView seat, ClassView view, Times times) {
        int all = (int) view.steps().stream().filter(s -> s.kind().needsTap()).count();
        boolean asks = !seat.afterTest().isEmpty();
        return new SeatTile(seat.seat(), seat.name(), mark(seat), word(seat, view),
                still(view.stage()) && seat.sharesWith().isEmpty() ? "" : line(seat, times),
                offer(seat, view.waiting()), helped(seat, times),
                still(view.stage()) ? Optional.empty() : count(seat, view.now(), times),
                detail(seat, times), asks ? seat.afterTest() : seat.stepId(), seat.canFinish() || asks,
                triedFrom(seat, view), seat.helper().orElse(""),
                saysDone(seat) || seat.question() && seat.flag().isEmpty(),
                (int) Math.min(all, finished(seat, view)), all, spoken(seat));
    }

    /** Also at a later step than the first after the cure: a candle that was poured again is liquid once more. */
    private static String triedFrom(SeatView seat, ClassView view) {
        boolean mayBeReady = seat.candle().filter(c -> c.mayBeReady(view.now())).isPresent();
        return mayBeReady ? "" : HandTest.from(view, seat,
                seat.afterTest().isEmpty() ? seat.stepId() : seat.afterTest());
    }

    /** The guests' word makes a question of whatever the tile said: the answer is one tap away. */
    private static boolean saysDone(SeatView seat) {
        return seat.hint() && seat.canFinish();
    }

    /** The number that {@link #detail} begins with; empty if it begins with none. */
    public String figures() {
        return detail.substring(0, (int) detail.chars().takeWhile(Character::isDigit).count());
    }

    /** What follows it. */
    public String unit() {
        return detail.substring(figures().length()).strip();
    }

    /** The mark beside the word: a question has one of its own. */
    public String sign() {
        return asks ? "asks" : mark;
    }

    private static String mark(SeatView seat) {
        return (saysDone(seat) && seat.slowness().isPresent() ? Mark.ON_PACE : seat.mark()).token();
    }

    private static long finished(SeatView seat, ClassView view) {
        return view.steps().stream()
                .filter(s -> s.kind().needsTap() && seat.finished().contains(s.id()))
                .count();
    }

    /** Nothing goes on: before the first step and after the last. */
    private static boolean still(Stage stage) {
        return stage == Stage.BEFORE || stage == Stage.CLOSED;
    }

    private static String word(SeatView seat, ClassView view) {
        if (still(view.stage()) && seat.mark() == Mark.WAITING) {
            return "";
        }
        if (seat.mark() == Mark.SETTING && seat.candle().filter(c -> c.mayBeReady(view.now())).isPresent()) {
            return CureWords.MAY_BE;
        }
        if (saysDone(seat)) {
            return "says done";
        }
        if (seat.question() && seat.canFinish() && seat.flag().isEmpty()) {
            return "still at it?";
        }
        if (seat.mark() == Mark.QUEUED) {
            return seat.before().map(TurnWords::state).orElse("");
        }
        return seat.mark() == Mark.ON_PACE ? "" : SeatWords.mark(seat.mark());
    }

    private static String line(SeatView seat, Times times) {
        return switch (seat.mark()) {
            case SHARING -> seat.sharesWith().map(host -> "with seat " + host).orElse(seat.stepName());
            case SETTING, AT_LEISURE -> seat.candle().map(c -> times.briefly(c.said()))
                    .orElse(seat.stepName());
            case EXPECTED, WAITING -> "";
            default -> seat.stepName();
        };
    }

    private static String offer(SeatView seat, WaitView waiting) {
        return seat.mark() != Mark.AT_LEISURE ? ""
                : waiting.leisure(seat.seat()).flatMap(o -> o.offers().stream().findFirst())
                        .map(name -> "offer: " + name).orElse("");
    }

    private static String helped(SeatView seat, Times times) {
        return seat.eased().filter(e -> seat.mark() == Mark.SLOW)
                .map(e -> "helped by " + e.helper() + " at " + times.clock(e.at())).orElse("");
    }

    private static Optional<Counter> count(SeatView seat, Instant now, Times times) {
        return switch (seat.mark()) {
            case SETTING, AT_LEISURE -> seat.candle().map(c -> Counter.ready(c.said(), "try",
                    c.mayBeReady(now) ? "" : CureWords.MAY_BE, CureWords.TRY_IT));
            case ON_PACE, SLIPPING, BEHIND, SLOW -> seat.slowness().isPresent() && !saysDone(seat)
                    ? Optional.empty() : Optional.of(Counter.since(seat.countFrom(), times));
            case WAITING, PAUSED -> Optional.of(Counter.silentAtFirst(seat.since(), times));
            default -> Optional.empty();
        };
    }

    private static String detail(SeatView seat, Times times) {
        if (seat.mark() == Mark.SET) {
            return seat.candle().flatMap(CandleClock::judgedSetAt).map(at -> "at " + times.clock(at)).orElse("");
        }
        if (seat.mark() == Mark.QUEUED && !saysDone(seat)) {
            return seat.before().map(TurnWords::place).orElse("");
        }
        return saysDone(seat) ? "" : seat.slowness().map(SeatTile::over).orElse("");
    }

    /** "11 min over": what every screen says of a flagged seat. The time in the step is another fact, and not said. */
    public static String over(SeatFlag flag) {
        return flag.minutesOver() > 0 ? flag.minutesOver() + " min over" : "";
    }

    private static String spoken(SeatView seat) {
        return !seat.afterTest().isEmpty() ? "Tap when tried by hand and firm"
                : seat.canFinish() ? "Tap when done with " + seat.stepName() : "Tap to open";
    }
}
