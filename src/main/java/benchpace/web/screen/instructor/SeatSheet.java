package benchpace.web.screen.instructor;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.CutAway;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.breaks.Assignment;
import benchpace.plan.Plan;
import benchpace.web.screen.shell.Counter;
import benchpace.web.screen.shell.NoteLine;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.CureWords;
import benchpace.words.EventWords;
import benchpace.words.FlagWords;
import benchpace.words.Phrases;
import benchpace.words.SeatWords;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Everything about one seat, and all that can be done for it.
 *
 * @param otherSteps steps it has not finished, other than the present one
 * @param candle     how its candle stands, in words; empty if none was poured
 * @param settled    a hand has decided on its candle
 * @param triedFrom  before this instant the tap "tried by hand" asks first, RFC 3339; may be empty
 * @param finishName the step that its first button finishes
 * @param doings     activities it may join or end, while it waits
 * @param waiting    what it is at and what comes next, in words; empty if it does not wait
 * @param shelf      it has a candle that may go to the pickup shelf when it leaves
 * @param open       the class is still open, so that something may be changed
 * @param wax        what is computed of its candle
 * @param mind       what to mind with its guest, such as an allergy; may be empty
 * @param cue        what to say at its step, if that is not the class's, and its caution; empty otherwise
 */
public record SeatSheet(SeatTile tile, String word, String reason, String gaps, List<StepChoice> otherSteps,
                        String candle, Optional<Counter> ready, String basis, boolean poured, boolean settled,
                        String triedFrom, String finishName, Presence presence,
                        Optional<Integer> sharesWith, String sharedBy, List<Tap> taps,
                        List<NoteLine> notes, List<Integer> others, boolean instructor, boolean open, String helper,
                        boolean mine, SheetCandle wax, List<Doing> doings, String waiting, boolean shelf,
                        Optional<Cue> cue, String mind) {
    private static final List<Integer> EARLIER = List.of(1, 2, 5, 10);

    /** Whether somebody sits there. */
    public enum Presence { HERE, PAUSED, EXPECTED, LEFT, SHARING }

    /** The script of a step that the heading has left. Either may be empty. */
    public record Cue(String say, String caution) { }

    /** @param triedFrom a tap for it before this instant asks first whether the candle was tried; may be empty */
    public record StepChoice(String id, String name, String triedFrom) { }

    /** An activity of the wait. @param at as was tapped, the seat is at it */
    public record Doing(String id, String name, boolean at) { }

    /** A tap of its history. @param earlier offers to say that it was made some minutes before */
    public record Tap(long seq, String words, String at, boolean undone, boolean correctable, List<Earlier> earlier) { }

    public record Earlier(int minutes, String to) { }

    public static SeatSheet of(ClassView view, SeatView seat, Viewer viewer, Optional<CutAway> cut) {
        Times times = new Times(view.zone());
        SeatTile tile = SeatTile.of(seat, view, times);
        Optional<CandleClock> candle = seat.candle();
        return new SeatSheet(tile, tile.word().equals(CureWords.MAY_BE) ? tile.word() : SeatWords.mark(seat.mark()),
                seat.slowness().map(FlagWords::reason).orElse(""),
                seat.gaps().isEmpty() ? "" : "Not tapped: " + String.join(", ", seat.gaps()) + ".",
                otherSteps(view, seat, tile), candle.map(c -> CureWords.of(c, view.now(), times)).orElse(""),
                candle.filter(c -> !c.settled()).map(c -> Counter.tried(c.said())),
                candle.map(CureWords::basis).orElse(""), candle.isPresent(),
                candle.filter(CandleClock::settled).isPresent(),
                candle.map(c -> HandTest.from(seat)).orElse(""), finishName(view, tile), presence(seat),
                seat.sharesWith(),
                seat.sharedBy().isEmpty() ? "" : "Shared by " + Phrases.seats(seat.sharedBy(), 9) + ".",
                taps(view.plan(), seat, times), NoteLine.latest(seat.notes(), 6, times),
                view.seats().stream().map(SeatView::seat).filter(n -> n != seat.seat()).toList(),
                viewer.instructor(), view.stage() != ClassView.Stage.CLOSED, seat.helper().orElse(""),
                seat.helper().filter(viewer.initials()::equals).isPresent(), SheetCandle.of(view, seat, cut, times),
                doings(view, seat), waiting(view, seat, times),
                candle.isPresent() && seat.sharesWith().isEmpty() && seat.sharedBy().isEmpty(),
                view.present().earlier().stream().filter(e -> e.seats().contains(seat.seat())).findFirst()
                        .map(e -> new Cue(e.say(), e.caution())), seat.mind());
    }

    private static List<Doing> doings(ClassView view, SeatView seat) {
        return view.waiting().strip(seat.seat()).isEmpty() ? List.of() : view.waiting().activities().stream()
                .filter(a -> !a.skipped()).map(a -> new Doing(a.id(), a.name(), a.seats().contains(seat.seat())))
                .toList();
    }

    private static String waiting(ClassView view, SeatView seat, Times times) {
        return view.waiting().strip(seat.seat()).map(strip -> {
            String now = strip.now().map(p -> p.name() + " until " + times.clock(p.until()) + ". ").orElse("");
            String offer = view.waiting().leisure(seat.seat()).filter(o -> !o.offers().isEmpty())
                    .map(o -> "At leisure: offer " + String.join(" or ", o.offers()) + ". ").orElse("");
            String next = strip.parts().stream().filter(p -> p.status() == Assignment.Status.PLANNED).findFirst()
                    .map(p -> "Next " + p.name() + " at " + times.clock(p.from()) + ".").orElse("");
            return now + offer + next;
        }).orElse("");
    }

    private static Presence presence(SeatView seat) {
        return switch (seat.mark()) {
            case PAUSED -> Presence.PAUSED;
            case EXPECTED -> Presence.EXPECTED;
            case LEFT -> Presence.LEFT;
            case SHARING -> Presence.SHARING;
            default -> Presence.HERE;
        };
    }

    private static List<StepChoice> otherSteps(ClassView view, SeatView seat, SeatTile tile) {
        return view.steps().stream()
                .filter(s -> s.kind().needsTap() && !seat.finished().contains(s.id()))
                .filter(s -> !(tile.canFinish() && s.id().equals(tile.step())))
                .map(s -> new StepChoice(s.id(), s.name(), HandTest.from(view, seat, s.id())))
                .toList();
    }

    private static String finishName(ClassView view, SeatTile tile) {
        return view.steps().stream().filter(s -> s.id().equals(tile.step())).findFirst()
                .map(ClassView.StepView::name).orElse("");
    }

    private static List<Tap> taps(Plan plan, SeatView seat, Times times) {
        return seat.taps().stream()
                .sorted(Comparator.comparing(SeatView.TapView::seq).reversed())
                .map(t -> new Tap(t.seq(), EventWords.of(plan, t.event()), times.clock(t.at()), t.undone(),
                        t.correctable(), earlier(t.at())))
                .toList();
    }

    private static List<Earlier> earlier(Instant at) {
        return EARLIER.stream()
                .map(m -> new Earlier(m, at.minus(Duration.ofMinutes(m)).toString()))
                .toList();
    }

    /** A seat that is at the table and makes a candle. */
    public boolean here() {
        return presence == Presence.HERE || presence == Presence.PAUSED;
    }

    public boolean paused() {
        return presence == Presence.PAUSED;
    }

    public boolean left() {
        return presence == Presence.LEFT;
    }

    public boolean expected() {
        return presence == Presence.EXPECTED;
    }

}
