package benchpace.web.guest;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.opening;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.OneEvening;
import benchpace.web.Reply;
import com.fasterxml.jackson.databind.JsonNode;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.net.http.HttpRequest;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What a guest's own phone may do at the table, and what it may not. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GuestPagesTest extends OneEvening {
    private static final String FORM = "application/x-www-form-urlencoded";


    @BeforeEach void open() {
        board.tap(id, opening("welcome")).ok();
        board.tap(id, opening("wicks")).ok();
        for (int seat = 1; seat <= 8; seat++) {
            board.tap(id, finish(seat, "vessel")).ok();
        }
    }

    private void allow() {
        board.tap(id, command("guests-may-tell").put("on", true)).ok();
    }

    private String page(int seat) {
        return "/g/" + board.guestCode(id, seat);
    }

    private String look(int seat) {
        return board.get(page(seat), "").ok().body();
    }

    private Reply say(int seat, String step) {
        return say(page(seat), step, "http://127.0.0.1:" + board.port());
    }

    private Reply say(String page, String step, String origin) {
        HttpRequest.Builder request = board.request(page + "/done").header("Content-Type", FORM)
                .POST(HttpRequest.BodyPublishers.ofString("step=" + step));
        return board.send(origin.isEmpty() ? request : request.header("Origin", origin));
    }

    private JsonNode seat(int number) {
        return board.state(id).json().get("seats").get(number - 1);
    }

    private long seq() {
        return board.state(id).json().get("seq").longValue();
    }

    // ---- off by default

    @Test void until_the_instructor_allows_it_the_page_says_so_kindly_and_has_no_button() {
        assertThat(look(4)).contains("Nothing to tap tonight").doesNotContain("<form");
        long before = seq();

        say(4, "wicks");

        assertThat(seq()).isEqualTo(before);
    }

    @Test void only_the_instructor_can_allow_it() {
        board.tap(id, command("guests-may-tell").put("on", true), board.helper()).problem(403, "no-right");
        board.tap(id, command("guests-may-tell").put("on", true), "").problem(401, "not-paired");
        board.tap(id, command("guests-may-tell").put("on", "yes")).problem(422, "bad-value");
    }

    // ---- one button

    @Test void the_page_shows_the_seat_its_step_and_one_button_and_nobodys_name() {
        allow();

        assertThat(look(1)).contains("Thursday", "Seat <b>1</b>", "Set the wick", "We are done")
                .doesNotContain("Ida", "Tomasz");
    }

    @Test void saying_done_is_a_hint_that_the_instructors_tap_settles() {
        allow();

        assertThat(say(4, "wicks").status()).isEqualTo(303);

        assertThat(seat(4).get("guestSaysDone").booleanValue()).isTrue();
        assertThat(seat(4).get("finished")).extracting(JsonNode::textValue).containsExactly("vessel");
        assertThat(look(4)).contains("Your host knows", "guest__mark").doesNotContain("<form");
        board.tap(id, finish(4, "wicks")).ok();
        assertThat(seat(4).get("guestSaysDone").booleanValue()).isFalse();
        assertThat(look(4)).contains("All done for now");
    }

    @Test void no_other_seat_is_touched() {
        allow();
        List<JsonNode> before = List.of(seat(3), seat(5));

        say(4, "wicks");

        assertThat(List.of(seat(3), seat(5))).isEqualTo(before);
    }

    @Test void a_guests_word_does_not_take_the_place_of_the_instructors_undo() {
        allow();
        board.tap(id, finish(2, "wicks")).ok();
        String undo = board.state(id).json().get("undo").toString();

        say(4, "wicks");

        assertThat(board.state(id).json().get("undo").toString()).isEqualTo(undo);
    }

    @Test void a_page_left_open_from_an_earlier_step_says_nothing_about_this_one() {
        allow();
        long before = seq();

        say(4, "vessel");
        say(4, "pour");
        say(4, "no-such-step");
        say(4, "");

        assertThat(seq()).isEqualTo(before);
    }

    @Test void one_code_speaks_once_in_twenty_seconds() {
        allow();
        say(4, "wicks");
        board.tap(id, command("still-at-it").put("seat", 4).put("step", "wicks")).ok();

        Reply soon = say(4, "wicks");
        soon.problem(429, "too-soon");
        assertThat(soon.header("Retry-After")).get().satisfies(s -> assertThat(Integer.parseInt(s)).isBetween(1, 21));
        assertThat(say(5, "wicks").status()).as("another seat is not held up").isEqualTo(303);

        board.testClock().advance(Duration.ofSeconds(20));
        assertThat(say(4, "wicks").status()).isEqualTo(303);
        assertThat(seat(4).get("guestSaysDone").booleanValue()).isTrue();
    }

    // ---- who may

    @Test void a_forged_code_is_no_seats() {
        allow();
        String real = page(4);
        String forged = real.substring(0, real.length() - 1) + (real.endsWith("A") ? "B" : "A");

        for (String page : List.of(forged, "/g/4", "/g/" + id, "/g/..", "/g/%00")) {
            assertThat(board.get(page, "").status()).as(page).isIn(400, 404);
        }
        say(forged, "wicks", "http://127.0.0.1:" + board.port()).problem(404, "not-found");
    }

    @Test void a_guest_whose_code_is_wrong_or_who_is_too_quick_is_not_sent_to_the_start_page() {
        allow();
        HttpRequest.Builder wrong = board.request("/g/nonsense").header("Accept", "text/html");
        assertThat(board.send(wrong).body()).contains("Scan it once more").doesNotContain("To the start page");
        say(4, "wicks");
        board.tap(id, command("still-at-it").put("seat", 4).put("step", "wicks")).ok();
        HttpRequest.Builder quick = board.request(page(4) + "/done").header("Content-Type", FORM)
                .header("Accept", "text/html").header("Origin", "http://127.0.0.1:" + board.port())
                .POST(HttpRequest.BodyPublishers.ofString("step=wicks"));

        assertThat(board.send(quick).body()).contains("Just a moment", "href=\"" + page(4) + "\"", "Back to your seat");
    }

    @Test void a_page_of_another_site_cannot_speak_for_a_seat() {
        allow();

        say(page(4), "wicks", "http://elsewhere.example").problem(403, "foreign-origin");
        say(page(4), "wicks", "null").problem(403, "foreign-origin");
        say(page(4), "wicks", "").problem(403, "foreign-origin");

        assertThat(seat(4).get("guestSaysDone").booleanValue()).isFalse();
    }

    @Test void every_seat_of_every_class_has_a_code_of_its_own_that_outlives_a_restart() {
        String other = board.evening();
        Set<String> codes = new HashSet<>();
        for (String of : List.of(id, other)) {
            for (int seat = 1; seat <= 8; seat++) {
                codes.add(board.guestCode(of, seat));
            }
        }
        assertThat(codes).hasSize(16).allMatch(code -> code.matches("[A-Za-z0-9_-]{22,}"));
        String printed = page(4);

        board.restart();

        assertThat(page(4)).as("printed again").isNotEqualTo(printed);
        assertThat(board.get(printed, "").status()).isEqualTo(200);
        assertThat(board.get(page(4), "").status()).isEqualTo(200);
    }

    // ---- not at the table

    @Test void a_seat_that_is_away_shares_or_went_home_has_no_button() {
        allow();
        board.tap(id, command("pause").put("seat", 4)).ok();
        board.tap(id, command("leave").put("seat", 5)).ok();
        board.tap(id, command("pair").put("seat", 6).put("with", 7)).ok();

        assertThat(look(4)).contains("paused").doesNotContain("<form");
        assertThat(look(5)).contains("Thank you for coming").doesNotContain("<form");
        assertThat(look(7)).contains("A candle for two").doesNotContain("<form");
    }

    @Test void before_the_class_the_page_says_welcome() {
        id = board.evening();
        allow();

        assertThat(look(4)).contains("Welcome", "begins soon").doesNotContain("<form", "guest__mark");
    }

    @Test void while_a_candle_sets_the_page_tells_its_seat_when_and_who_decides() {
        allow();
        board.tap(id, finish(4, "wicks")).ok();
        for (String step : List.of("fragrance", "mix", "pour")) {
            board.tap(id, opening(step)).ok();
            board.tap(id, finish(4, step)).ok();
        }
        board.tap(id, finish(4, "centre")).ok();

        assertThat(look(4).replaceAll("</?b[^>]*>", ""))
                .containsPattern("Ready about \\d\\d:\\d\\d to \\d\\d:\\d\\d\\. ").contains("hand test decides")
                .doesNotContain("<form");
        board.testClock().advanceMinutes(100);
        assertThat(look(4)).contains("Your host will try it by hand.");
        board.tap(id, command("judge-set").put("seat", 4)).ok();
        assertThat(look(4)).contains("All done for now");
    }

    @Test void after_the_class_the_page_says_thank_you() {
        allow();
        board.tap(id, command("close")).ok();

        assertThat(look(4)).contains("Thank you for coming").doesNotContain("<form");
    }

    // ---- the sheet of codes

    @Test void the_sheet_of_codes_is_the_instructors_alone() {
        assertThat(board.get("/classes/" + id + "/guest-codes", "").status()).isEqualTo(401);
        assertThat(board.get("/classes/" + id + "/guest-codes", board.helper()).status()).isEqualTo(403);
        assertThat(board.get("/classes/nowhere/guest-codes", board.instructor()).status()).isEqualTo(404);
    }

    @Test void the_sheet_of_codes_has_a_button_that_prints_and_a_warning_while_guests_may_not_use_it() {
        String path = "/classes/" + id + "/guest-codes";

        assertThat(board.get(path, board.instructor()).ok().body()).contains("id=\"print\"", "/static/js/codes.js",
                "cannot use them yet");
        allow();
        assertThat(board.get(path, board.instructor()).ok().body()).doesNotContain("cannot use them yet");
    }

    /** The codes are read back by the reader of the ZXing library, which wrote none of our drawing. */
    @Test void each_printed_code_leads_to_its_seats_page() throws Exception {
        String sheet = board.get("/classes/" + id + "/guest-codes", board.instructor()).ok().body();
        Matcher code = Pattern.compile("QR code of seat (\\d+)\" viewBox=\"-4 -4 (\\d+).*?qr__ink\" d=\"([^\"]+)\"")
                .matcher(sheet);
        int found = 0;
        while (code.find()) {
            String url = read(code.group(3), Integer.parseInt(code.group(2)));
            assertThat(url).isEqualTo("http://127.0.0.1:" + board.port() + page(Integer.parseInt(code.group(1))));
            found++;
        }
        assertThat(found).isEqualTo(8);
    }

    private static String read(String path, int side) throws Exception {
        int scale = 4;
        int[] pixels = new int[side * scale * side * scale];
        java.util.Arrays.fill(pixels, 0xFFFFFF);
        Matcher module = Pattern.compile("M(\\d+) (\\d+)h1v1h-1z").matcher(path);
        while (module.find()) {
            int left = (Integer.parseInt(module.group(1)) + 4) * scale;
            int top = (Integer.parseInt(module.group(2)) + 4) * scale;
            for (int y = top; y < top + scale; y++) {
                java.util.Arrays.fill(pixels, y * side * scale + left, y * side * scale + left + scale, 0);
            }
        }
        RGBLuminanceSource source = new RGBLuminanceSource(side * scale, side * scale, pixels);
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source))).getText();
    }
}
