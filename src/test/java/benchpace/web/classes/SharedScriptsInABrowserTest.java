package benchpace.web.classes;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Device;
import benchpace.web.TestBoard;
import com.microsoft.playwright.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What all pages ask, keep and press by: {@code api.js}, {@code stored.js} and {@code submit.js}. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SharedScriptsInABrowserTest extends TapScreens {
    private static final String AWAY = "The board cannot be reached just now.";

    // ---- what this browser keeps

    @Test void where_the_browser_allows_no_storage_a_tap_waits_in_the_page_and_choices_hold_while_it_is_open() {
        Device tablet = live(tablet().withScript("""
                Object.defineProperty(window, 'localStorage',
                  { get() { throw new DOMException('not here', 'SecurityError'); } });"""), table());
        long before = seq();
        tablet.offline(true);

        tablet.find("#tile-4").click();
        assertThat(sent(tablet.page(), 4)).hasText("not sent yet");
        assertThat(ask(tablet, "stored",
                "{ it.write('benchpace.degrees', 'F'); return it.read('benchpace.degrees'); }")).isEqualTo("F");
        tablet.offline(false);

        assertThat(face(tablet.page(), 4)).hasClass(FINISHED);
        nothingWaits(tablet);
        assertThat(since(before, "seat")).containsExactly("4");
    }

    @Test void a_storage_without_room_keeps_each_tap_once_and_by_its_newest_word() {
        Device tablet = live(tablet().withScript("""
                const set = Storage.prototype.setItem;
                Storage.prototype.setItem = function (key, value) {
                  if (window.full) throw new DOMException('no room', 'QuotaExceededError');
                  set.call(this, key, value);
                };"""), table());
        tablet.offline(true);
        tablet.find("#tile-4").click();
        assertThat(sent(tablet.page(), 4)).hasText("not sent yet");

        Object kept = ask(tablet, "box", """
                { window.full = true;
                  it.keep({ commandId: 'second', type: 'pause', seat: 5 });
                  it.note(it.kept()[0].key, { tried: true });
                  return it.kept().map((tap) => `${tap.command.type} ${tap.tried}`).join(', '); }""".strip());

        assertThat(kept).isEqualTo("finish-step true, pause false");
    }

    @Test void what_another_wrote_under_a_name_of_ours_stops_nothing() {
        Device tablet = tablet().withScript("""
                const tap = (n) => `benchpace.tap.ID.00000000000000${n}-x`;
                ['5', 'null', '[]', '{"type":7}', '{"type":"pause","seat":3}', '{"commandId":'].forEach((text, n) =>
                  localStorage.setItem(tap(n), text));
                localStorage.setItem('benchpace.tap.ID.elsewhere', 'kept');
                for (const name of ['initials', 'lines', 'degrees', 'sound', 'chime', 'sender.ID', 'cues.ID']) {
                  localStorage.setItem(`benchpace.${name}`, '{{{ ]');
                }""".replace("ID", id));
        long before = seq();

        live(tablet, table()).find("#tile-4").click();

        assertThat(face(tablet.page(), 4)).hasClass(FINISHED);
        nothingWaits(tablet);
        assertThat(since(before, "type")).containsExactly("finish-step");
        assertThat(ask(tablet, "stored", "it.keys('benchpace.tap.').length")).as("what is none of ours stays")
                .isEqualTo(1);
    }

    // ---- what the board answers, or does not

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "200 | application/json | {\"claim\":\"maple 42\"} | ok maple 42",
        "204 | application/json | '' | ok undefined",
        "409 | application/problem+json | {\"type\":\"urn:benchpace:place-taken\",\"detail\":\"Taken.\"} "
                + "| 409 place-taken Taken.",
        "422 | application/problem+json | {\"type\":\"urn:benchpace:invalid\",\"title\":\"No\"} | 422 invalid No",
        "404 | text/html | <title>Not here</title> | 404  That was not possible.",
        "403 | application/json | null | 403  That was not possible.",
        "200 | text/html | <title>Sign in</title> | 0  " + AWAY,
        "200 | application/json | 7 | 0  " + AWAY})
    void whatever_comes_back_is_one_outcome(int status, String type, String body, String outcome) {
        Device tablet = tablet().expectingRefusals().at("/devices");
        tablet.page().route("**/api/shelf/claim-words", route -> route.fulfill(new Route.FulfillOptions()
                .setStatus(status).setContentType(type).setBody(body)));

        assertThat(ask(tablet, "api", "it.ask('/api/shelf/claim-words').then((o) => o.ok ? `ok ${o.value.claim}` "
                + ": [o.status, o.problem, o.words].join(' '))")).isEqualTo(outcome);
    }

    @Test void a_board_out_of_reach_is_said_in_the_place_of_the_answer() {
        Device tablet = tablet().at("/devices");
        tablet.offline(true);

        tablet.find("[data-act=instructor-link]").click();

        assertThat(tablet.find("#devices-answer")).hasText(AWAY);
        tablet.offline(false);
        tablet.find("[data-act=instructor-link]").click();
        assertThat(tablet.find("#instructor-link .address a")).isVisible();
        assertThat(tablet.find("#devices-answer")).hasText("");
    }

    // ---- what is pressed

    @Test void a_button_cannot_be_pressed_twice_while_its_answer_is_under_way_and_keeps_the_focus() {
        Device tablet = tablet().at("/devices");
        List<Route> held = new ArrayList<>();
        tablet.page().route("**/api/instructor-keys", held::add);

        tablet.find("[data-act=instructor-link]").focus();
        tablet.page().keyboard().press("Enter");
        assertThat(tablet.find("[data-act=instructor-link]")).isDisabled();
        tablet.find("[data-act=instructor-link]").dispatchEvent("click");
        tablet.page().keyboard().press("Enter");
        tablet.page().waitForCondition(() -> !held.isEmpty());
        held.get(0).resume();

        assertThat(tablet.find("#instructor-link .address a")).isVisible();
        assertThat(tablet.find("[data-act=instructor-link]")).isEnabled();
        assertThat(tablet.find("[data-act=instructor-link]")).isFocused();
        assertThat(held).hasSize(1);
    }

    @Test void a_button_whose_question_was_left_unanswered_keeps_the_focus() {
        Device tablet = tablet().expectingRefusals().at("/shelf");
        tablet.page().route("**/api/shelf/collect", route -> refuse(route, 409, "still-setting"));
        tablet.find("#find").fill("maple 42");
        tablet.find("#hand-over").focus();

        tablet.page().keyboard().press("Enter");
        assertThat(tablet.find("#tested-dialog")).isVisible();
        tablet.page().keyboard().press("Escape");

        assertThat(tablet.find("#tested-dialog")).isHidden();
        assertThat(tablet.find("#hand-over")).isEnabled();
        ask(tablet, "submit", "new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)))");
        assertThat(tablet.find("#hand-over")).isFocused();
    }

    @Test void a_form_whose_answer_was_lost_is_sent_again_as_the_same_command_and_another_wish_as_another() {
        Device tablet = tablet().expectingRefusals().at("/shelf");
        List<String> sent = new ArrayList<>();
        AtomicReference<String> answer = new AtomicReference<>("");
        tablet.page().route("**/api/shelf/collect", route -> {
            sent.add(commandId(route));
            if (answer.get().isEmpty()) {
                route.abort();
            } else {
                refuse(route, 409, answer.get());
            }
        });

        collect(tablet, "maple 42", AWAY);
        collect(tablet, "maple 42", AWAY);
        collect(tablet, "maple 43", AWAY);
        answer.set("no-such-candle");
        collect(tablet, "maple 42", "No, not so.");
        collect(tablet, "maple 42", "No, not so.");

        assertThat(sent).hasSize(5);
        assertThat(sent.get(1)).isEqualTo(sent.get(0));
        assertThat(sent.get(2)).isNotEqualTo(sent.get(0));
        assertThat(sent.get(3)).isEqualTo(sent.get(0));
        assertThat(sent.get(4)).as("the board has answered the one before").isNotEqualTo(sent.get(0));
    }

    private static String commandId(Route route) {
        return Pattern.compile("\"commandId\":\"(\\w{32})\"").matcher(route.request().postData()).results()
                .map(found -> found.group(1)).findFirst().orElseThrow();
    }

    private static void collect(Device tablet, String word, String answer) {
        tablet.find("#find").fill(word);
        tablet.find("#hand-over").click();
        assertThat(tablet.find("#shelf-answer")).hasText(answer);
        assertThat(tablet.find("#hand-over")).isEnabled();
    }

    @Test void leaving_by_the_shelf_counts_once_although_its_first_answer_was_lost() {
        for (String step : List.of("wicks", "fragrance", "mix", "pour")) {
            board.tap(id, TestBoard.opening(step)).ok();
        }
        board.tap(id, TestBoard.finish(3, "pour")).ok();
        Device tablet = tablet().at(table());
        AtomicReference<Route> lost = new AtomicReference<>();
        tablet.page().route("**/api/classes/*/seats/3/leave", route -> {
            if (lost.compareAndSet(null, route)) {
                route.fetch();
                route.abort();
            } else {
                route.resume();
            }
        });
        tablet.find(".place__more[data-open-seat='3']").click();
        tablet.find("#sheet-leave").click();

        tablet.find("#leave-send").click();
        assertThat(tablet.find("#leave-answer")).hasText(AWAY.replace(".", "; nothing was lost. Try again."));
        assertThat(tablet.find("#leave-send")).isFocused();
        tablet.find("#leave-send").click();

        assertThat(tablet.find("#leave-done-place")).hasText("Upper 1");
        assertThat(board.get("/api/shelf", board.helper()).ok().json().get("entries")).hasSize(1);
    }
}
