package benchpace.simulation;

import static benchpace.simulation.RecordedEvening.at;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.RoomCureClock;
import benchpace.board.cooling.SaidRange;
import benchpace.board.pacing.HomeTime.Promise;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.pacing.SeatFlag.Level;
import benchpace.board.view.ClassModels;
import benchpace.board.view.ClassView;
import benchpace.board.view.ClassView.Stage;
import benchpace.board.view.SeatView;
import benchpace.board.view.SeatView.Mark;
import benchpace.board.view.ViewMaker;
import benchpace.board.waiting.WaitView.CallState;
import benchpace.cure.room.RoomFit;
import benchpace.files.roster.Demo;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.Seat;
import benchpace.plan.SeatNumber;
import java.io.IOException;
import java.nio.file.Files;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * The evening that comes with the program shows what it is there to show, seen as the board sees it in a room that has
 * taught nothing: quiet first, a straggler whom a helper catches, a tick that was forgotten, another straggler whom
 * nobody sees for long, then a quiet wait full of things to do, and home some minutes late.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RecordedEveningTest {
    private static final List<Recorded> EVENING = Demo.recordedEvening();
    private static final ViewMaker MAKER = new ViewMaker(new RoomCureClock((id, room) -> RoomFit.untaught()),
            new PosteriorPaceWatch(), ZoneOffset.UTC);

    private static LiveClass live(Instant now) {
        return LiveClass.of(EVENING.stream().filter(event -> !event.recordedAt().isAfter(now)).toList());
    }

    private static LiveClass whole() {
        return LiveClass.of(EVENING);
    }

    private static ClassView view(String minute) {
        return MAKER.view("evening", live(at(minute)), at(minute));
    }

    private static ClassView.HelpView onlyCall(String minute) {
        List<ClassView.HelpView> help = view(minute).help();
        assertThat(help).as("who needs somebody at " + minute).hasSize(1);
        return help.get(0);
    }

    private static Seat seat(int number) {
        return whole().seat(new SeatNumber(number)).orElseThrow();
    }

    @Test void the_file_is_what_is_made_of_its_script() throws IOException {
        assertThat(Files.readString(RecordedEvening.FILE)).isEqualTo(RecordedEvening.text());
    }

    @Test void a_class_of_eight_is_watched_in_two_minutes_at_the_highest_speed() {
        assertThat(whole().seats()).hasSize(8);
        assertThat(Duration.between(at("0:00"), whole().closedAt().orElseThrow()))
                .isBetween(Duration.ofMinutes(95), Duration.ofMinutes(120));
    }

    @Test void nobody_is_called_for_while_all_are_on_pace() {
        assertThat(List.of("6:00", "10:00", "14:30", "16:30", "20:00", "25:30", "28:00"))
                .allSatisfy(minute -> assertThat(view(minute).help()).as(minute).isEmpty());
    }

    @Test void a_tick_forgotten_is_taken_for_done_and_asked_about_and_later_filled() {
        assertThat(view("15:00").next().orElseThrow().rows()).filteredOn(row -> row.seat() == 8)
                .singleElement().matches(row -> row.doneProbability() > 0.5 && row.atStep().equals("wicks"));
        assertThat(view("15:00").help()).isEmpty();
        assertThat(view("18:10").seat(8).question()).isTrue();

        assertThat(view("18:40").seat(8).question()).isFalse();
        assertThat(whole().corrected()).filteredOn(r -> r.event().equals(new ClassEvent.StepFinished(
                new SeatNumber(8), whole().plan().steps().get(2).id()))).extracting(Recorded::at)
                .containsExactly(at("12:53"));
    }

    @Test void the_first_straggler_is_asked_about_and_helped_and_costs_nothing_more() {
        assertThat(onlyCall("21:50")).matches(call -> call.seat() == 4 && call.flag().level() == Level.SLIPPING);
        assertThat(onlyCall("23:00")).matches(call -> call.seat() == 4 && call.flag().level() == Level.BEHIND
                && call.helper().equals(Optional.of("MO")));
        assertThat(view("23:40").help()).isEmpty();
    }

    @Test void the_second_straggler_is_red_for_minutes_before_somebody_goes_and_says_what_it_costs() {
        assertThat(List.of("32:30", "34:00", "36:00", "38:00")).allSatisfy(minute -> assertThat(onlyCall(minute))
                .matches(call -> call.seat() == 1 && call.flag().level() == Level.BEHIND
                        && call.flag().priceMinutes() >= 5 && call.helper().isEmpty()));
        assertThat(onlyCall("39:00").helper()).contains("MO");
        assertThat(view("41:30").help()).isEmpty();
    }

    @Test void a_guest_comes_late_a_pair_shares_a_candle_and_one_was_poured_again() {
        assertThat(view("5:00").seat(6).mark()).isEqualTo(Mark.EXPECTED);
        assertThat(view("12:00").seat(6)).matches(s -> s.name().equals("Ines") && s.mark() == Mark.ON_PACE);
        assertThat(view("36:00").seat(3).sharesWith()).contains(2);
        assertThat(whole().progress().pouredAt(seat(5))).contains(at("39:15"));
    }

    @Test void who_leaves_early_leaves_a_candle_that_is_still_soft() {
        SeatView left = view("63:00").seat(7);

        assertThat(left.mark()).isEqualTo(Mark.LEFT);
        assertThat(left.candle().orElseThrow().said().phase(at("63:00"))).isNotEqualTo(SaidRange.Phase.PAST);
        assertThat(seat(7).judgedSetAt()).isEmpty();
    }

    @Test void thermometers_are_read_and_move_the_range_of_the_candles() {
        assertThat(whole().roomReadings()).hasSize(2);
        assertThat(whole().pourReadings()).hasSize(1);
        assertThat(seat(2).readings()).hasSize(1);
        assertThat(view("59:00").cure().likely().orElseThrow()).isAfter(view("58:30").cure().likely().orElseThrow());
    }

    @Test void the_wait_is_quiet_and_everybody_has_something_to_do_in_it() {
        ClassModels models = MAKER.models("evening");
        assertThat(IntStream.rangeClosed(14, 36).mapToObj(third -> at(3 * third + ":00"))
                .map(now -> MAKER.view("evening", live(now), models, now)))
                .allSatisfy(view -> assertThat(view.help()).as(view.now().toString()).isEmpty());
        assertThat(view("47:00").waiting().calls()).anyMatch(call -> call.state() == CallState.AHEAD);
        assertThat(view("60:00").waiting().strips()).hasSize(8)
                .allMatch(strip -> strip.parts().size() >= 3 && strip.wholeIdle() <= 10);
        assertThat(whole().log().stream().map(Recorded::event).map(Object::getClass).distinct()).contains(
                ClassEvent.ActivityOpened.class, ClassEvent.ActivityJoined.class, ClassEvent.ActivityQuit.class,
                ClassEvent.ActivityClosed.class);
    }

    @Test void the_promise_is_likely_kept_until_somebody_stalls_and_everyone_goes_some_minutes_late() {
        assertThat(view("1:00").home().promise()).isEqualTo(Promise.PLANNED);
        assertThat(view("24:00").home().odds().orElseThrow().kept()).isGreaterThan(0.85);
        assertThat(view("40:00").home().odds().orElseThrow().kept()).isLessThan(0.65);
        assertThat(view("104:00").home().promise()).isEqualTo(Promise.LATE);

        ClassView over = view("111:00");
        assertThat(over.stage()).isEqualTo(Stage.CLOSED);
        assertThat(Duration.between(whole().promisedEnd(), over.home().ended().orElseThrow()))
                .isBetween(Duration.ofMinutes(5), Duration.ofMinutes(8));
    }

    @Test void every_candle_that_stays_is_tried_by_hand_and_every_step_told_of_everybody() {
        assertThat(whole().seats()).filteredOn(Seat::makesCandle).hasSize(6)
                .allMatch(s -> s.judgedSetAt().isPresent())
                .allMatch(s -> whole().progress().gaps(s).isEmpty() && s.finishes().size() == 8);
    }

    @Test void whoever_watches_is_told_what_to_see_in_lines_short_enough_for_a_phone() {
        List<Recorded> notes = EVENING.stream().filter(r -> r.event() instanceof ClassEvent.ClassNoted).toList();

        assertThat(notes).hasSize(10).allMatch(r -> ((ClassEvent.ClassNoted) r.event()).text().length() <= 40);
        assertThat(IntStream.range(1, notes.size()).mapToObj(i -> Duration.between(notes.get(i - 1).at(),
                notes.get(i).at()))).allMatch(between -> between.compareTo(Duration.ofMinutes(3)) > 0);
    }

    @Test void taps_come_in_bunches_and_at_no_round_seconds() {
        List<Instant> taps = EVENING.stream().filter(r -> r.event() instanceof ClassEvent.StepFinished)
                .map(Recorded::recordedAt).toList();

        assertThat(IntStream.range(1, taps.size()).filter(i -> Duration.between(taps.get(i - 1), taps.get(i))
                .toSeconds() < 10).count()).isGreaterThanOrEqualTo(taps.size() / 2);
        assertThat(taps.stream().filter(tap -> tap.getEpochSecond() % 60 == 0).count()).isLessThan(taps.size() / 10);
    }
}
