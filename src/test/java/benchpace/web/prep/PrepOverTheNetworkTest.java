package benchpace.web.prep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.awaitility.Awaitility.await;

import benchpace.files.Json;
import benchpace.files.plan.PlanFile;
import benchpace.plan.TestPlans;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import benchpace.web.stream.ListeningScreen;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The day before over the network: the sheet as JSON and as a page, live, and what is typed into it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PrepOverTheNetworkTest {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    @TempDir
    private Path data;
    private TestBoard board;
    private String id;

    @BeforeEach void open() {
        board = TestBoard.open(data);
        id = LaidTable.on(board);
    }

    @AfterEach void close() {
        board.close();
    }

    private String page() {
        return board.get("/classes/" + id + "/prep", board.instructor()).ok().body();
    }

    @Test void a_class_s_sheet_is_told_as_the_command_tells_it_and_its_totals_are_the_candles_with_the_spills() {
        Reply sheet = board.get("/api/classes/" + id + "/prep", board.helper()).ok();

        double wax = sheet.json().at("/candles/0/waxGramsPerSeat").doubleValue();
        assertThat(wax + sheet.json().at("/candles/0/fragranceGramsPerSeat").doubleValue())
                .isCloseTo(180, within(1e-9));
        assertThat(sheet.json().at("/totals/waxGrams").doubleValue())
                .isCloseTo(LaidTable.SEATS * wax * 1.05, within(1e-9));
        assertThat(sheet.json().at("/timetable/chanceOnTime").isNumber()).isTrue();
        assertThat(sheet.json().at("/circuits/0/verdict").textValue()).isEqualTo("over");
    }

    @Test void the_page_says_the_numbers_that_the_json_has() {
        double minutes = board.get("/api/classes/" + id + "/prep", board.instructor()).ok().json()
                .at("/melters/0/switchOnMinutesBefore").doubleValue();
        String wax = Math.round(board.get("/api/classes/" + id + "/prep", board.instructor()).json()
                .at("/totals/waxGrams").doubleValue()) + " g";

        assertThat(minutes).isGreaterThan(60);
        assertThat(page()).contains(wax, "Switch the melter on", "1 thing to put right", "2 things to buy");
    }

    @Test void what_was_bought_is_no_more_among_what_is_next_on_the_page_and_on_the_start_page() {
        board.put("/api/classes/" + id + "/prep/ticks/buy:wick", "{}", board.helper()).ok();

        assertThat(page()).contains("1 thing to buy");
        assertThat(board.get("/", board.instructor()).ok().body())
                .contains("1 thing to buy", "/classes/" + id + "/prep");
        assertThat(board.get("/", "").ok().body()).doesNotContain("thing to buy");
    }

    @Test void a_tick_reaches_an_open_page_at_once_and_a_silent_one_hears_a_beat() throws Exception {
        try (ListeningScreen screen = ListeningScreen.at(board, "/classes/" + id + "/prep/stream", board.helper())) {
            await().atMost(PATIENCE).until(() -> !screen.events("prep-ticks").isEmpty());
            board.put("/api/classes/" + id + "/prep/ticks/place:wick", "{}", board.instructor()).ok();

            await().atMost(Duration.ofSeconds(5)).until(() -> screen.events("prep-ticks").stream()
                    .anyMatch(e -> e.data().contains("place:wick")));
            await().atMost(Duration.ofSeconds(15)).until(() -> !screen.events("beat").isEmpty());
        }
        assertThat(board.get("/classes/" + id + "/prep/stream", "").status()).isEqualTo(401);
    }

    @Test void the_odds_come_by_themselves_with_what_would_help() throws Exception {
        try (ListeningScreen screen = ListeningScreen.at(board, "/classes/" + id + "/prep/stream", board.helper())) {
            await().atMost(Duration.ofSeconds(60)).until(() -> screen.events("prep-timetable").stream()
                    .anyMatch(e -> e.data().contains("Done by") && !e.data().contains("data-under-way")));
        }
    }

    @Test void a_plan_is_worked_out_for_any_number_of_seats_and_what_cannot_be_is_one_sentence() {
        String plan = "/plans/evening-pour/prep";

        assertThat(board.get(plan + "?seats=1", board.instructor()).ok().body())
                .contains("1 place", "/classes/new?plan=evening-pour");
        assertThat(board.get(plan + "?seats=61", board.instructor()).body())
                .contains("\"seats\" must be a whole number from 1 to 60.", "8 places");
        for (String bad : new String[] {"seats=0", "seats=-3", "seats=NaN", "candles=none=3", "candles=x",
                "seats=99999999999"}) {
            board.get("/api" + plan + "?" + bad, board.instructor()).problem(422, "bad-value");
        }
        board.get("/api/plans/none/prep", board.instructor()).problem(404, "not-found");
        board.get("/api" + plan, board.helper()).problem(403, "no-right");
    }

    @Test void a_plan_that_says_nothing_of_the_day_before_leads_to_where_it_is_typed_in() {
        id = LaidTable.on(board, TestPlans.evening(), Duration.ofHours(23));

        assertThat(page()).contains("The plan names no supplies yet", "The plan names no melter",
                "The plan names no circuit");
    }

    @Test void the_region_is_chosen_once_for_the_whole_board_and_remembered() {
        assertThat(page()).contains("16 CFR 501.7");
        board.put("/api/prep/region", "{\"region\":\"great-britain\"}", board.instructor()).ok();
        board.restart();

        assertThat(page()).contains("EN 15494:2019").doesNotContain("16 CFR 501.7");
        board.put("/api/prep/region", "{\"region\":\"nowhere\"}", board.instructor()).problem(422, "bad-value");
        board.put("/api/prep/region", "{\"region\":\"great-britain\"}", board.helper()).problem(403, "no-right");
    }

    @Test void helpers_see_no_prices() {
        assertThat(page()).contains("6.50");
        assertThat(board.get("/classes/" + id + "/prep", board.helper()).ok().body()).doesNotContain("6.50", "0.33");
    }

    @Test void the_sheet_follows_who_makes_which_candle() {
        board.tap(id, TestBoard.command("choose-candle").put("seat", 1).put("candle", TestPlans.CANDLE)).ok();

        Map<String, Integer> seats = new TreeMap<>();
        board.get("/api/classes/" + id + "/prep", board.helper()).ok().json().get("candles")
                .forEach(c -> seats.put(c.get("candle").textValue(), c.get("seats").intValue()));
        assertThat(seats).isEqualTo(Map.of("glass", LaidTable.SEATS - 1, TestPlans.CANDLE, 1));
    }

    @Test void the_shop_s_stop_watch_corrects_the_melter_and_is_kept_with_a_plan_of_one_s_own() {
        String own = board.post("/api/plans", Json.text(PlanFile.write(LaidTable.plan())), board.instructor()).ok()
                .text("id");
        String melter = "/api/plans/" + own + "/prep/melters/pot";
        String took = "{\"grams\":8600,\"minutes\":%s,\"watts\":1000,\"keep\":%s}";

        Reply quick = board.post(melter, took.formatted("1", "true"), board.instructor()).ok();
        assertThat(quick.json().get("efficiency").doubleValue()).isGreaterThan(1);
        assertThat(quick.json().get("mayKeep").booleanValue()).isFalse();
        Reply measured = board.post(melter, took.formatted("70", "true"), board.instructor()).ok();
        assertThat(measured.text("words")).startsWith("Kept with the plan");

        double efficiency = measured.json().get("efficiency").doubleValue();
        assertThat(board.get("/api/plans/" + own, board.instructor()).ok().json().at("/prep/melters/0/efficiency")
                .doubleValue()).isEqualTo(efficiency);
        board.post(melter, took.formatted("0", "false"), board.instructor()).problem(422, "bad-value");
        board.post(melter + "x", took.formatted("70", "false"), board.instructor()).problem(404, "not-found");
        board.post(melter, took.formatted("70", "true"), board.helper()).problem(403, "no-right");
    }

    @Test void a_figure_that_is_kept_undoes_nothing_that_somebody_changed_in_the_plan_s_file() throws Exception {
        String own = board.post("/api/plans", Json.text(PlanFile.write(LaidTable.plan())), board.instructor()).ok()
                .text("id");
        Path file = data.resolve("plans").resolve(own + ".json");
        String name = "\"name\" : \"" + LaidTable.plan().name() + "\"";
        assertThat(Files.readString(file)).contains(name);
        Files.writeString(file, Files.readString(file).replace(name, "\"name\" : \"By hand\""));
        String took = "{\"grams\":8600,\"minutes\":70,\"watts\":1000,\"keep\":true}";

        board.post("/api/plans/" + own + "/prep/melters/pot", took, board.instructor()).problem(409, "not-kept")
                .detail("changed just now");
        board.post("/api/plans/" + own + "/prep/melters/pot", took, board.instructor()).ok();
        assertThat(board.get("/api/plans/" + own, board.instructor()).ok().text("name")).isEqualTo("By hand");
    }
}
