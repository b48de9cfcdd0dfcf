package benchpace.web.screen;

import benchpace.board.CandleClock;
import benchpace.board.ClassView;
import benchpace.board.ClassView.Stage;
import benchpace.board.ReadyWindow;
import benchpace.board.SeatFlag;
import benchpace.board.SeatView;
import benchpace.board.SeatView.Mark;
import benchpace.board.WaitView;
import java.util.Optional;

/**
 * One seat's tile on the instructor's table.
 *
 * @param mark    names its shape and colour
 * @param word    the state in words; empty for on pace, which needs none
 * @param line    what it is doing, or when its candle is ready
 * @param offer   what it may be offered while it waits, where a tile has room for that; may be empty
 * @param count   the ticking time
 * @param detail  minutes over, or the clock time a candle is ready; may be empty
 * @param spoken  what a tap does, for screen readers
 * @param done    steps finished, of {@code all} that want a tap
 */
public record SeatTile(int seat, String name, String mark, String word, String line, String offer,
                       Optional<Counter> count, String detail, String step, boolean canFinish, String helper,
                       boolean asks, int done, int all, String spoken) {

    static SeatTile of(SeatView seat, ClassView view, Times times) {
        int all = (int) view.steps().stream().filter(s -> s.kind().needsTap()).count();
        return new SeatTile(seat.seat(), seat.name(), seat.mark().token(), word(seat, view.stage()),
                still(view.stage()) && seat.sharesWith().isEmpty() ? "" : line(seat, times),
                offer(seat, view.waiting()),
                still(view.stage()) ? Optional.empty() : count(seat, times),
                detail(seat, times), seat.stepId(), seat.canFinish(), seat.helper().orElse(""),
                seat.hint() || seat.question() && seat.flag().isEmpty(),
                (int) Math.min(all, finished(seat, view)), all, spoken(seat));
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

    private static String word(SeatView seat, Stage stage) {
        if (still(stage) && seat.mark() == Mark.WAITING) {
            return "";
        }
        if (seat.hint() && seat.canFinish()) {
            return "says done";
        }
        if (seat.question() && seat.canFinish() && seat.flag().isEmpty()) {
            return "still at it?";
        }
        return seat.mark() == Mark.ON_PACE ? "" : seat.mark().words();
    }

    private static String line(SeatView seat, Times times) {
        return switch (seat.mark()) {
            case SHARING -> seat.sharesWith().map(host -> "with seat " + host).orElse(seat.stepName());
            case SETTING, AT_LEISURE -> seat.candle().map(c -> tileWords(c.ready(), times))
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

    /** A range has to stand in one line of the narrowest tile. */
    private static String tileWords(ReadyWindow window, Times times) {
        String brief = times.briefly(window);
        return brief.length() > 5 ? brief : "about " + brief;
    }

    private static Optional<Counter> count(SeatView seat, Times times) {
        return switch (seat.mark()) {
            case SETTING, AT_LEISURE -> seat.candle().map(CandleClock::ready)
                    .map((ReadyWindow w) -> Counter.ready(w, "left", "try it", times));
            case ON_PACE, SLIPPING, BEHIND -> Optional.of(Counter.since(seat.countFrom(), times));
            case WAITING, PAUSED -> Optional.of(Counter.since(seat.since(), times));
            default -> Optional.empty();
        };
    }

    private static String detail(SeatView seat, Times times) {
        if (seat.mark() == Mark.SET) {
            return seat.candle().flatMap(CandleClock::judgedSetAt).map(at -> "at " + times.clock(at)).orElse("");
        }
        return seat.flag().map(SeatFlag::minutesOver)
                .filter(over -> over > 0).map(over -> over + " min over").orElse("");
    }

    private static String spoken(SeatView seat) {
        return seat.canFinish() ? "Tap when done with " + seat.stepName() : "Tap to open";
    }
}
