package benchpace.web.cure;

import static benchpace.web.cure.CureBoard.json;
import static benchpace.web.cure.CureBoard.wish;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.files.Json;
import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The computed cure as programs and people get it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CureOverTheNetworkTest {
    @TempDir
    private Path data;
    private CureBoard board;

    @BeforeEach void open() {
        board = new CureBoard(data);
    }

    @AfterEach void close() {
        board.close();
    }

    private static Instant at(JsonNode seat, String field) {
        return Instant.parse(seat.get(field).textValue());
    }

    private static Duration width(JsonNode seat) {
        return Duration.between(at(seat, "readyFrom"), at(seat, "readyUntil"));
    }

    @Test void the_state_has_every_seats_range_its_skin_and_its_firmness() {
        String id = board.poured(40, 1, 2);
        JsonNode seat = board.seat(id, 1);

        assertThat(seat.get("readyBasis").textValue()).isEqualTo("computed");
        assertThat(seat.get("candle").textValue()).isEqualTo("amber-soy");
        assertThat(at(seat, "pouredAt")).isBefore(at(seat, "skinAt"));
        assertThat(at(seat, "skinAt")).isBefore(at(seat, "readyAt"));
        assertThat(at(seat, "readyAt")).isBefore(at(seat, "firmAt"));
        assertThat(at(seat, "readyFrom")).isBefore(at(seat, "readyAt"));
        assertThat(board.state(id).get("room").get("roomCelsius").asDouble()).isEqualTo(21);
        assertThat(board.seat(id, 3).get("readyAt").isNull()).isTrue();
    }

    @Test void once_a_hand_has_judged_every_number_and_drawing_of_that_candle_goes_quiet() {
        String id = board.poured(40, 1, 2, 3, 4, 5, 6, 7, 8);
        board.minute(60).tap(id, wish("judge-set").put("seat", 1));
        JsonNode judged = board.seat(id, 1);
        JsonNode other = board.seat(id, 2);

        for (String gone : new String[] {"skinFrom", "skinAt", "skinUntil", "firmFrom", "firmAt", "firmUntil"}) {
            assertThat(judged.get(gone).isNull()).as(gone).isTrue();
            assertThat(other.get(gone).isNull()).as("%s of the other", gone).isFalse();
        }
        assertThat(judged.get("readyBasis").textValue()).isEqualTo("hand-test");
        assertThat(at(judged, "readyUntil")).isEqualTo(at(judged, "judgedSetAt"));
        assertThat(board.get("/classes/" + id + "/seats/1/sheet").body()).contains("judged set at")
                .doesNotContain("cut__picture", "% set", "Skin", "ready about", "Tried by hand");
        assertThat(board.get("/classes/" + id + "/seats/2/sheet").body()).contains("cut__picture", "% set");
        String wall = board.get("/classes/" + id + "/wall", "").body();
        assertThat(candle(wall, 1)).contains("Seat 1: tried by hand").doesNotContain("class=\"candle__liquid\" d=\"M");
        assertThat(candle(wall, 2)).contains("Seat 2: may be ready now: try by hand",
                "class=\"candle__liquid\" d=\"M");
    }

    /** What the wall shows of one candle. */
    private static String candle(String wall, int seat) {
        String from = wall.substring(wall.indexOf("data-candle=\"" + seat + "\""));
        return from.substring(0, from.indexOf("</li>"));
    }

    @Test void a_reading_narrows_the_range_of_all_seats_and_says_by_how_much() {
        String id = board.poured(40, 1, 2);
        JsonNode before = board.seat(id, 2);
        board.minute(54);
        assertThat(board.tap(id, wish("read-temperature").put("seat", 1).put("celsius", 42)).statusCode())
                .isEqualTo(200);

        assertThat(width(board.seat(id, 2))).isLessThan(width(before));
        assertThat(at(board.seat(id, 2), "readyAt")).isNotEqualTo(at(before, "readyAt"));
        assertThat(board.state(id).get("room").get("fit").textValue())
                .startsWith("Room refitted from the reading at seat 1: candles about ");
    }

    @Test void a_reading_no_candle_can_show_is_refused_with_the_range_in_both_units_and_nothing_is_recorded() {
        String id = board.poured(40, 1);
        long seq = board.state(id).get("seq").longValue();
        HttpResponse<String> answer = board.minute(50).tap(id,
                wish("read-temperature").put("seat", 1).put("celsius", 120));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(json(answer).get("type").textValue()).isEqualTo("urn:benchpace:absurd-value");
        assertThat(json(answer).get("detail").textValue()).contains("120 °C (248 °F)", "16 °C (61 °F)",
                "72 °C (162 °F)");
        assertThat(board.state(id).get("seq").longValue()).isEqualTo(seq);
    }

    @Test void a_room_hotter_than_the_wax_and_a_pitcher_already_set_are_refused() {
        String id = board.poured(40, 1);

        assertThat(board.tap(id, wish("read-room").put("celsius", 44)).statusCode()).isEqualTo(422);
        assertThat(board.tap(id, wish("read-pour").put("celsius", 31)).statusCode()).isEqualTo(422);
        assertThat(board.tap(id, wish("read-room").put("celsius", 19)).statusCode()).isEqualTo(200);
        assertThat(board.state(id).get("room").get("roomCelsius").asDouble()).isEqualTo(19);
    }

    @Test void the_next_class_starts_from_what_the_last_one_taught_even_after_a_restart() {
        String first = board.poured(40, 1, 2);
        board.minute(54).tap(first, wish("read-temperature").put("seat", 1).put("celsius", 38));
        board.tap(first, wish("read-temperature").put("seat", 2).put("celsius", 38));
        String untaught = board.poured(60, 1);
        Duration before = Duration.between(at(board.seat(untaught, 1), "pouredAt"),
                at(board.seat(untaught, 1), "readyAt"));
        board.tap(first, wish("close"));
        await().atMost(Duration.ofSeconds(10)).until(() -> board.get("/cure").body().contains("from 2 observations"));
        board.restart();
        String next = board.poured(70, 1);
        Duration taught = Duration.between(at(board.seat(next, 1), "pouredAt"), at(board.seat(next, 1), "readyAt"));

        assertThat(taught).isLessThan(before);
        assertThat(Duration.between(at(board.seat(untaught, 1), "pouredAt"), at(board.seat(untaught, 1), "readyAt")))
                .as("a class keeps what it started from").isEqualTo(before);
    }

    @Test void what_a_room_taught_is_shown_in_words_and_reset_by_the_instructor_alone() {
        String id = board.poured(40, 1);
        board.minute(54).tap(id, wish("read-temperature").put("seat", 1).put("celsius", 38));
        board.tap(id, wish("close"));
        await().atMost(Duration.ofSeconds(10)).until(() -> board.get("/cure").body().contains("Forget it"));
        String room = "The Tallow Loft, Quay Lane, Marrowby";
        String helper = board.helper();

        assertThat(board.get("/cure").body()).contains("Cools about ", "% faster than computed",
                "from 1 observation in 1 class");
        assertThat(board.get("/cure", helper).body()).doesNotContain("Forget it");
        assertThat(board.post("/api/rooms/reset", Json.object().put("room", room), helper).statusCode())
                .isEqualTo(403);
        assertThat(board.post("/api/rooms/reset", Json.object().put("room", room), "").statusCode()).isEqualTo(401);
        assertThat(board.post("/api/rooms/reset", Json.object().put("room", room), board.instructor()).statusCode())
                .isEqualTo(200);
        assertThat(board.get("/cure").body()).contains("Nothing yet.");
        assertThat(board.post("/api/rooms/reset", Json.object().put("room", room), board.instructor()).statusCode())
                .isEqualTo(404);
    }

    @Test void the_seat_sheet_shows_the_candle_cut_open_with_words_for_who_cannot_see_it() {
        String id = board.poured(40, 1, 2);
        String sheet = board.minute(60).get("/classes/" + id + "/seats/1/sheet").body();

        assertThat(sheet).contains("<svg class=\"cut__picture\"", "20 minutes after the pour", "A hot vessel",
                "a level, careful carry").doesNotContain(" style=");
        assertThat(board.get("/classes/" + id + "/seats/3/sheet").body()).doesNotContain("cut__picture");
    }

    @Test void the_wall_shows_ranges_and_never_an_exact_time_and_never_says_safe() {
        String id = board.poured(40, 1, 2, 3, 4, 5, 6, 7, 8);
        String wall = board.minute(50).get("/classes/" + id + "/wall", "").body();

        String read = wall.replaceAll("(?s)<head>.*</head>|<[^>]*>", " ").replaceAll("\\s+", " ");

        assertThat(wall).contains("class=\"candle__picture\"", "class=\"candle__liquid\" d=\"M");
        assertThat(read).contains("hand test decides.");
        assertThat(read).containsPattern("Seat 2: setting, ready about \\d\\d:[0-5][05] to \\d\\d:[0-5][05] ");
        assertThat(read).containsPattern("about \\d\\d:[0-5][05](, all by about| to) \\d\\d:[0-5][05]");
        assertThat(wall.toLowerCase(java.util.Locale.ROOT)).doesNotContainPattern("\\bsafe\\b");
    }

    @Test void the_page_of_vessels_is_filled_from_a_plan_and_computes_what_its_form_says() {
        String page = board.get("/cure?plan=big-table").body();
        assertThat(page).contains("Palm wax", "What to expect", "curve__line--B", "25 % less");

        String slow = board.get("/cure?minutes=30&a-material=glass&a-wax=soy&a-table=wood&a-diameter=75&a-wall=3"
                + "&a-brim=90&a-fill=200&a-fragrance=6&a-room=22&a-pour=65&a-draught=0").body();
        assertThat(slow).contains("Too long:", "200 g of Soy container wax in glass, 75 mm");
    }

    @Test void bad_input_is_told_at_its_field() {
        HttpResponse<String> answer = board.get("/cure?minutes=soon&a-material=glass&a-wax=soy&a-table=wood"
                + "&a-diameter=75&a-wall=3&a-brim=30&a-fill=200&a-room=22&a-pour=65"
                + "&b-material=glass&b-wax=none&b-table=wood&b-diameter=7&b-wall=3&b-brim=30&b-fill=20&b-room=%3Cb%3E");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("run over the brim", "id=\"a-fill-fault\"", "From 20 to 400 mm, please.",
                "id=\"b-diameter-fault\"", "id=\"minutes-fault\"", "value=\"&lt;b").doesNotContain("<b>\"");
    }

    @Test void the_page_of_vessels_is_for_paired_devices() {
        assertThat(board.get("/cure", "nobody").statusCode()).isEqualTo(401);
        assertThat(board.get("/cure", board.helper()).statusCode()).isEqualTo(200);
    }
}
