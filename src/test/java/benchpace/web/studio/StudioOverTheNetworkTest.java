package benchpace.web.studio;

import static benchpace.web.TestBoard.opening;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.files.StudioJson;
import benchpace.files.roster.Demo;
import benchpace.plan.Studio;
import benchpace.store.Settings;
import benchpace.store.sqlite.Database;
import benchpace.web.OneEvening;
import benchpace.web.Reply;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.http.HttpRequest;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Whose room it is: said by an instructor, kept, shown to everybody, and changed without overwriting unseen. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StudioOverTheNetworkTest extends OneEvening {
    private static final String NAME = "Wachs & Dochtwerkstätte";
    /** As pages say it. */
    private static final String NAMED = "Wachs &amp; Dochtwerkstätte";

    private Reply save(String name, String place, String colour, String ifMatch) {
        ObjectNode body = Json.object().put("name", name).put("place", place).put("colour", colour);
        return put(Json.text(body), board.instructor(), ifMatch);
    }

    private Reply put(String body, String token, String ifMatch) {
        HttpRequest.Builder request = board.request("/api/studio").header("Authorization", "Bearer " + token)
                .header("Content-Type", "application/json").PUT(HttpRequest.BodyPublishers.ofString(body));
        return board.send(ifMatch.isEmpty() ? request : request.header("If-Match", ifMatch));
    }

    private String tag() {
        return board.get("/api/studio", board.instructor()).ok().header("ETag").orElseThrow();
    }

    @Test void nobody_has_said_anything_at_first() {
        assertThat(board.get("/api/studio", board.instructor()).ok().json()).isEqualTo(Json.object().put("name", "")
                .put("place", "").put("colour", ""));
        assertThat(board.get("/studio.css", "").ok().body())
                .contains("--lead: #1f4d43", "--lead: #8fd3bf");
        assertThat(board.get("/health", "").json().get("degraded")).isEmpty();
    }

    @Test void what_is_said_is_kept_over_a_restart_and_comes_back_with_what_was_before() {
        JsonNode told = save("  " + NAME + " ", "Am Hafen 3", "#1F4D43", tag()).ok().json();

        assertThat(told.get("name").textValue()).isEqualTo(NAME);
        assertThat(told.get("before").get("name").textValue()).isEmpty();
        board.restart();
        assertThat(board.get("/api/studio", board.instructor()).json()).isEqualTo(Json.object().put("name", NAME)
                .put("place", "Am Hafen 3").put("colour", "#1f4d43"));
        assertThat(save("Other", "", "", tag()).ok().json().get("before").get("name").textValue()).isEqualTo(NAME);
        assertThat(save("", "", "", tag()).ok().status()).isEqualTo(200);
        board.restart();
        assertThat(board.get("/api/studio", board.instructor()).json().get("name").textValue()).isEmpty();
    }

    @Test void who_has_not_seen_what_stands_now_overwrites_nothing() {
        String first = tag();
        save(NAME, "", "", first).ok();

        Reply refused = save("Another", "", "", first);

        refused.problem(412, "changed-meanwhile");
        assertThat(refused.header("ETag")).contains(tag());
        save("Another", "", "", "").problem(428, "version-not-said");
        assertThat(board.get("/api/studio", board.instructor()).text("name")).isEqualTo(NAME);
    }

    @Test void each_of_many_changes_at_once_is_answered_with_the_tag_of_what_it_wrote_itself() {
        String token = board.instructor();
        List<Reply> answers = IntStream.range(0, 200).parallel().mapToObj(n -> put(Json.text(Json.object()
                .put("name", "Room " + n)), token, "*")).toList();

        assertThat(answers).allSatisfy(answer -> assertThat(answer.ok().header("ETag"))
                .contains('"' + StudioJson.tag(new Studio(answer.text("name"), "", Optional.empty())) + '"'));
    }

    @Test void it_is_the_instructors_to_say_and_the_staffs_to_read() {
        put("{}", board.helper(), tag()).problem(403, "no-right");
        board.get("/api/studio/colour?of=%23ffd400", board.helper()).problem(403, "no-right");
        assertThat(board.get("/api/studio", board.helper()).status()).isEqualTo(200);
        board.get("/api/studio", "").problem(401, "not-paired");
    }

    @Test void every_field_is_told_what_is_wrong_with_it_and_nothing_is_saved() {
        Reply refused = save("x".repeat(61), "a\nb", "greenish", tag());

        assertThat(refused.problem(422, "bad-value").json().get("problems").findValuesAsText("place"))
                .containsExactly("/name", "/place", "/colour");
        put("{\"name\": 7}", board.instructor(), tag()).problem(422, "bad-value");
        put("{\"name\": \"\\ud83d\"}", board.instructor(), tag()).problem(422, "bad-value");
        put("[]", board.instructor(), tag()).problem(400, "bad-request");
        assertThat(board.get("/api/studio", board.instructor()).text("name")).isEmpty();
        assertThat(save("x".repeat(60), "y".repeat(80), "", tag()).status()).isEqualTo(200);
    }

    @Test void a_colour_may_be_typed_as_people_do() {
        for (String typed : List.of("#FFD400", "ffd400", " #ffd400 ", "fd4", "#fd4")) {
            assertThat(save("", "", typed, tag()).ok().text("colour")).startsWith("#f").hasSize(7);
        }
    }

    @Test void the_sheet_has_the_colour_by_day_and_by_night_and_is_asked_for_anew_each_time() {
        save("", "", "#ffd400", tag()).ok();

        Reply sheet = board.get("/studio.css", "").ok();

        assertThat(sheet.header("Content-Type")).get().asString().startsWith("text/css");
        assertThat(sheet.header("Cache-Control")).contains("no-cache");
        assertThat(sheet.body()).containsPattern(":root \\{ --lead: #[0-9a-f]{6}; --on-lead: #ffffff; }")
                .contains("prefers-color-scheme: dark", "--lead: #ffd400");
        String tag = sheet.header("ETag").orElseThrow();
        assertThat(board.send(board.request("/studio.css").header("If-None-Match", tag)).status()).isEqualTo(304);
        save("", "", "#20407a", tag()).ok();
        assertThat(board.send(board.request("/studio.css").header("If-None-Match", tag)).status()).isEqualTo(200);
    }

    @Test void the_page_of_the_look_keeps_the_colour_when_it_is_held_to_a_light() {
        for (String light : List.of("day", "night")) {
            String usual = lead("/style/" + light + ".css");
            save("", "", "#ffd400", tag()).ok();

            List<String> studios = Pattern.compile("--lead: (#[0-9a-f]{6})").matcher(board.get("/studio.css", "").ok()
                    .body()).results().map(found -> found.group(1)).toList();
            assertThat(lead("/style/" + light + ".css")).as(light).isNotEqualTo(usual)
                    .isEqualTo(studios.get(light.equals("day") ? 0 : 1));
            save("", "", "", tag()).ok();
            assertThat(lead("/style/" + light + ".css")).as(light).isEqualTo(usual);
        }
    }

    /** The last one counts. */
    private String lead(String sheet) {
        return Pattern.compile("--lead: (#[0-9a-f]{6})").matcher(board.get(sheet, board.instructor()).ok().body())
                .results().map(found -> found.group(1)).reduce((a, b) -> b).orElseThrow();
    }

    @Test void how_a_colour_is_shown_can_be_seen_before_it_is_chosen() {
        JsonNode look = board.get("/api/studio/colour?of=%23ffd400", board.instructor()).ok().json();

        assertThat(look.get("told").textValue()).contains("By day it is darker",
                "by night it is shown as you chose it");
        assertThat(look.get("night").get("lead").textValue()).isEqualTo("#ffd400");
        assertThat(look.has("apart")).isFalse();
        assertThat(board.get("/api/studio/colour?of=", board.instructor()).ok().text("told")).contains("our green");
        assertThat(board.get("/api/studio/colour?of=8c2614", board.instructor()).ok().text("apart"))
                .contains("behind");
        for (String odd : List.of("?of=red", "?of=%23ffd40")) {
            board.get("/api/studio/colour" + odd, board.instructor()).problem(422, "bad-value");
        }
    }

    @Test void every_page_links_the_studios_colour_after_the_usual_ones_and_before_what_is_drawn_in_it() {
        for (String page : List.of("/", "/wall", "/classes/" + id + "/wall", "/classes/" + id + "/instructor")) {
            assertThat(board.get(page, board.instructor()).body())
                    .containsSubsequence("/static/css/tokens.css", "/studio.css", "/static/css/base+drawing+");
        }
    }

    @Test void a_class_is_held_at_the_studio_where_neither_it_nor_its_plan_says_where() {
        assertThat(place("\"planId\": \"evening-pour\"")).isEmpty();
        save(NAME, "Am Hafen 3", "", tag()).ok();

        assertThat(place("\"planId\": \"evening-pour\"")).isEqualTo("Am Hafen 3");
        assertThat(place("\"planId\": \"evening-pour\", \"place\": \"The barn\"")).isEqualTo("The barn");
        assertThat(place("\"planId\": \"evening-pour\", \"place\": \"\"")).isEmpty();
        assertThat(board.get("/classes/new?plan=evening-pour", board.instructor()).ok().body())
                .contains("value=\"Am Hafen 3\"");
        assertThat(board.get("/api/classes/" + id, board.instructor()).text("place")).as("set up before")
                .isEqualTo("The Tallow Loft, Quay Lane, Marrowby");
    }

    private String place(String body) {
        return board.get("/api/classes/" + board.create("{" + body + "}"), board.instructor()).ok().text("place");
    }

    @Test void the_demos_place_is_in_no_plan_that_is_offered_nor_in_a_copy_of_one() {
        String copy = board.post("/api/plans/evening-pour/copy", "{\"name\": \"Ours\"}", board.instructor()).ok()
                .text("id");
        save(NAME, "Am Hafen 3", "", tag()).ok();

        assertThat(board.get("/api/plans", board.instructor()).ok().body()).doesNotContain("Tallow", "Marrowby");
        for (String plan : board.get("/api/plans", board.instructor()).json().findValuesAsText("id")) {
            assertThat(board.get("/api/plans/" + plan, board.instructor()).ok().body()).as(plan)
                    .doesNotContain("Tallow", "Marrowby");
        }
        assertThat(place("\"planId\": \"" + copy + "\"")).isEqualTo("Am Hafen 3");
        assertThat(board.get("/classes/new", board.instructor()).ok().body()).doesNotContain("Tallow", "Marrowby");
    }

    @Test void every_class_shows_it_from_the_next_look_on_and_none_of_theirs_the_demos_until_then() {
        assertThat(wall()).as("an older board's class, at the demo's place").doesNotContain("Tallow");

        save(NAME, "Am Hafen 3", "", tag()).ok();

        assertThat(wall()).contains(NAMED, "The Tallow Loft, Quay Lane, Marrowby</bdi>").as("only as its own place")
                .doesNotContain("The Tallow Loft</bdi>");
        for (String page : List.of("/classes/" + id + "/cards", "/classes/" + id + "/prep")) {
            assertThat(board.get(page, board.instructor()).ok().body()).as(page)
                    .contains(NAMED);
        }
    }

    @Test void the_demos_class_and_its_evening_show_the_demos_studio_on_every_screen_until_then() {
        String demo = board.boards().create(Demo.eveningPlan(), "Demo", board.clock.instant(),
                Demo.eveningRoster().places(), Demo.BY).id();
        String played = board.playbacks().open(Demo.recordedEvening(), "tablet").id();
        List<String> pages = List.of("/classes/" + demo + "/wall", "/classes/" + demo + "/instructor", "/classes/"
                + demo + "/cards", "/classes/" + demo + "/prep", "/classes/" + demo + "/report", "/classes/" + demo
                + "/guest-codes", "/g/" + board.guestCode(demo, 1), "/classes/" + played + "/wall");
        assertThat(pages).allSatisfy(page -> assertThat(shown(page)).contains("The Tallow Loft</bdi>"));

        save(NAME, "", "", tag()).ok();

        assertThat(pages).allSatisfy(page -> assertThat(shown(page)).contains(NAMED + "</bdi>")
                .doesNotContain("The Tallow Loft</bdi>"));
    }

    @Test void a_class_held_elsewhere_is_headed_with_its_own_place_and_what_is_of_no_class_with_the_studios() {
        save(NAME, "Am Hafen 3", "", tag()).ok();
        String barn = board.create("{\"planId\": \"evening-pour\", \"place\": \"The barn\"}");
        String home = board.create("{\"planId\": \"evening-pour\"}");

        for (String page : List.of("wall", "instructor", "cards", "prep", "report", "guest-codes")) {
            assertThat(letterhead("/classes/" + barn + "/" + page)).as(page).contains(NAMED, "The barn")
                    .doesNotContain("Am Hafen");
            assertThat(letterhead("/classes/" + home + "/" + page)).as(page).contains(NAMED, "Am Hafen 3");
        }
        assertThat(letterhead("/g/" + board.guestCode(barn, 1))).contains("The barn");
        assertThat(letterhead("/shelf")).contains(NAMED, "Am Hafen 3");
        assertThat(shown("/classes/" + barn + "/instructor")).contains("<small><bdi>" + NAMED + ", The barn</bdi>");
        assertThat(shown("/classes/" + home + "/instructor")).contains("<small><bdi>" + NAMED + "</bdi>");
    }

    private String letterhead(String page) {
        String all = shown(page);
        int at = all.indexOf("<p class=\"letterhead\">");
        assertThat(at).as(page).isPositive();
        return all.substring(at, all.indexOf("</p>", at));
    }

    private String shown(String page) {
        return board.get(page, board.instructor()).ok().body();
    }

    @Test void a_wall_at_its_address_is_told_that_it_is_to_show_itself_anew() {
        board.tap(id, opening("welcome")).ok();
        String before = board.get("/api/shown", "").ok().text("mark");
        assertThat(board.get("/wall", "").ok().body()).contains("data-mark=\"" + before + "\"");
        assertThat(board.get("/api/shown", "").ok().text("mark")).isEqualTo(before);

        save(NAME, "", "", tag()).ok();

        assertThat(board.get("/api/shown", "").ok().text("mark")).isNotEqualTo(before);
    }

    @Test void so_is_one_at_a_classs_own_address() {
        assertThat(wall()).contains("data-follows=\"\" data-mark=\"" + shownStudio() + "\"");
        String before = shownStudio();

        save(NAME, "", "", tag()).ok();

        assertThat(shownStudio()).isNotEqualTo(before);
        assertThat(wall()).contains("data-mark=\"" + shownStudio() + "\"");
        assertThat(shown("/classes/" + id + "/instructor")).as("never taken from hands").contains("data-mark=\"\"");
    }

    private String shownStudio() {
        return board.get("/api/shown", "").ok().text("studio");
    }

    private String wall() {
        return board.get("/classes/" + id + "/wall", "").ok().body();
    }

    @Test void the_page_is_the_instructors_and_the_start_page_offers_it_until_it_is_said() {
        String offered = "id=\"your-studio\"";
        assertThat(board.get("/studio", board.instructor()).ok().body()).contains("id=\"studio-form\"", "#1f4d43");
        assertThat(board.get("/studio", board.helper()).status()).isEqualTo(403);
        assertThat(board.get("/studio", "").status()).isEqualTo(401);
        assertThat(board.get("/", board.instructor()).ok().body()).contains(offered, "href=\"/studio\"");
        assertThat(board.get("/", board.helper()).ok().body()).doesNotContain(offered, "href=\"/studio\"");
        save(NAME, "", "", tag()).ok();
        assertThat(board.get("/", board.instructor()).ok().body()).doesNotContain(offered).contains("href=\"/studio\"");
        assertThat(board.get("/studio", board.instructor()).ok().body()).contains("Dochtwerkstätte");
    }

    @Test void what_was_kept_and_cannot_be_read_is_told_and_the_board_does_without() {
        for (String damaged : List.of("{", "[]", "{\"name\": 7}", "{\"colour\": \"x\"}", "\"a\"", "")) {
            board.goAway();
            try (Database database = Database.open(data)) {
                new Settings(database).put("studio", damaged);
            }
            board.comeBack();

            assertThat(board.get("/api/studio", board.instructor()).ok().text("name")).isEmpty();
            assertThat(board.get("/health", "").ok().json().get("degraded").toString()).as(damaged)
                    .contains("The studio's name, place and colour cannot be read");
            assertThat(board.get("/classes/" + id + "/wall", "").status()).isEqualTo(200);
        }
        save(NAME, "", "", tag()).ok();
        assertThat(board.get("/health", "").ok().json().get("degraded")).isEmpty();
        board.restart();
        assertThat(board.get("/api/studio", board.instructor()).text("name")).isEqualTo(NAME);
    }
}
