package benchpace.live;

import static benchpace.live.TestClass.finished;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.Refusal.State;
import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import benchpace.plan.TestPlans;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class UndoingTest {

    record Action(String name, UnaryOperator<TestClass> act) {
        @Override public String toString() {
            return name;
        }
    }

    /** Every sort of event that can be undone, each at a moment at which it may happen. */
    static List<Action> actions() {
        SeatNumber one = new SeatNumber(1);
        ActivityId labels = new ActivityId("labels");
        return List.of(
                new Action("opening", c -> c.open("trim")),
                new Action("tap", c -> c.finish(2, "pour")),
                new Action("retiming", c -> c.retime(c.seat(1).finishes().get(new StepId("pour")).seq(), 22)),
                new Action("reseating", c -> c.reseat(c.seat(1).finishes().get(new StepId("pour")).seq(), 2)),
                new Action("pause", c -> c.pause(1)),
                new Action("resuming", c -> c.resume(3)),
                new Action("expecting", c -> c.expect(6)),
                new Action("arrival", c -> c.arrive(6, "Tove")),
                new Action("leaving", c -> c.leave(1)),
                new Action("pairing", c -> c.pair(1, 2)),
                new Action("unpairing", c -> c.unpair(5)),
                new Action("second pour", c -> c.pourAgain(1)),
                new Action("note on a seat", c -> c.note(1, "used two wicks")),
                new Action("note on the class", c -> c.wish(new ClassEvent.ClassNoted("draughty"))),
                new Action("reading", c -> c.read(1, 61.5)),
                new Action("another candle", c -> c.wish(new ClassEvent.CandleChosen(one, TestPlans.CANDLE))),
                new Action("room", c -> c.wish(new ClassEvent.RoomRead(23.5))),
                new Action("pitcher", c -> c.wish(new ClassEvent.PourRead(62))),
                new Action("skin", c -> c.seeSkin(1)),
                new Action("judged set", c -> c.judgeSet(1)),
                new Action("claim", c -> c.claim(2, "MB")),
                new Action("sorted", c -> c.sorted(4, "MB")),
                new Action("still at it",
                        c -> c.wish(new ClassEvent.StillWorking(new SeatNumber(2), new StepId("pour")))),
                new Action("hint", c -> c.wish(new ClassEvent.DoneHinted(new SeatNumber(2), new StepId("pour")))),
                new Action("guests", c -> c.wish(new ClassEvent.GuestsMayTell(true))),
                new Action("seat added", c -> c.wish(new ClassEvent.SeatAdded(
                        new ClassEvent.Place(new SeatNumber(7), "Una")))),
                new Action("seat taken away", c -> c.wish(new ClassEvent.SeatTakenAway(new SeatNumber(6)))),
                new Action("guest corrected", c -> c.wish(new ClassEvent.GuestCorrected(one, "Una", "B", "nuts"))),
                new Action("activity opened", c -> c.openActivity("labels")),
                new Action("activity closed", c -> c.closeActivity("refreshments")),
                new Action("activity extended", c -> c.wish(new ClassEvent.ActivityExtended(labels, 5))),
                new Action("activity moved", c -> c.wish(new ClassEvent.ActivityMoved(labels, TestClass.instant(50)))),
                new Action("activity skipped", c -> c.wish(new ClassEvent.ActivitySkipped(labels))),
                new Action("activity joined", c -> c.wish(new ClassEvent.ActivityJoined(one, labels))),
                new Action("activity quit", c -> c.quit(4, "refreshments")),
                new Action("closing", TestClass::close));
    }

    /** Seat 1 has poured, 3 is away, 4 is claimed and at the refreshments, 5 shares 4's candle, 6 came in just now. */
    private static TestClass inTheMiddle() {
        TestClass c = TestClass.evening(6).open("welcome").minute(5).open("wicks").minute(10);
        for (int seat = 1; seat <= 4; seat++) {
            c.finish(seat, "wicks").finish(seat, "blend");
        }
        return c.minute(20).open("pour").pair(4, 5).claim(4, "MB").openActivity("refreshments")
                .join(4, "refreshments").minute(25).finish(1, "pour").pause(3).minute(30);
    }

    @ParameterizedTest
    @MethodSource("actions")
    void what_an_undone_event_had_changed_is_as_if_it_had_never_been(Action action) {
        TestClass c = inTheMiddle();
        Digest before = Digest.of(c.live());

        action.act.apply(c);
        assertThat(Digest.of(c.live())).as("the action shows").isNotEqualTo(before);

        c.undoLast();
        assertThat(Digest.of(c.live())).isEqualTo(before);
    }

    @Test void every_sort_of_event_that_may_be_undone_is_tried_above() {
        int sorts = ClassEvent.Cases.class.getDeclaredMethods().length;

        assertThat(actions()).hasSize(sorts - 4); // all but the creation, a new set-up, the undoing and the clock
    }

    @Test void an_event_is_undone_once() {
        TestClass c = TestClass.evening(2).open("wicks").finish(1, "wicks");
        long tap = c.seq();
        c.undo(tap);

        assertThat(c.refusalOf(new ClassEvent.Undone(tap))).isEqualTo(new Refusal.AlreadySo(State.UNDONE));
    }

    @Test void neither_the_creation_nor_an_undoing_is_undone() {
        TestClass c = TestClass.evening(2).open("wicks").undoLast();

        assertThat(c.refusalOf(new ClassEvent.Undone(1))).isEqualTo(new Refusal.CannotUndo(1));
        assertThat(c.refusalOf(new ClassEvent.Undone(c.seq()))).isEqualTo(new Refusal.CannotUndo(c.seq()));
    }

    @Test void an_event_that_never_was_is_not_undone() {
        TestClass c = TestClass.evening(2);

        assertThat(c.refusalOf(new ClassEvent.Undone(7))).isEqualTo(new Refusal.NoSuchEvent(7));
        assertThat(c.refusalOf(new ClassEvent.Undone(0))).isEqualTo(new Refusal.NoSuchEvent(0));
        assertThat(c.refusalOf(new ClassEvent.Undone(Long.MIN_VALUE)))
                .isEqualTo(new Refusal.NoSuchEvent(Long.MIN_VALUE));
    }

    @Test void after_an_undo_the_same_step_can_be_tapped_again() {
        TestClass c = TestClass.evening(2).open("wicks").minute(6).finish(1, "wicks").undoLast();
        assertThat(c.stepOf(1)).isEqualTo("wicks");

        c.minute(9).finish(1, "wicks");
        assertThat(c.sinceMinute(1)).isEqualTo(9);
    }

    @Test void undoing_the_tap_that_jumped_closes_the_gap_behind_it() {
        TestClass c = TestClass.evening(2).open("wicks").minute(6).finish(1, "blend");
        assertThat(c.gapsOf(1)).containsExactly("wicks");

        c.undoLast();
        assertThat(c.gapsOf(1)).isEmpty();
        assertThat(c.stepOf(1)).isEqualTo("wicks");
    }

    @Test void undoing_the_tap_that_filled_a_gap_shows_the_gap_again() {
        TestClass c = TestClass.evening(2).open("wicks").minute(6).finish(1, "blend").finish(1, "wicks").undoLast();

        assertThat(c.gapsOf(1)).containsExactly("wicks");
        assertThat(c.stepOf(1)).isEqualTo("pour");
    }

    @Test void undoing_a_tap_below_the_furthest_leaves_a_gap() {
        TestClass c = TestClass.evening(2).open("wicks").minute(6).finish(1, "wicks");
        long wicks = c.seq();
        c.minute(9).finish(1, "blend").undo(wicks);

        assertThat(c.gapsOf(1)).containsExactly("wicks");
        assertThat(c.sinceMinute(1)).isEqualTo(9);
    }

    @Test void a_step_in_use_stays_open() {
        TestClass c = TestClass.evening(3).open("welcome").minute(5).open("wicks");
        long opening = c.seq();
        c.minute(9).finish(3, "wicks");

        assertThat(c.refusalOf(new ClassEvent.Undone(opening)))
                .isEqualTo(new Refusal.StepInUse(new StepId("wicks"), List.of(new SeatNumber(3))));
    }

    @Test void an_opening_nobody_has_used_is_taken_back() {
        TestClass c = TestClass.evening(3).open("welcome").minute(5).open("wicks").undoLast();

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.LISTENING);
        assertThat(c.refusalOf(finished(1, "wicks"))).isEqualTo(new Refusal.StepNotOpen(new StepId("wicks")));
    }

    @Test void undoing_the_tap_that_ended_a_pause_brings_the_pause_back() {
        TestClass c = TestClass.evening(2).open("wicks").minute(4).pause(1).minute(7).finish(1, "wicks");
        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.WORKING);

        c.undoLast();
        assertThat(c.standing(1)).isEqualTo(
                new Standing(Standing.Phase.PAUSED, c.standing(1).step(), TestClass.instant(4)));
    }

    @Test void undoing_a_correction_brings_the_first_word_back() {
        TestClass c = TestClass.evening(2).open("wicks").minute(6).finish(1, "wicks");
        long tap = c.seq();
        c.minute(8).retime(tap, 5).retime(tap, 4);
        assertThat(c.sinceMinute(1)).isEqualTo(4);

        c.undoLast();
        assertThat(c.sinceMinute(1)).isEqualTo(5);
    }
}
