package benchpace.web;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.opening;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.web.stream.StreamLimits;
import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The pages in a real Chromium: one class seen on the instructor's tablet, a helper's phone and the wall. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class BoardScreensTest extends LiveScreens {
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    @Override protected void begin() {
        board = new TestBoard(data, InstantSource.system(), StreamLimits.USUAL);
        id = board.evening();
        board.tap(id, opening("welcome")).ok();
    }

    private Device tablet() {
        return here(Device.tablet(board, browser)).pairedBy(board.instructor());
    }

    private Device phone() {
        return here(Device.phone(board, browser)).pairedBy(board.helper());
    }

    private Device wall() {
        return here(Device.wall(board, browser));
    }

    private String page(String kind) {
        return "/classes/" + id + "/" + kind;
    }

    private JsonNode seat(int number) {
        return board.state(id).json().get("seats").get(number - 1);
    }

    private void awaitFinished(int seat, String... steps) {
        await().atMost(PATIENCE).untilAsserted(() ->
                assertThat(seat(seat).get("finished")).extracting(JsonNode::textValue).containsExactly(steps));
    }

    private static Pattern mark(String token) {
        return Pattern.compile("face--" + token + "\\b");
    }

    private static Locator face(Device device, int seat) {
        return device.find("#tile-" + seat + " .face:not(.face--unsent)");
    }

    // ---- live

    @Test void a_tap_on_the_table_shows_on_every_screen_without_a_reload() {
        Device tablet = tablet().at(page("instructor"));
        Device second = tablet().at(page("instructor"));
        Device phone = phone().at(page("helper"));
        Device wall = wall().at(page("wall"));
        assertThat(second.find("#now")).containsText("Welcome");

        tablet.find("#tile-4").click();

        assertThat(face(second, 4)).hasClass(mark("waiting"));
        assertThat(second.find("#middle")).containsText("1 of 8");
        assertThat(phone.find("#now")).containsText("1 of 8");
        assertThat(wall.find("#wall-main")).containsText("1 of 8");
        awaitFinished(4, "vessel");
    }

    @Test void the_next_step_is_opened_for_everybody_with_a_warning_about_who_is_left() {
        Device tablet = tablet().at(page("instructor"));
        Device wall = wall().at(page("wall"));
        for (int seat = 1; seat <= 7; seat++) {
            board.tap(id, finish(seat, "vessel")).ok();
        }
        assertThat(tablet.find("#next-button")).containsText("8");

        tablet.find("#next-button").click();
        assertThat(tablet.find("#next-dialog .left-behind li")).hasCount(1);
        tablet.find("#ask-open").click();

        assertThat(tablet.find("#now .now__heading")).containsText("Set the wick");
        assertThat(wall.find("#wall-main h1")).containsText("Set the wick");
    }

    @Test void undo_takes_the_last_tap_back() {
        Device tablet = tablet().at(page("instructor"));
        tablet.find("#tile-4").click();
        assertThat(tablet.find("#undo-button")).containsText("seat 4");

        tablet.find("#undo-button").click();

        assertThat(face(tablet, 4)).hasClass(mark("on-pace"));
        awaitFinished(4);
    }

    @Test void a_double_tap_counts_once() {
        Device tablet = tablet().at(page("instructor"));
        long before = board.state(id).seq();

        tablet.find("#tile-4").dblclick();

        awaitFinished(4, "vessel");
        assertThat(face(tablet, 4)).hasClass(mark("waiting"));
        assertThat(board.state(id).seq()).isEqualTo(before + 1);
    }

    @Test void the_seat_sheet_pauses_and_brings_back() {
        Device tablet = tablet().at(page("instructor"));
        tablet.find(".place__more[data-open-seat='3']").click();
        assertThat(tablet.find("#sheet-title")).containsText("Seat 3");

        tablet.find("#sheet-pause").click();
        assertThat(face(tablet, 3)).hasClass(mark("paused"));
        assertThat(tablet.find("#sheet-resume")).isVisible();

        tablet.find("#sheet-resume").click();
        assertThat(face(tablet, 3)).hasClass(mark("on-pace"));
        tablet.find("#sheet-close").click();
        assertThat(tablet.find("#seat-sheet")).isHidden();
    }

    @Test void the_seat_sheet_names_a_guest_keeps_a_note_and_pairs_two() {
        Device tablet = tablet().at(page("instructor"));
        tablet.find(".place__more[data-open-seat='3']").click();

        tablet.find("#sheet-name").fill("Nóirín <b>");
        tablet.find("#sheet-name").press("Enter");
        assertThat(tablet.find("#tile-3 .face__name")).hasText("Nóirín <b>");

        tablet.find("#sheet-note").fill("asked for no fragrance");
        tablet.find("#sheet-note").press("Enter");
        assertThat(tablet.find("#seat-sheet .notes")).containsText("asked for no fragrance");

        tablet.find("#sheet-with").selectOption("4");
        tablet.find("form[data-command='pair'] button").click();
        await().atMost(PATIENCE).until(() -> seat(4).get("sharesWith").isInt() || seat(3).get("sharesWith").isInt());
    }

    @Test void a_wrong_tap_is_moved_to_the_right_seat() {
        board.tap(id, finish(5, "vessel")).ok();
        Device tablet = tablet().at(page("instructor"));
        tablet.find(".place__more[data-open-seat='5']").click();

        tablet.find(".tap__mend summary").first().click();
        tablet.find("form[data-command='correct-seat'] select").selectOption("6");
        tablet.find("form[data-command='correct-seat'] button").click();

        assertThat(face(tablet, 6)).hasClass(mark("waiting"));
        awaitFinished(5);
        awaitFinished(6, "vessel");
    }

    @Test void a_helper_says_i_have_got_it_and_the_instructor_sees_who() {
        Device tablet = tablet().at(page("instructor"));
        Device phone = phone().at(page("helper"));

        phone.find("#row-claim-5").click();

        assertThat(tablet.find("#tile-5 .face__helper")).containsText("AB");
        assertThat(phone.find("#row-sorted-5")).hasText("It's sorted");
        assertThat(phone.find(".row:has(#row-sorted-5) .row__has")).hasText("AB has it");
        phone.find("#row-sorted-5").click();
        assertThat(tablet.find("#tile-5 .face__helper")).hasCount(0);
    }

    @Test void the_wall_shows_no_name_and_nobody_who_is_behind() {
        board.tap(id, command("claim").put("seat", 1).put("helper", "QX")).ok();
        Device wall = wall().at(page("wall"));
        assertThat(wall.find("#wall-main h1")).isVisible();
        board.tap(id, finish(2, "vessel")).ok();
        assertThat(wall.find("#wall-main")).containsText("1 of 8");

        assertThat(wall.page().content()).doesNotContain("Ida", "Tomasz", "QX", "behind", "slipping");
    }

    // ---- pairing

    @Test void a_device_is_paired_on_the_start_page_and_a_wrong_pin_is_told() {
        // not watched: the browser itself complains of the 401, as it should
        Device device = Device.tablet(board, browser).at("/");
        assertThat(device.find("#pair-form")).isVisible();

        device.find("#pin").fill("000000");
        device.find("#pair-form button").click();
        assertThat(device.find("#pair-answer")).containsText("not right");
        device.find("#pin").fill(TestBoard.PIN);
        device.find("#pair-form button").click();

        assertThat(device.find(".paired")).containsText("instructor");
        device.find("a[href='" + page("instructor") + "']").click();
        assertThat(device.find("#tile-8")).isVisible();
        device.assertStayedHere();
        device.close();
    }

    @Test void the_consoles_link_pairs_and_its_key_does_not_stay_in_the_address() {
        Device device = here(Device.tablet(board, browser)).at("/#key=" + board.access().keys().newInstructorKey());

        assertThat(device.find(".paired")).containsText("instructor");
        assertThat(device.page().url()).doesNotContain("key=");
    }

    @Test void the_link_pairs_also_where_the_start_page_stands_open_already() {
        Device device = here(Device.tablet(board, browser)).at("/");
        assertThat(device.find("#pair-form")).isVisible();

        device.page().evaluate("key => { location.hash = 'key=' + key; }", board.access().keys().newInstructorKey());

        assertThat(device.find(".paired")).containsText("instructor");
    }

    @Test void a_class_is_set_up_in_the_browser() {
        Device tablet = tablet().at("/");

        tablet.find("#plan").selectOption("table-of-six");
        assertThat(tablet.find("#class-seats")).hasValue("6");
        tablet.find("#class-name").fill("Saturday party");
        tablet.find("#set-up-form button").click();

        assertThat(tablet.find(".bar__title")).containsText("Saturday party");
        assertThat(tablet.find(".tile")).hasCount(6);
    }

    // ---- a network that goes away

    @Test void taps_made_offline_are_shown_as_unsent_and_arrive_once_in_order() {
        Device tablet = tablet().at(page("instructor"));
        assertThat(tablet.find("#now")).containsText("Welcome");
        long before = board.state(id).seq();
        tablet.offline(true);

        for (int seat : new int[] {6, 2, 7}) {
            tablet.find("#tile-" + seat).click();
            assertThat(tablet.find("[data-place='" + seat + "'] [data-sent]")).containsText("not sent yet");
        }
        assertThat(tablet.find("#status-words")).containsText("3 taps not sent yet");
        assertThat(board.state(id).seq()).isEqualTo(before);
        tablet.offline(false);

        await().atMost(PATIENCE).untilAsserted(() -> assertThat(board.state(id).seq()).isEqualTo(before + 3));
        assertThat(board.get("/api/classes/" + id + "/events?after=" + before, board.instructor()).body().lines())
                .extracting(line -> line.replaceAll(".*\"seat\":(\\d+).*", "$1")).containsExactly("6", "2", "7");
        assertThat(face(tablet, 7)).hasClass(mark("waiting"));
        assertThat(tablet.find(".is-unsent")).hasCount(0);
        assertThat(tablet.find("#status-words")).not().containsText("not sent");
    }

    @Test void a_tap_made_while_the_board_was_away_is_sent_by_the_page_that_is_opened_next() {
        Device tablet = tablet().at(page("instructor"));
        assertThat(tablet.find("#now")).containsText("Welcome");
        long before = board.state(id).seq();
        board.goAway();
        tablet.find("#tile-6").click();
        assertThat(tablet.find("[data-place='6'] [data-sent]")).containsText("not sent yet");
        tablet.page().navigate("about:blank");

        board.comeBack();
        tablet.at(page("instructor"));

        assertThat(face(tablet, 6)).hasClass(mark("waiting"));
        assertThat(board.state(id).seq()).isEqualTo(before + 1);
    }

    @Test void pages_go_live_again_by_themselves_after_the_board_was_away() {
        Device tablet = tablet().at(page("instructor"));
        Device wall = wall().at(page("wall"));
        assertThat(tablet.find("#now")).containsText("Welcome");
        LocatorAssertions.ContainsTextOptions patient = new LocatorAssertions.ContainsTextOptions().setTimeout(90_000);

        board.goAway();
        assertThat(tablet.find("#status-words")).containsText("Not live", patient);
        assertThat(wall.find("#status-words")).containsText("Not live", patient);
        board.comeBack();
        board.tap(id, finish(1, "vessel")).ok();

        assertThat(tablet.find("#middle")).containsText("1 of 8", patient);
        assertThat(wall.find("#wall-main")).containsText("1 of 8", patient);
        assertThat(tablet.find("#status-words")).hasText("");
    }

    // ---- clocks

    private static String hoursOff(double hours) {
        return "const Real = Date; const off = " + hours * 3_600_000 + ";"
                + "globalThis.Date = class extends Real {"
                + "  constructor(...given) { if (given.length) super(...given); else super(Real.now() + off); }"
                + "  static now() { return Real.now() + off; } };";
    }

    @Test void a_tablet_whose_clock_is_an_hour_wrong_counts_down_rightly() {
        Instant now = Instant.now();
        id = board.create("{\"planId\":\"table-of-six\",\"startsAt\":\"" + now.minusSeconds(3_600) + "\"}");
        for (String step : List.of("tin", "wicks", "blend", "weigh", "mix", "pour")) {
            if (!step.equals("tin") && !step.equals("weigh")) {
                board.tap(id, opening(step).put("at", now.minusSeconds(1_300).toString())).ok();
            } else if (step.equals("tin")) {
                board.tap(id, opening("hello").put("at", now.minusSeconds(1_400).toString())).ok();
            }
            board.tap(id, finish(1, step).put("at", now.minusSeconds(1_200).toString())).ok();
        }
        for (double wrong : new double[] {-1, 1}) {
            Device tablet = tablet().withScript(hoursOff(wrong)).at(page("instructor"));

            // 55 minutes of cure, begun 20 minutes ago, and a tenth of it before that the range begins
            assertThat(tablet.find("#tile-1 time")).hasText(Pattern.compile("try in (2[5-9]|3[01]) min"));
            board.tap(id, command("note").put("text", "anything")).ok();
            assertThat(tablet.find("#tile-1 time")).hasText(Pattern.compile("try in (2[5-9]|3[01]) min"));
        }
    }

    // ---- closing

    @Test void the_question_before_the_class_is_closed_stays_true_while_it_stands() {
        for (String step : List.of("wicks", "fragrance", "before-wax", "mix", "pour", "trim", "farewell")) {
            board.tap(id, opening(step)).ok();
        }
        for (String step : List.of("vessel", "wicks", "fragrance", "mix", "pour", "centre")) {
            board.tap(id, finish(1, step)).ok();
        }
        Device tablet = tablet().at(page("instructor"));
        tablet.find("#next-button").click();
        assertThat(tablet.find("#close-ask")).hasText(Pattern.compile(
                "Seats 2, 3, 4, 5, 6, 7 and 8 have not poured; "
                        + "seat 1 is still setting, ready about \\d\\d:\\d\\d to \\d\\d:\\d\\d\\."));

        board.tap(id, command("judge-set").put("seat", 1)).ok();

        assertThat(tablet.find("#close-ask")).containsText("seat 1 is not done with Trim the wick");
        assertThat(tablet.find("#close-dialog")).isVisible();
    }

    // ---- keys

    @Test void a_tile_is_tapped_a_sheet_opened_and_a_tap_undone_by_keys_alone() {
        Device tablet = tablet().at(page("instructor"));
        assertThat(tablet.find("#now")).containsText("Welcome");

        tablet.find("#tile-4").focus();
        tablet.page().keyboard().press("Enter");
        assertThat(face(tablet, 4)).hasClass(mark("waiting"));
        assertThat(tablet.find("#tile-4")).isFocused();
        tablet.page().keyboard().press("u");
        assertThat(face(tablet, 4)).hasClass(mark("on-pace"));
        tablet.page().keyboard().press("3");
        assertThat(tablet.find("#sheet-title")).containsText("Seat 3");
        tablet.page().keyboard().press("Escape");
        assertThat(tablet.find("#seat-sheet")).isHidden();
        tablet.page().keyboard().press("n");
        assertThat(tablet.find("#next-dialog")).isVisible();
        tablet.page().keyboard().press("Escape");
        awaitFinished(4);
    }
}
