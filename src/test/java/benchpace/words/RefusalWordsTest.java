package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.Refusal;
import benchpace.live.TestClass;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import benchpace.shelf.EntryId;
import benchpace.shelf.ShelfRefusal;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What the rules and the shelf refuse is told by the names that people gave things. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RefusalWordsTest {
    private static final Plan PLAN = TestClass.evening(2).live().plan();
    private static final StepId WICKS = new StepId("wicks");
    private static final String WICKS_NAME = PLAN.step(WICKS).orElseThrow().name();

    private static Explanation of(Refusal refusal) {
        return RefusalWords.of(PLAN, refusal);
    }

    private static Explanation of(ShelfRefusal refusal) {
        return ShelfWords.of(refusal, new Times(ZoneOffset.UTC));
    }

    @Test void what_does_not_fit_how_things_stand_is_a_conflict() {
        assertThat(of(new Refusal.AlreadyFinished(new SeatNumber(2), WICKS, 7))).isEqualTo(new Explanation(
                Explanation.Kind.CONFLICT, "already-finished", "Already done",
                "Seat 2 is done with \"" + WICKS_NAME + "\" already."));
        assertThat(of(new Refusal.StepInUse(WICKS, List.of(new SeatNumber(1), new SeatNumber(2)))).detail())
                .isEqualTo("\"" + WICKS_NAME + "\" stays open: seat 1, 2 are done with it. Take that back first.");
    }

    @Test void what_is_so_already_or_is_not_so_is_said_in_plain_words() {
        assertThat(of(new Refusal.AlreadySo(Refusal.State.JUDGED_SET)).detail()).isEqualTo("It is judged set already.");
        assertThat(of(new Refusal.NotSo(Refusal.State.TAKING_PART)).detail()).isEqualTo("It is not taking part.");
    }

    @Test void what_is_not_in_the_class_or_cannot_be_is_a_value() {
        assertThat(of(new Refusal.NoSuchSeat(new SeatNumber(9), 2))).isEqualTo(new Explanation(
                Explanation.Kind.VALUE, "no-such-seat", "The class has no such thing",
                "There is no seat 9; this class has seats 1 to 2."));
        assertThat(of(new Refusal.Absurd("celsius", 200, 10, 95)).detail())
                .isEqualTo("200 °C (392 °F) cannot be right here: what is believed is 10 °C (50 °F) to "
                        + "95 °C (203 °F). Was the unit the right one?");
    }

    @Test void an_id_that_stands_for_something_else_is_told_alike_of_the_class_and_the_shelf() {
        assertThat(of(new Refusal.IdTaken(4)).title()).isEqualTo(of(new ShelfRefusal.IdTaken(new EntryId(4))).title());
        assertThat(of(new Refusal.IdTaken(4)).detail()).isEqualTo("Event 4 of this class is another tap with the same "
                + "id. Nothing was changed; send it with an id of its own.");
    }

    @Test void a_candle_that_is_not_on_the_shelf_is_absent_and_times_are_told_with_their_day() {
        assertThat(of(new ShelfRefusal.NoSuchEntry(new EntryId(4))).kind()).isEqualTo(Explanation.Kind.ABSENT);
        Instant at = Instant.parse("2026-03-05T18:30:00Z");

        assertThat(of(new ShelfRefusal.AlreadyCollected(new EntryId(4), at)).detail())
                .isEqualTo("It was handed out on Thursday 5 March, 18:30.");
    }
}
