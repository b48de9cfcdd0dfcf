package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.waiting.WaitView.ActivityView;
import benchpace.board.waiting.WaitView.ChangeView;
import benchpace.board.waiting.WaitView.Told;
import benchpace.breaks.BrokenAnnouncement.Reason;
import benchpace.plan.ActivityKind;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What guests were told and does not hold is told in one sentence for each cause. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ChangeWordsTest {
    private static final Times TIMES = new Times(ZoneOffset.UTC);
    private static final ActivityView LABELS = activity("labels", "Label table", false, false);
    private static final ActivityView DRINKS = activity("drinks", "Drinks", true, false);
    private static final ActivityView CRAFT = activity("craft", "Short craft", false, true);
    private static Instant at(int minute) {
        return Instant.parse("2026-03-02T20:00:00Z").plusSeconds(60L * minute);
    }

    private static ActivityView activity(String id, String name, boolean open, boolean skipped) {
        return new ActivityView(id, name, ActivityKind.BROWSING, false, "", "", "", 4, open, skipped,
                Optional.empty(), 0, List.of(), List.of(), Optional.empty(), Optional.empty(), false, Optional.empty());
    }

    private static Told moved(String activity, int from, int to, Integer... seats) {
        return new Told(activity, at(from), Optional.of(at(to)), seats(seats));
    }

    private static Told off(String activity, int from, Integer... seats) {
        return new Told(activity, at(from), Optional.empty(), seats(seats));
    }

    private static List<SeatNumber> seats(Integer... seats) {
        return Stream.of(seats).map(SeatNumber::new).toList();
    }

    private static ChangeView change(Reason why, Told... told) {
        return new ChangeView(at(0), why, Optional.of("Drinks"), Optional.empty(), List.of(told));
    }

    private static ChangeView done(Reason why, ActivityView to, Told... told) {
        return new ChangeView(at(0), why, Optional.empty(), Optional.of(to), List.of(told));
    }

    private static String of(ChangeView change) {
        return ChangeWords.sentence(change, TIMES);
    }

    @Test void what_moves_is_told_from_when_to_when_for_whom_and_why() {
        assertThat(of(done(Reason.INSTRUCTOR_MOVED_IT, LABELS, moved("Label table", 5, 10, 1, 2, 3, 4))))
                .isEqualTo("Label table moved from 20:05 to 20:10 for seats 1 to 4, as you moved it.");
        assertThat(of(change(Reason.NOT_FREE_IN_TIME, moved("Label table", 5, 10, 3))))
                .isEqualTo("Label table moved from 20:05 to 20:10 for seat 3, because the seat poured late.");
    }

    @Test void what_is_off_says_so() {
        assertThat(of(done(Reason.NOT_OFFERED, CRAFT, off("Short craft", 5, 2, 6))))
                .isEqualTo("Short craft at 20:05 is off for seats 2 and 6, as it was skipped.");
        assertThat(of(change(Reason.STILL_AT_OTHER, off("Label table", 5, 2, 6))))
                .isEqualTo("Label table at 20:05 is off for seats 2 and 6, as the seats are still at Drinks.");
    }

    @Test void what_was_done_to_one_activity_names_it_once() {
        ChangeView change = done(Reason.INSTRUCTOR_MOVED_IT, DRINKS, moved("Drinks", 5, 0, 1, 2),
                moved("Drinks", 20, 0, 3));

        assertThat(of(change)).isEqualTo("As you started Drinks: 20:05 to 20:00 for seats 1 and 2; "
                + "20:20 to 20:00 for seat 3.");
        assertThat(ChangeWords.brief(change, TIMES))
                .isEqualTo("As you started Drinks, 2 things that were told have moved or are off.");
    }

    @Test void one_cause_of_several_changes_is_told_first_and_short_where_room_is() {
        ChangeView change = change(Reason.OTHER_STARTED, moved("Label table", 5, 20, 1), off("Short craft", 10, 2));

        assertThat(of(change)).isEqualTo("As you started Drinks: Label table moved from 20:05 to 20:20 for seat 1; "
                + "Short craft at 20:10 is off for seat 2.");
        assertThat(ChangeWords.brief(change, TIMES))
                .isEqualTo("As you started Drinks, 2 things that were told have moved or are off.");
    }
}
