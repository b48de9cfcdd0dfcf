package benchpace.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.live.ClassEvent.Place;
import benchpace.plan.Numbering;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.TableShape;
import benchpace.plan.TestPlans;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SettingUpTest {
    private static final Instant LATER = TestClass.START.plus(Duration.ofHours(1));

    private static SeatNumber seat(int number) {
        return new SeatNumber(number);
    }

    private static Place place(int seat, String name) {
        return new Place(seat(seat), name);
    }

    private static ClassEvent.ClassSetUpAgain again(Plan plan, int... seats) {
        return new ClassEvent.ClassSetUpAgain(new Setup(plan, "Another name", LATER,
                Optional.of(LATER.plus(Duration.ofMinutes(100))), Numbering.ANTICLOCKWISE_FROM_LEFT,
                IntStream.of(seats).mapToObj(seat -> place(seat, "G" + seat)).toList()));
    }

    private static ClassEvent.SeatAdded added(int seat) {
        return new ClassEvent.SeatAdded(place(seat, "Io"));
    }

    private static ClassEvent.SeatTakenAway takenAway(int seat) {
        return new ClassEvent.SeatTakenAway(seat(seat));
    }

    private static List<Integer> seats(TestClass c) {
        return c.live().seats().stream().map(s -> s.number().value()).toList();
    }

    @Test void until_it_begins_everything_can_be_changed() {
        TestClass c = TestClass.evening(4).arrive(2, "Bo").note(2, "sits by the door").expect(3);

        c.wish(again(TestPlans.evening().heldAt("The Old Chandlery", TableShape.ROUNDS), 2, 3, 7));

        assertThat(c.live().name()).isEqualTo("Another name");
        assertThat(c.live().startsAt()).isEqualTo(LATER);
        assertThat(c.live().promisedEnd()).isEqualTo(LATER.plus(Duration.ofMinutes(100)));
        assertThat(c.live().plan().place()).isEqualTo("The Old Chandlery");
        assertThat(seats(c)).containsExactly(2, 3, 7);
        assertThat(c.seat(2).name()).isEqualTo("G2");
        assertThat(c.seat(2).notes()).as("what was noted of a place that stays").hasSize(1);
        assertThat(c.seat(3).presence()).as("who is late still is").isEqualTo(Seat.Presence.EXPECTED);
    }

    @Test void once_it_has_begun_its_plan_and_tables_stay() {
        TestClass c = TestClass.evening(4).open("welcome");

        assertThat(c.refusalOf(again(TestPlans.evening(), 1, 2))).isEqualTo(new Refusal.AlreadyBegun());

        c.undoLast();
        assertThat(c.refusalOf(again(TestPlans.evening().heldAt("Elsewhere", TableShape.ROWS), 1, 2)))
                .as("what was tapped by mistake is read by the plan it was tapped in")
                .isEqualTo(new Refusal.AlreadyBegun());
        assertThat(seats(c.wish(again(c.live().plan(), 1, 2)))).containsExactly(1, 2);
    }

    @Test void the_same_once_more_is_so_already_and_is_not_taken_back_by_an_undo() {
        TestClass c = TestClass.evening(4).wish(again(TestPlans.evening(), 1, 2));

        assertThat(c.refusalOf(again(TestPlans.evening(), 1, 2)))
                .isEqualTo(new Refusal.AlreadySo(Refusal.State.SET_UP));
        assertThat(c.refusalOf(new ClassEvent.Undone(c.seq()))).isEqualTo(new Refusal.CannotUndo(c.seq()));
    }

    @Test void the_promised_end_is_the_classes_own_then_the_plans_then_the_sum_of_its_steps() {
        LiveClass live = TestClass.evening(2).live();
        assertThat(live.promisedEnd()).isEqualTo(live.startsAt().plus(live.plan().planned()));
    }

    @Test void a_setup_that_cannot_be_is_told_in_a_sentence() {
        Plan plan = TestPlans.evening();
        Instant start = TestClass.START;
        assertThatThrownBy(() -> new Setup(plan, "x", start, Optional.of(start), Numbering.CLOCKWISE_FROM_LEFT,
                List.of(place(1, "")))).hasMessage("the promised end is not after the beginning");
        assertThatThrownBy(() -> new Setup(plan, "x", start, Optional.of(start.plus(Duration.ofHours(25))),
                Numbering.CLOCKWISE_FROM_LEFT, List.of(place(1, ""))))
                .hasMessage("the promised end is more than a day after the beginning");
        assertThatThrownBy(() -> new Setup(plan, "x", start, List.of(
                new Place(seat(1), "", "", Optional.of("no-such"), ""))))
                .hasMessage("the plan has no candle \"no-such\" for seat 1");
    }

    @Test void a_seat_is_added_and_taken_away_while_the_class_runs() {
        TestClass c = TestClass.evening(3).open("welcome").minute(5).open("wicks").minute(6).wish(added(4));

        assertThat(c.seat(4).name()).isEqualTo("Io");
        assertThat(c.standing(4).phase()).isEqualTo(Standing.Phase.WORKING);
        assertThat(c.refusalOf(added(4))).isEqualTo(new Refusal.AlreadySo(Refusal.State.AT_THE_TABLE));

        c.finish(1, "wicks");
        assertThat(c.refusalOf(takenAway(1))).isEqualTo(new Refusal.SeatInUse(seat(1)));
        assertThat(seats(c.wish(takenAway(2)))).containsExactly(1, 3, 4);
        assertThat(c.live().places()).as("the others stay where they sit").isEqualTo(4);
        assertThat(c.refusalOf(TestClass.finished(2, "wicks"))).isEqualTo(new Refusal.SeatIsAway(seat(2)));
    }

    @Test void both_are_undone() {
        TestClass c = TestClass.evening(3).arrive(2, "Bo").wish(takenAway(2));
        assertThat(c.undoLast().seat(2).name()).isEqualTo("Bo");

        assertThat(seats(c.wish(added(4)).undoLast())).containsExactly(1, 2, 3);
    }

    @Test void a_seat_that_began_a_candle_is_not_added_after_all_only_once_it_has_left() {
        TestClass c = TestClass.evening(3).open("welcome").minute(5).open("wicks").wish(added(4));
        long seq = c.seq();
        c.finish(4, "wicks");
        assertThat(c.refusalOf(new ClassEvent.Undone(seq))).isEqualTo(new Refusal.SeatInUse(seat(4)));

        c.leave(4).wish(takenAway(4));
        assertThat(c.refusalOf(added(4))).as("another guest does not get that candle")
                .isEqualTo(new Refusal.SeatIsAway(seat(4)));
        assertThat(c.refusalOf(new ClassEvent.Undone(c.seq() - 1))).as("nor does it come back behind our backs")
                .isEqualTo(new Refusal.SeatIsAway(seat(4)));
    }

    @Test void who_shared_the_candle_of_a_seat_that_is_taken_away_goes_on_with_it() {
        TestClass c = TestClass.evening(3).pair(1, 2).wish(takenAway(1));
        assertThat(c.seat(2).sharesWith()).isEmpty();
        assertThat(seats(c)).containsExactly(2, 3);
    }

    @Test void the_last_seat_stays() {
        TestClass c = TestClass.evening(2).wish(takenAway(1));
        assertThat(c.refusalOf(takenAway(2))).isEqualTo(new Refusal.LastSeat(seat(2)));
    }

    @Test void a_tap_moved_to_a_seat_that_was_added_later_counts_there() {
        TestClass c = TestClass.evening(2).open("welcome").minute(5).open("wicks").minute(6).finish(1, "wicks");
        long tap = c.seq();
        c.minute(8).wish(added(3)).reseat(tap, 3);
        assertThat(c.seat(3).finishes()).hasSize(1);
        assertThat(c.seat(1).finishes()).isEmpty();
    }

    @Test void a_guest_is_written_down_anew_without_arriving() {
        TestClass c = TestClass.evening(2).expect(2)
                .wish(new ClassEvent.GuestCorrected(seat(2), "Bodil", "choir", "no nuts"));
        assertThat(c.seat(2)).returns("Bodil", Seat::name).returns("choir", Seat::party)
                .returns("no nuts", Seat::mind).returns(Seat.Presence.EXPECTED, Seat::presence);
        c.wish(new ClassEvent.GuestCorrected(seat(2), "", "", ""));
        assertThat(c.seat(2).name()).isEmpty();
        assertThat(c.undoLast().seat(2).mind()).isEqualTo("no nuts");
    }
}
