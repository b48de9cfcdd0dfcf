package benchpace.web.classes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.board.WatchedLog;
import benchpace.files.Json;
import benchpace.web.EveryPage;
import benchpace.web.Failing;
import benchpace.web.Failing.Part;
import benchpace.web.TestBoard;
import benchpace.web.TestClock;
import benchpace.web.stream.EventReader;
import benchpace.web.stream.ListeningScreen;
import benchpace.web.stream.StreamLimits;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.logging.LogRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A model that fails takes no page with it: the page says what is missing, and taps go on. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ModelsThatFailTest {
    /** What each is called where it is missing. */
    private static final Map<Part, String> FACTS = Map.of(
            Part.WAIT, "The plan of the wait cannot be worked out just now.",
            Part.CURE, "The candles' times cannot be worked out just now.",
            Part.CUT, "The drawing of a candle cut open cannot be worked out just now.",
            Part.PACE, "Everybody's pace cannot be worked out just now.",
            Part.FLAGS, "Who was flagged cannot be worked out just now.",
            Part.WORDS, "Some of what this page says cannot be worked out just now.");
    private static final String GO_ON = " Taps and everything else go on.";

    @TempDir Path data;
    private final Failing failing = new Failing();
    private final WatchedLog log = new WatchedLog("benchpace.board.attempt.Attempts");
    private TestBoard board;
    private String id;

    @BeforeEach void open() {
        board = new TestBoard(data, new TestClock(), StreamLimits.USUAL, failing.maker());
        id = board.evening();
        board.stuckAtWicks(id, 3);
        for (String step : List.of("fragrance", "mix", "pour")) {
            board.tap(id, TestBoard.opening(step)).ok();
        }
        board.testClock().advanceMinutes(3);
        for (int seat = 4; seat <= 8; seat++) {
            board.tap(id, TestBoard.finish(seat, "pour")).ok();
        }
    }

    @AfterEach void close() {
        log.close();
        board.close();
    }

    /** Something happens, so that whatever failed is tried again. */
    private void note() {
        board.tap(id, TestBoard.command("note").put("text", "go on")).ok();
    }

    private String page(String kind) {
        return board.get("/classes/" + id + "/" + kind, board.instructor()).ok().body().replace("&#39;", "'");
    }

    private List<String> degraded() {
        return Json.mapper().convertValue(board.get("/health", "").ok().json().get("degraded"),
                Json.mapper().getTypeFactory().constructCollectionType(List.class, String.class));
    }

    @ParameterizedTest @EnumSource(names = "FLAGS", mode = EnumSource.Mode.EXCLUDE)
    void every_page_is_there_and_says_what_is_missing_and_says_it_no_more_once_it_is_mended(Part part) {
        String sentence = FACTS.get(part) + GO_ON;
        failing.breaks(part);
        note();

        EveryPage.render(board, id, 4);
        assertThat(List.of(page("instructor"), page("helper"), page("wait")))
                .allSatisfy(page -> assertThat(page).containsOnlyOnce(sentence));
        assertThat(page("report")).contains(FACTS.get(part)).doesNotContain(GO_ON);
        assertThat(page("wall")).as("guests are not alarmed").doesNotContain("cannot be");
        assertThat(board.state(id).text("missing")).isEqualTo(sentence);
        assertThat(degraded()).containsExactly("Class " + id + ": " + FACTS.get(part));
        assertThat(board.get("/health", "").text("status")).isEqualTo("ok");

        failing.mends();
        note();
        EveryPage.render(board, id, 4);
        assertThat(List.of(page("instructor"), page("helper"), page("wait"), page("report")))
                .allSatisfy(page -> assertThat(page).doesNotContain("cannot be worked out"));
        assertThat(board.state(id).text("missing")).isEmpty();
        assertThat(degraded()).isEmpty();
    }

    @Test void what_is_missing_stands_below_what_guests_are_to_be_warned_of_and_does_not_look_like_it() {
        failing.breaks(Part.CURE);
        note();

        assertThat(List.of(page("instructor"), page("helper"))).allSatisfy(page -> assertThat(page)
                .containsSubsequence("<p class=\"caution\">", "Caution.",
                        "<p class=\"missing\">" + FACTS.get(Part.CURE)));
        assertThat(page("report")).contains("<p class=\"missing\">" + FACTS.get(Part.CURE));
    }

    @Test void everything_fails_and_every_page_is_there_and_taps_come_back_and_can_be_undone() {
        failing.breaks(Part.values());
        long seq = board.tap(id, TestBoard.finish(1, "pour")).ok().seq();

        EveryPage.render(board, id, 1);
        assertThat(page("instructor")).containsOnlyOnce("cannot be worked out just now." + GO_ON);
        assertThat(board.state(id).json().get("seats").get(0).get("finished")).anyMatch(s -> s.asText().equals("pour"));
        board.tap(id, TestBoard.command("undo").put("seq", seq)).ok();
        assertThat(board.state(id).json().get("seats").get(0).get("finished"))
                .noneMatch(s -> s.asText().equals("pour"));

        board.restart();
        EveryPage.render(board, id, 1);
        board.tap(id, TestBoard.command("close")).ok();
        EveryPage.render(board, id, 1);
    }

    @Test void what_the_plan_alone_can_tell_stands_in_and_is_called_so() {
        failing.breaks(Part.CURE, Part.PACE);
        note();

        assertThat(board.state(id).json().get("seats").get(4).get("readyBasis").asText()).isEqualTo("plan-figure");
        assertThat(board.state(id).json().get("forecast").get("words").asText())
                .matches("Home \\d\\d:\\d\\d, promised");
        assertThat(board.state(id).json().get("forecast").get("keptProbability").isNull()).isTrue();
        assertThat(board.state(id).json().get("flags")).isEmpty();
        assertThat(page("instructor")).contains("Who needs somebody is not known just now.")
                .doesNotContain("Nobody needs you");
    }

    @Test void a_look_back_without_its_flags_does_not_say_that_nobody_was_flagged() {
        assertThat(page("report")).doesNotContain("cannot be worked out", "Not known just now");
        failing.breaks(Part.FLAGS);
        note();

        assertThat(page("report")).contains(FACTS.get(Part.FLAGS), "Not known just now")
                .doesNotContain("Nobody was flagged");
    }

    @Test void what_fails_is_noted_once_and_not_tried_again_with_every_look() {
        failing.breaks(Part.CURE);
        note();
        EveryPage.render(board, id, 4);
        int tried = failing.cures();
        for (int look = 0; look < 5; look++) {
            board.testClock().advance(Duration.ofSeconds(1));
            EveryPage.render(board, id, 4);
        }

        assertThat(failing.cures()).isEqualTo(tried);
        board.testClock().advanceMinutes(1);
        EveryPage.render(board, id, 4);
        assertThat(failing.cures()).as("the next minute").isGreaterThan(tried);
        assertThat(log.records()).singleElement().extracting(LogRecord::getMessage).asString()
                .contains(id, "CURE");
    }

    @Test void an_open_screen_is_told_what_is_missing_and_when_it_is_there_again() throws Exception {
        try (ListeningScreen screen = ListeningScreen.at(board, "/classes/" + id + "/helper/stream",
                board.instructor())) {
            failing.breaks(Part.WAIT);
            note();
            await().atMost(Duration.ofSeconds(20)).until(() -> newest(screen).contains("cannot be worked out"));
            failing.mends();
            note();
            await().atMost(Duration.ofSeconds(20)).until(() -> !newest(screen).contains("cannot be worked out"));
            assertThat(screen.ended()).isFalse();
        }
    }

    private static String newest(ListeningScreen screen) {
        List<EventReader.Event> now = screen.events("now");
        return now.isEmpty() ? "" : now.get(now.size() - 1).data();
    }

    @Test void a_class_that_nobody_watches_is_called_well_again_once_it_is() {
        failing.breaks(Part.WAIT);
        note();
        EveryPage.render(board, id, 4);
        assertThat(degraded()).hasSize(1);

        failing.mends();
        note();
        await().atMost(Duration.ofSeconds(20)).until(() -> degraded().isEmpty());
    }

    @Test void one_class_whose_models_fail_leaves_the_others_on_the_start_page_as_they_are() {
        String other = board.evening();
        failing.breaks(Part.CURE, Part.PACE, Part.WAIT, Part.WORDS);
        note();
        failing.mends();

        assertThat(board.get("/", board.instructor()).ok().body()).contains("/classes/" + id, "/classes/" + other);
        EveryPage.render(board, other, 1);
    }
}
