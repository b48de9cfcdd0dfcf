package benchpace.web.classes;

import static benchpace.web.TestBoard.command;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.web.Device;
import benchpace.web.LiveScreens;
import benchpace.web.TestBoard;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A seat that falls behind, as the instructor's tablet, two helpers' phones and a guest's phone see it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PaceInABrowserTest extends LiveScreens {
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    /** Counts what would have been heard and felt. */
    private static final String EARS = """
            window.tones = 0; window.shakes = 0;
            const start = OscillatorNode.prototype.start;
            OscillatorNode.prototype.start = function (...when) { window.tones += 1; return start.apply(this, when); };
            Object.defineProperty(navigator, 'vibrate', { value: () => { window.shakes += 1; return true; } });
            """;

    /** Eight seats at the wicks, all through but seat 4. */
    @Override protected void begin() {
        board = TestBoard.open(data);
        id = board.evening();
        board.stuckAtWicks(id, 4);
    }

    private Device tablet() {
        return here(Device.tablet(board, browser)).pairedBy(board.instructor()).at("/classes/" + id + "/instructor");
    }

    private Device phone(String token) {
        return here(Device.phone(board, browser)).withScript(EARS).pairedBy(token).at("/classes/" + id + "/helper");
    }

    private String helper(String initials) {
        return board.pair(benchpace.files.Json.object().put("pin", TestBoard.HELPER_PIN).put("initials", initials));
    }

    private JsonNode seat(int number) {
        return board.state(id).json().get("seats").get(number - 1);
    }

    /** Goes on by half minutes until seat 4 is flagged so. */
    private void until(String level) {
        for (int i = 0; i < 60; i++) {
            JsonNode flags = board.state(id).json().get("flags");
            if (flags.size() > 0 && flags.get(0).get("level").textValue().equals(level)) {
                return;
            }
            board.testClock().advance(Duration.ofSeconds(30));
        }
        throw new AssertionError("seat 4 never was " + level);
    }

    /** Something new for all screens, without a word about anybody's pace. */
    private void nudge() {
        board.tap(id, command("note").put("text", "the kettle is on")).ok();
    }

    /** All but seat 4 are ticked late and in one sweep: its missing tick may mean nothing, or trouble. */
    private void unclearAtWicks() {
        id = board.evening();
        board.tap(id, TestBoard.opening("wicks")).ok();
        board.testClock().advanceMinutes(3);
        sweep("vessel", List.of(1, 2, 3, 4, 5, 6, 7, 8));
        board.testClock().advanceMinutes(6);
        sweep("wicks", List.of(1, 2, 3, 5, 6, 7, 8));
        until("slipping");
        board.testClock().advance(Duration.ofSeconds(7)); // somebody reads it first
    }

    private void sweep(String step, List<Integer> seats) {
        seats.forEach(seat -> board.tap(id, TestBoard.finish(seat, step)).ok());
    }

    @Test void slipping_is_a_question_and_one_tap_answers_it() {
        unclearAtWicks();
        Device tablet = tablet();
        assertThat(tablet.find("#help")).containsText("Seat 4: still on Set the wick?");

        tablet.find("#help-still-4").click();

        assertThat(tablet.find("#help .flag")).hasCount(0);
        assertThat(tablet.find("#help")).containsText("Nobody needs you");
        assertThat(seat(4).get("flag").isNull()).isTrue();
    }

    @Test void done_already_ticks_the_seat() {
        unclearAtWicks();
        Device phone = phone(board.helper());

        phone.find("#help-done-4").click();

        await().atMost(PATIENCE).untilAsserted(() ->
                assertThat(seat(4).get("finished")).extracting(JsonNode::textValue).contains("wicks"));
        assertThat(phone.find("#help .flag")).hasCount(0);
    }

    @Test void behind_names_the_reason_and_the_price_on_both_screens() {
        until("behind");
        Pattern sentence = Pattern.compile("Seat 4: Set the wick, \\d+ min longer than this table needs\\. "
                + "If it goes on, everyone leaves \\d+ min later\\.");

        assertThat(tablet().find("#help .flag--behind")).containsText(sentence);
        assertThat(phone(board.helper()).find("#help .flag--behind")).containsText(sentence);
    }

    @Test void tablet_and_phone_say_the_same_minutes_of_a_flagged_seat() {
        unclearAtWicks();
        board.testClock().advanceMinutes(8);
        String over = board.state(id).json().get("flags").get(0).get("minutesOver").asInt() + " min";
        Device phone = phone(board.helper());

        assertThat(tablet().find("#tile-4")).containsText(over + " over");
        assertThat(phone.find("#seats .face--behind")).containsText(over + " over");
        assertThat(phone.find("#help .flag--behind")).containsText(over + " longer");
        assertThat(phone.find("#help .count")).hasCount(0); // its minutes in the step are another fact
    }

    @Test void a_claim_is_seen_on_every_other_screen_and_sorted_ends_it() {
        until("behind");
        Device first = phone(helper("mk"));
        Device second = phone(helper("to"));
        Device tablet = tablet();

        first.find("#claim-4").click();

        assertThat(second.find("#help")).containsText("MK has it");
        assertThat(second.find("#claim-4")).hasCount(0);
        assertThat(tablet.find("#help")).containsText("MK has it");
        assertThat(tablet.find("#tile-4 .face__helper")).containsText("MK");

        first.find("#sorted-4").click();

        assertThat(second.find("#help")).containsText("Seat 4 is still slow; MK sorted it at");
        assertThat(second.find("#help")).not().containsText("Nobody needs you");
        assertThat(second.find("#claim-4")).hasCount(0);
        assertThat(second.find("#not-done")).containsText(Pattern.compile("slow, \\d+ min over, helped by MK at"));
        assertThat(tablet.find("#tile-4 .face__helper")).hasCount(0);
        assertThat(tablet.find("#tile-4 .face--slow .face__word")).containsText("slow");
        assertThat(tablet.find("#tile-4 .face--slow")).containsText(Pattern.compile("\\d+ min over"));
        assertThat(tablet.find("#tile-4")).containsText("helped by MK at");
        assertThat(tablet.find("#help .flag")).hasCount(0);
        assertThat(seat(4).get("flag").isNull()).isTrue();
        assertThat(seat(4).get("eased").get("helper").asText()).isEqualTo("MK");
        assertThat(seat(4).get("eased").get("minutesOver").asInt()).isPositive();

        board.testClock().advanceMinutes(6);

        assertThat(phone(helper("ro")).find("#claim-4")).isVisible(); // not ticked for so long: it was not
    }

    @Test void a_claim_left_for_too_long_comes_back_with_who_went_and_when() {
        until("behind");
        board.tap(id, command("claim").put("seat", 4).put("helper", "MK"), board.helper()).ok();
        board.testClock().advanceMinutes(6);

        Device phone = phone(helper("to"));

        assertThat(phone.find("#help")).containsText("MK went 6 min ago");
        phone.find("#claim-4").click();
        assertThat(phone.find("#help")).containsText("TO has it");
    }

    @Test void the_sweep_before_the_next_step_ticks_leaves_and_pauses_with_one_tap_each() {
        board.tap(id, command("undo").put("seq", tapOf(5))).ok();
        board.tap(id, command("undo").put("seq", tapOf(6))).ok();
        board.testClock().advanceMinutes(2);
        Device tablet = tablet();
        tablet.find("#next-button").click();
        assertThat(tablet.find("#next-dialog .left-behind li")).hasCount(3);
        assertThat(tablet.find("#next-dialog .left-behind__cost").first()).containsText("min to go; left now, ");

        tablet.find("#ask-done-4").click();
        assertThat(tablet.find("#next-dialog .left-behind li")).hasCount(2);
        tablet.find("#ask-still-5").click();
        assertThat(tablet.find("#next-dialog")).containsText("stays behind");
        tablet.find("#ask-pause-6").click();
        assertThat(tablet.find("#next-dialog")).containsText("paused");
        tablet.find("#ask-open").click();

        assertThat(tablet.find("#now .now__heading")).containsText("Choose the fragrance");
        assertThat(seat(4).get("finished")).extracting(JsonNode::textValue).contains("wicks");
        assertThat(seat(5).get("step").textValue()).isEqualTo("wicks");
        assertThat(seat(6).get("state").textValue()).isEqualTo("paused");
    }

    private long tapOf(int seat) {
        String events = board.get("/api/classes/" + id + "/events", board.instructor()).ok().body();
        return events.lines().filter(line -> line.contains("\"seat\":" + seat + ","))
                .filter(line -> line.contains("finish-step") && line.contains("wicks"))
                .map(line -> Pattern.compile("\"seq\":(\\d+)").matcher(line))
                .filter(java.util.regex.Matcher::find).mapToLong(m -> Long.parseLong(m.group(1))).findFirst()
                .orElseThrow();
    }

    @Test void the_flat_line_stands_out_and_opens_its_seat_by_tap_and_by_key() {
        until("behind");
        Device tablet = tablet();
        assertThat(tablet.find("#lines .line")).hasCount(8);
        assertThat(tablet.find("#line-4")).hasClass(Pattern.compile("line--behind"));
        assertThat(tablet.find("#lines .lines__tag")).hasText("4");
        assertThat(tablet.find("#line-4 title")).hasText(
                Pattern.compile("Seat 4: 1 of 8 steps done, at Set the wick, behind"));

        tablet.find("#line-4").focus();
        tablet.page().keyboard().press("Enter");

        assertThat(tablet.find("#sheet-title")).containsText("Seat 4");
    }

    @Test void the_pace_lines_fold_away_and_stay_so() {
        Device tablet = tablet();
        assertThat(tablet.find("#lines svg")).isVisible();
        assertThat(tablet.find(".bar__clock")).hasText(Pattern.compile("\\d\\d:\\d\\d")); // its script runs
        tablet.find(".lines__summary").click();
        assertThat(tablet.find("#lines svg")).not().isVisible();

        tablet.page().reload();

        assertThat(tablet.find("#lines-box")).isVisible();
        assertThat(tablet.find("#lines svg")).not().isVisible();
    }

    @Test void a_device_is_silent_unless_told_otherwise_and_then_speaks_once_for_each_flag() {
        String token = board.helper();
        Device quiet = phone(helper("to"));
        Device loud = phone(token);
        loud.find("#menu-button").click();
        loud.find("[data-open='chime-dialog']").click();
        loud.find("[data-alert='chime']").check();
        loud.find("[data-alert='shake']").check();
        loud.page().keyboard().press("Escape");
        int tones = heard(loud, "tones");
        int shakes = heard(loud, "shakes");
        assertThat(tones).as("a first taste when it is switched on").isPositive();

        until("behind");
        nudge();
        assertThat(loud.find("#help .flag--behind")).isVisible();
        assertThat(quiet.find("#help .flag--behind")).isVisible();
        await().atMost(PATIENCE).untilAsserted(() -> assertThat(heard(loud, "shakes")).isEqualTo(shakes + 1));
        assertThat(heard(loud, "tones")).isEqualTo(tones + 2);
        board.tap(id, command("claim").put("seat", 4).put("helper", "MK"), token).ok();
        assertThat(loud.find("#help")).containsText("MK has it");

        assertThat(heard(loud, "shakes")).as("once for each flag").isEqualTo(shakes + 1);
        assertThat(heard(quiet, "tones") + heard(quiet, "shakes")).isZero();
    }

    private static int heard(Device device, String what) {
        return ((Number) device.page().evaluate("window." + what)).intValue();
    }

    @Test void a_guest_says_done_and_the_instructors_tap_settles_it() {
        Device tablet = tablet();
        tablet.find("#menu-button").click();
        tablet.find("[data-open='guests-dialog']").click();
        tablet.find("#guests-switch").click();
        assertThat(tablet.find("#guests")).containsText("Guests may scan the code");
        tablet.page().keyboard().press("Escape");
        String code = board.guestCode(id, 4);
        Device guest = here(Device.phone(board, browser)).at("/g/" + code);

        guest.find(".guest__button").click();

        assertThat(guest.find("#guest")).containsText("Your host knows that you are done");
        assertThat(tablet.find("#tile-4")).containsText("says done");
        tablet.find("#tile-4").click();
        assertThat(tablet.find("#tile-4 .face")).hasClass(Pattern.compile("face--waiting"));
    }
}
