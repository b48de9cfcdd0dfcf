package benchpace.web.screen.instructor;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.board.waiting.WaitView;
import benchpace.live.ClassEvent;
import benchpace.plan.StepId;
import benchpace.web.screen.Evening;
import benchpace.web.screen.Evenings;
import benchpace.web.screen.Screens;
import benchpace.web.screen.guest.GuestPage;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.screen.wait.WaitCall;
import benchpace.web.screen.wall.WallSeats;
import benchpace.words.StageWords;
import benchpace.words.Times;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What the class is doing, what comes next, and who is not there yet, as the screens say it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HeadingAndNextTest {
    private static final Viewer LEAD = new Viewer(Role.INSTRUCTOR, "");
    private static final Viewer HELPER = new Viewer(Role.HELPER, "MO");
    private static final Map<String, ClassView> APART = Evenings.apart();

    private final Screens screens = new Screens();

    private String part(ScreenKind kind, ClassView view, String name) {
        return screens.fragments(kind, view, kind == ScreenKind.HELPER ? HELPER
                : kind == ScreenKind.WALL ? Viewer.GUEST : LEAD).get(name);
    }

    private String said(ScreenKind kind, ClassView view, String name) {
        return part(kind, view, name).replaceAll("<[^>]+>", " ").replaceAll("\\s+", " ").replace(" .", ".").strip();
    }

    // ---- the heading

    @Test void a_late_seat_leaves_heading_and_script_alone_and_has_a_line_of_its_own() {
        ClassView late = APART.get("late");

        assertThat(said(ScreenKind.INSTRUCTOR, late, "now")).contains("Blend a fragrance ",
                "Not done: seats 1, 2 and 4.", "Seat 6 starts at Choose a tin.").doesNotContain("of 6 done");
        assertThat(said(ScreenKind.INSTRUCTOR, late, "middle")).contains("2 of 6 done");
        assertThat(said(ScreenKind.HELPER, late, "now")).contains("Blend a fragrance ", "2 of 6 done",
                "Seat 6 starts at Choose a tin.");
        assertThat(said(ScreenKind.WALL, late, "wall-main")).contains("Blend a fragrance")
                .doesNotContain("Choose a tin");
    }

    @Test void the_sheet_of_a_seat_at_an_earlier_step_has_the_cue_and_the_caution_of_that_step() {
        ClassView late = APART.get("late");
        String cue = Evening.plan("table-of-six").steps().get(1).say();

        assertThat(cue).isNotEmpty();
        assertThat(screens.sheet(late, 6, LEAD)).contains(cue);
        assertThat(screens.sheet(late, 1, LEAD)).doesNotContain("now__say");
    }

    @Test void while_most_wait_for_their_candles_the_cure_is_the_heading_and_the_slow_seat_is_told_apart() {
        ClassView slow = APART.get("slow");

        assertThat(said(ScreenKind.INSTRUCTOR, slow, "now"))
                .contains("Let it set ", "Seat 4 is at Choose the fragrance.");
        assertThat(said(ScreenKind.WALL, slow, "wall-main")).contains("setting").doesNotContain("fragrance");
    }

    @Test void many_at_several_earlier_steps_are_told_in_one_line() {
        ClassView view = Evening.of("big-table", 24).open(0, "welcome").open(5, "vessel")
                .done(7, "vessel", Evening.seats(1, 20)).open(10, "wicks").done(15, "wicks", Evening.seats(1, 16))
                .open(20, "fragrance").done(24, "fragrance", Evening.seats(1, 14)).open(28, "mix").view(29);

        assertThat(said(ScreenKind.INSTRUCTOR, view, "now")).contains("10 seats are at earlier steps.");
    }

    // ---- one number

    @Test void who_is_left_behind_is_counted_by_steps_where_the_count_of_the_heading_says_another_number() {
        ClassView spread = APART.get("spread");

        assertThat(said(ScreenKind.INSTRUCTOR, spread, "middle")).contains("3 of 6 done");
        assertThat(said(ScreenKind.INSTRUCTOR, spread, "now")).contains("Not done: seats 2, 4 and 6.");
        assertThat(said(ScreenKind.INSTRUCTOR, spread, "next"))
                .contains("leaves 5 seats behind: 3 not done with Blend a fragrance, 2 more at Weigh it");
    }

    @Test void while_candles_set_it_is_told_where_those_are_whom_the_next_step_leaves_behind() {
        Evening pouring = Evening.of("evening-pour", 8).open(0, "welcome").open(26, "mix")
                .done(29, "mix", Evening.seats(1, 8)).open(31, "pour").done(34, "pour", 1, 2, 3, 4, 5)
                .done(36, "centre", 1, 2, 3, 4, 5).open(40, "trim");

        assertThat(said(ScreenKind.INSTRUCTOR, pouring.view(41), "now")).contains("Let it set");
        assertThat(said(ScreenKind.INSTRUCTOR, pouring.view(41), "next"))
                .contains("leaves 8 seats behind: 3 at Pour, 5 at Let it set").doesNotContain("not done with");
        assertThat(said(ScreenKind.INSTRUCTOR, pouring.done(41.5, "pour", 6).view(42), "next"))
                .contains("3 at earlier steps, 5 at Let it set");
    }

    @Test void where_both_speak_of_the_same_seats_nothing_is_added() {
        assertThat(said(ScreenKind.INSTRUCTOR, Evenings.wicks().view(19.5), "next"))
                .isEqualTo("Open: Choose the fragrance leaves seats 4, 7 and 8 behind");
    }

    @Test void a_seat_that_has_just_begun_to_wait_says_so_in_one_word() {
        ClassView view = Evening.of("table-of-six", 6).open(0, "hello").done(7, "tin", 1).view(7.2);

        assertThat(view.seat(1).mark()).isEqualTo(SeatView.Mark.WAITING);
        assertThat(part(ScreenKind.INSTRUCTOR, view, "seat-1")).contains("waiting", "data-count-style=\"silent\"");
        assertThat(part(ScreenKind.INSTRUCTOR, view, "seat-2")).contains("data-count-style=\"bare\"");
    }

    @Test void guests_who_say_that_they_are_done_turn_a_filled_tile_into_the_question() {
        ClassView view = APART.get("says-done");

        assertThat(view.seat(4).flag()).isPresent();
        assertThat(part(ScreenKind.INSTRUCTOR, view, "seat-4")).contains("says done", "face--asks")
                .doesNotContain("face--behind", "face--slipping", "min over");
        assertThat(part(ScreenKind.HELPER, view, "seats")).doesNotContain("face--behind");
    }

    @Test void a_seat_behind_at_a_step_it_has_just_begun_is_not_said_to_have_just_begun() {
        ClassView view = Evening.of("evening-pour", 8).open(0, "welcome").done(7, "vessel", 1, 2, 4, 5, 6, 7, 8)
                .open(10, "wicks").done(13, "wicks", 1, 2, 4, 5, 6).done(16, "vessel", 3)
                .event(16.1, new ClassEvent.HelpClaimed(Evenings.seat(3), "MO")).view(16.7);

        assertThat(view.seat(3).mark()).isEqualTo(SeatView.Mark.BEHIND);
        assertThat(part(ScreenKind.INSTRUCTOR, view, "seat-3")).contains("behind", "Set the wick")
                .doesNotContain("data-count-from");
        assertThat(said(ScreenKind.HELPER, view, "help")).contains("Seat 3: Set the wick, seems stuck.");
    }

    // ---- what comes next

    @Test void the_wall_names_the_step_after_the_heading_be_it_led_or_free() {
        Evening hello = Evening.of("table-of-six", 6).open(0, "hello");

        assertThat(said(ScreenKind.WALL, hello.view(2), "wall-rail")).isEqualTo("Hello and aprons then Choose a tin");
        assertThat(said(ScreenKind.WALL, hello.view(5), "wall-rail")).isEqualTo("Choose a tin then Set the wick");
        assertThat(said(ScreenKind.WALL, Evening.of("table-of-six", 6).view(-5), "wall-rail"))
                .isEqualTo("first Hello and aprons");
        assertThat(said(ScreenKind.WALL, APART.get("slow"), "wall-rail")).isEqualTo("Let it set then Trim the wick");
        assertThat(said(ScreenKind.WALL, APART.get("wrapped"), "wall-rail")).isEqualTo("Wrap it");
    }

    @Test void closing_the_class_is_a_small_button_while_somebody_is_not_done_and_the_place_says_what_goes_on() {
        String opens = part(ScreenKind.INSTRUCTOR, APART.get("trim-opens"), "next");

        assertThat(opens).contains("button--small button--quiet\" type=\"button\" id=\"next-button\"")
                .doesNotContain("next--close", "button--primary");
        assertThat(said(ScreenKind.INSTRUCTOR, APART.get("trim-opens"), "next"))
                .isEqualTo("Trim and close 0 of 6 done Close the class");
    }

    @Test void closing_the_class_is_the_large_button_once_the_last_seat_is_done_with_the_last_step() {
        Evening trimmed = Evenings.trimOpens().done(104, "trim", 1, 2, 3, 4, 5, 6).done(109, "wrap", 1, 2, 3, 4, 5);

        assertThat(said(ScreenKind.INSTRUCTOR, trimmed.view(110.5), "next"))
                .isEqualTo("Wrap it 5 of 6 done Close the class");
        assertThat(part(ScreenKind.INSTRUCTOR, trimmed.done(111, "wrap", 6).view(112), "next"))
                .contains("next--close", "Everybody is done").doesNotContain("button--small");
    }

    @Test void a_talk_at_the_end_holds_nobody_and_the_step_under_way_is_told_in_its_place() {
        assertThat(said(ScreenKind.INSTRUCTOR, Evenings.closing().get("wrapping"), "next"))
                .isEqualTo("Label and wrap 2 of 6 done Close the class");
        assertThat(part(ScreenKind.INSTRUCTOR, Evenings.closing().get("done"), "next")).contains("next--close");
    }

    // ---- nobody is called to finish a candle that no hand has decided on

    private static Evening poured() {
        int[] all = Evening.seats(1, 8);
        return Evening.of("evening-pour", 8).open(0, "welcome").done(8, "vessel", all).open(9, "wicks")
                .done(13, "wicks", all).open(16, "fragrance").done(21, "fragrance", all).open(26, "mix")
                .done(29, "mix", all).open(31, "pour").done(34, "pour", all).done(37, "centre", all);
    }

    private static Evening judged(Evening evening, int... seats) {
        for (int seat : seats) {
            evening.event(100, new ClassEvent.JudgedSet(Evenings.seat(seat)));
        }
        return evening;
    }

    @Test void the_wall_calls_to_the_trim_by_number_only_those_whose_candle_was_judged() {
        Evening some = judged(poured(), 1, 3, 5).open(102, "trim");

        assertThat(said(ScreenKind.WALL, some.view(103), "wall-main"))
                .contains("Trim the wick For seats 1, 3 and 5. Nearly there");
        assertThat(said(ScreenKind.WALL, some.done(104, "trim", 1, 5).view(105), "wall-main"))
                .contains("Trim the wick For seat 3. Nearly there", "2 of 8 done");
        assertThat(said(ScreenKind.WALL, some.done(106, "trim", 3).view(107), "wall-main"))
                .contains("Trim the wick Your host comes round", "3 of 8 done").doesNotContain("trim your wick");
    }

    @Test void the_wall_calls_everyone_once_every_candle_was_judged() {
        ClassView view = judged(poured(), Evening.seats(1, 8)).open(102, "trim").view(103);

        assertThat(said(ScreenKind.WALL, view, "wall-main"))
                .contains("Trim the wick Nearly there: trim your wick.");
    }

    @Test void while_no_candle_was_judged_the_wall_keeps_to_the_hand_test_and_the_open_trim_comes_next() {
        ClassView none = poured().open(102, "trim").view(103);

        assertThat(StageWords.heading(none)).isEqualTo("Trim the wick");
        assertThat(said(ScreenKind.WALL, none, "wall-main")).contains("hand test").doesNotContain("rim the wick");
        assertThat(said(ScreenKind.WALL, none, "wall-wait")).doesNotContain("trim your wick");
        assertThat(said(ScreenKind.WALL, none, "wall-rail")).isEqualTo("Let it set then Trim the wick");
    }

    @Test void the_rail_stands_at_the_cure_as_the_heading_does_however_many_steps_of_the_finish_are_open() {
        ClassView none = poured().open(102, "trim").open(104, "wrap").view(105);

        assertThat(none.present().step().map(ClassView.StepView::id)).contains("wrap");
        assertThat(said(ScreenKind.WALL, none, "wall-main")).contains("hand test");
        assertThat(said(ScreenKind.WALL, none, "wall-rail")).isEqualTo("Let it set then Trim the wick");
    }

    @Test void a_guest_is_not_asked_whether_the_trim_is_done_before_its_candle_was_judged() {
        ClassView some = judged(poured().event(-2, new ClassEvent.GuestsMayTell(true)), 1).open(102, "trim").view(103);

        assertThat(some.seat(2).canFinish()).isTrue();
        assertThat(GuestPage.of(some, 2, "code").mayTell()).isFalse();
        assertThat(GuestPage.of(some, 2, "code").heading()).doesNotContain("Trim");
        assertThat(GuestPage.of(some, 1, "code").mayTell()).isTrue();
    }

    // ---- one range, told once

    @Test void a_row_that_would_say_of_all_candles_what_the_words_above_say_is_left_out() {
        Times times = new Times(Evening.ZONE);
        Evening many = Evening.of("big-table", 24).open(0, "welcome").open(30, "pour");
        for (int seat : Evening.seats(1, 24)) {
            many.event(34 + seat * 0.04, new ClassEvent.StepFinished(Evenings.seat(seat), new StepId("pour")));
        }
        ClassView setting = many.computed(45);

        assertThat(setting.cure().alike()).as("the last of many is later than each of them").isFalse();
        assertThat(said(ScreenKind.WALL, setting, "wall-main")).contains("First from about", "all by about");
        assertThat(WallSeats.of(setting, times).groups()).singleElement()
                .satisfies(all -> assertThat(all.clock()).isEmpty());
        assertThat(WallSeats.of(judged(poured(), 2).computed(101), times).groups()).singleElement()
                .satisfies(all -> assertThat(all.clock()).isEmpty());
    }

    @Test void the_sheet_tells_once_when_a_candle_is_firm() {
        String sheet = screens.sheet(poured().computed(60), 2, LEAD);

        assertThat(sheet).containsOnlyOnce("ready about").contains("<dt>Skin</dt>").doesNotContain("95 % set</dt>");
    }

    @Test void a_guest_reads_when_the_host_comes_before_being_asked_to_let_the_candle_stand_until_then() {
        ClassView view = poured().event(-2, new ClassEvent.GuestsMayTell(true)).view(94);

        assertThat(GuestPage.of(view, 2, "code").sentence())
                .matches("Your host will try it by hand, about .* to .*; please let it stand until then\\.");
    }

    // ---- calls

    /** All have wrapped but the last seat, whose candle still sets. */
    private static Evening late() {
        int[] most = Evening.seats(1, 7);
        return judged(Evening.of("evening-pour", 8).open(0, "welcome").open(26, "mix")
                .done(29, "mix", Evening.seats(1, 8)).open(31, "pour").done(34, "pour", most).done(37, "centre", most)
                .done(88, "pour", 8).done(89, "centre", 8), most).open(102, "trim").done(105, "trim", most)
                .done(110, "wrap", most);
    }

    @Test void nobody_is_called_in_the_wait_once_the_class_has_gone_on_to_its_farewell() {
        assertThat(late().view(111).waiting().calls()).isNotEmpty();
        ClassView farewell = late().open(112, "farewell").view(112.5);

        assertThat(said(ScreenKind.INSTRUCTOR, farewell, "now")).contains("Before you light it");
        assertThat(farewell.waiting().calls()).isEmpty();
        assertThat(farewell.waiting().leisure()).isEmpty();
        assertThat(farewell.waiting().changes()).isEmpty();
        assertThat(said(ScreenKind.INSTRUCTOR, farewell, "wait")).isEqualTo("In the wait The wait");
    }

    @Test void a_seat_whose_candle_sets_at_the_farewell_still_waits_on_every_screen() {
        ClassView farewell = late().open(112, "farewell").view(112.5);

        assertThat(farewell.waiting().plannedAt()).isPresent();
        assertThat(farewell.waiting().strips()).extracting(WaitView.StripView::seat).contains(8);
        assertThat(part(ScreenKind.WAIT, farewell, "wait-chart")).contains("<svg")
                .doesNotContain("Nobody waits any more");
        assertThat(screens.sheet(farewell, 8, LEAD)).contains("data-command=\"join-activity\"");
    }

    @Test void a_call_that_counts_down_fits_one_thing_and_many() {
        ClassView view = Evenings.cure().computed(47);

        assertThat(WaitCall.all(view, new Times(Evening.ZONE)).stream().map(WaitCall::lead)).isNotEmpty()
                .noneMatch(lead -> lead.endsWith(" opens"));
    }
}
