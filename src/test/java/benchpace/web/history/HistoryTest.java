package benchpace.web.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.files.Json;
import benchpace.files.roster.Demo;
import benchpace.history.PastClass;
import benchpace.history.PastClass.Standing;
import benchpace.web.Failing;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import benchpace.web.TestClock;
import benchpace.web.stream.StreamLimits;
import java.net.http.HttpRequest;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Past classes side by side, over HTTP. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HistoryTest {
    private static final String UNDRAWN = "What classes show together is drawn once there are two of them or more to "
            + "compare.";
    @TempDir private Path data;
    private TestBoard board;

    @BeforeEach void open() {
        board = TestBoard.open(data);
    }

    @AfterEach void close() {
        board.close();
    }

    private String history(String query) {
        return board.get("/history" + query, board.instructor()).ok().body();
    }

    /** The page once everything on it is worked out. */
    private String reckoned() {
        await().atMost(Duration.ofSeconds(30)).until(() -> past().stream()
                .noneMatch(c -> c.standing() == Standing.TO_COME));
        return history("");
    }

    private List<PastClass> past() {
        return board.history().classes();
    }

    private String create(String name, String plan) {
        return board.create(Json.text(Json.object().put("planId", plan).put("seats", 3).put("name", name)));
    }

    private void allFinish(String id, String step, int minutes) {
        board.testClock().advanceMinutes(minutes);
        for (int seat = 1; seat <= 3; seat++) {
            board.tap(id, TestBoard.finish(seat, step)).ok();
        }
    }

    /** Three seats, each step as planned, but seat 2 takes 12 minutes more for its wick; all poured. */
    private void poured(String id) {
        board.tap(id, TestBoard.opening("welcome")).ok();
        board.testClock().advanceMinutes(5);
        allFinish(id, "vessel", 3);
        board.tap(id, TestBoard.opening("wicks")).ok();
        board.testClock().advanceMinutes(4);
        board.tap(id, TestBoard.finish(1, "wicks")).ok();
        board.tap(id, TestBoard.finish(3, "wicks")).ok();
        board.testClock().advanceMinutes(12);
        board.tap(id, TestBoard.finish(2, "wicks")).ok();
        board.tap(id, TestBoard.opening("fragrance")).ok();
        allFinish(id, "fragrance", 5);
        board.tap(id, TestBoard.opening("before-wax")).ok();
        board.testClock().advanceMinutes(2);
        board.tap(id, TestBoard.opening("mix")).ok();
        allFinish(id, "mix", 4);
        board.tap(id, TestBoard.opening("pour")).ok();
        allFinish(id, "pour", 3);
    }

    /** Judged set two minutes after the plan had them ready, closed eighteen minutes after the promise. */
    private void judgedAndClosed(String id) {
        board.testClock().advanceMinutes(52);
        for (int seat = 1; seat <= 3; seat++) {
            board.tap(id, TestBoard.command("judge-set").put("seat", seat)).ok();
        }
        board.testClock().advanceMinutes(48);
        board.tap(id, TestBoard.command("close")).ok();
    }

    private String evening(String name) {
        String id = create(name, "evening-pour");
        poured(id);
        judgedAndClosed(id);
        return id;
    }

    // ---- after a start

    @Test void classes_that_nobody_has_looked_at_since_the_start_stand_on_every_list() {
        List<String> ids = List.of(evening("First evening"), evening("Second evening"));
        board.testClock().advanceMinutes((int) Duration.ofDays(3).toMinutes());
        board.restart();

        String start = board.get("/", board.instructor()).ok().body();
        board.restart();
        String history = history("");
        board.restart();

        assertThat(start).contains("First evening", "Second evening");
        assertThat(history).contains("First evening", "Second evening");
        assertThat(board.get("/health", "").ok().json().get("classes").intValue()).isEqualTo(2);
        ids.forEach(id -> board.get("/classes/" + id + "/report", board.instructor()).ok());
    }

    // ---- what stands there

    @Test void one_class_is_a_row_and_no_drawing_and_two_have_drawings_of_what_both_tell() {
        evening("Thursday");
        assertThat(reckoned()).contains("The class ended at ", UNDRAWN).doesNotContain("<figure", "<svg class=\"trend");

        evening("Friday");
        assertThat(reckoned()).contains("Did classes end on time?", "What held them?").doesNotContain(UNDRAWN);
    }

    @Test void who_has_it_as_it_is_gets_it_again_only_once_another_class_is_over() {
        evening("Thursday");
        reckoned();
        String tag = board.get("/history", board.instructor()).ok().header("ETag").orElseThrow();

        assertThat(again(tag)).isEqualTo(304);
        create("Still to come", "evening-pour");
        assertThat(again(tag)).isEqualTo(304);
        evening("Friday");
        assertThat(again(tag)).isEqualTo(200);
    }

    private int again(String tag) {
        return board.send(board.request("/history").header("Authorization", "Bearer " + board.instructor())
                .header("If-None-Match", tag)).status();
    }

    @Test void before_a_class_is_over_it_says_so() {
        create("Still to come", "evening-pour");

        assertThat(history("")).contains("0 classes", "No class is over yet.").doesNotContain("Still to come");
    }

    @Test void a_closed_class_stands_there_with_what_it_came_to() {
        String id = evening("Thursday");

        assertThat(reckoned()).contains("1 class", "Thursday", "Evening pour", "3 seats", "The class ended at ",
                "Late by 18 min", "The last candle was judged set at ", "2 min after the planned ",
                "Held by Set the wick, 12 min", " in the wait of 3 seats.",
                " hand tests came within what was said at the pour", "/classes/" + id + "/report\"");
    }

    /** Taken from the two pages as they are: the time of the end and of the last candle, minutes lost, and answers. */
    @Test void its_figures_are_those_of_the_look_back() {
        String id = evening("Thursday");
        String row = reckoned();
        String report = board.get("/classes/" + id + "/report", board.instructor()).ok().body();

        assertThat(row).contains(found("(The class ended at [^.<]+\\.)", report),
                found("(The last candle was judged set at [^.<]+\\.)", report));
        assertThat(found("Held by Set the wick, (\\d+ min)", row))
                .isEqualTo(found("<b class=\"cause__minutes\">(\\d+ min)</b> <bdi>Set the wick", report));
        assertThat(report).contains(found(">(\\d+ flags[^.]+\\.|One flag[^.]+\\.)", row));
    }

    private static String found(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertThat(matcher.find()).as(pattern + " in " + text).isTrue();
        return matcher.group(1);
    }

    @Test void a_class_that_nobody_closed_says_so_and_leads_to_its_table() {
        String id = create("Forgotten", "evening-pour");
        poured(id);
        board.testClock().advanceMinutes(60 * 13);

        assertThat(history("")).contains("Forgotten", "Nobody closed it", "/classes/" + id + "/instructor\"")
                .doesNotContain("/classes/" + id + "/report\"", "still being worked out");
    }

    @Test void a_class_without_a_pour_says_so() {
        String id = create("Cut short", "evening-pour");
        board.tap(id, TestBoard.opening("welcome")).ok();
        board.testClock().advanceMinutes(5);
        board.tap(id, TestBoard.command("close")).ok();

        assertThat(reckoned()).contains("Cut short", "No candle was poured.", "Nobody was flagged.")
                .doesNotContain("Held by");
    }

    @Test void the_demo_class_is_marked_and_left_out_of_the_drawings() {
        String mine = evening("Thursday");
        String id = board.boards().create(Demo.eveningPlan(), "Trying things", board.testClock().instant(),
                Demo.eveningRoster().places(), Demo.BY).id();
        board.tap(id, TestBoard.opening("welcome")).ok();
        board.testClock().advanceMinutes(500);
        board.tap(id, TestBoard.command("close")).ok();

        assertThat(mine).isNotEmpty();
        assertThat(reckoned()).contains(">Demo<", "Left out of the drawings: the demo class.", UNDRAWN)
                .doesNotContain("<figure");

        evening("Friday");

        assertThat(reckoned()).contains("Left out of the drawings: the demo class.", "None of 2 classes ended on time",
                "<figure").doesNotContain(UNDRAWN);
    }

    // ---- made, kept, made anew

    @Test void it_is_kept_over_a_restart() {
        evening("Thursday");
        PastClass before = reckonedOnly();
        board.restart();

        assertThat(past()).containsExactly(before);
    }

    private PastClass reckonedOnly() {
        reckoned();
        return past().get(0);
    }

    @Test void it_is_made_anew_when_something_is_set_right_after_the_close() {
        String id = evening("Thursday");
        PastClass before = reckonedOnly();
        long close = board.boards().find(id).orElseThrow().live().seq();
        board.tap(id, TestBoard.command("undo").put("seq", close)).ok();
        assertThat(past()).isEmpty();
        board.testClock().advanceMinutes(9);
        board.tap(id, TestBoard.command("close")).ok();
        reckoned();

        assertThat(past()).singleElement().satisfies(after -> assertThat(after.figures().orElseThrow().ended())
                .isEqualTo(before.figures().orElseThrow().ended().plus(Duration.ofMinutes(9))));
    }

    @Test void a_deleted_class_is_gone_from_it() {
        String id = evening("Thursday");
        reckoned();
        board.send(board.request("/api/classes/" + id).header("Authorization", "Bearer " + board.instructor())
                .header("Content-Type", "application/json")
                .method("DELETE", HttpRequest.BodyPublishers.ofString("{\"confirm\":\"Thursday\"}"))).ok();
        board.restart();

        assertThat(history("")).contains("No class is over yet.");
    }

    @Test void a_class_that_cannot_be_worked_out_says_so_and_takes_no_other_along() {
        board.close();
        Failing failing = new Failing();
        board = new TestBoard(data, new TestClock(), StreamLimits.USUAL, failing.maker());
        failing.breaks(Failing.Part.FLAGS);
        evening("Broken");
        reckoned();
        failing.mends();
        evening("Sound");

        assertThat(reckoned()).contains("What it came to cannot be worked out. The look back shows what can.",
                "Held by Set the wick", "Left out of the drawings: classes that cannot be worked out.");

        board.restart();
        assertThat(reckoned()).doesNotContain("cannot be worked out");
    }

    // ---- the choice

    @Test void classes_are_chosen_by_plan_room_days_and_whether_they_were_late() {
        evening("Thursday");
        String big = create("Big one", "big-table");
        board.tap(big, TestBoard.opening("welcome")).ok();
        board.tap(big, TestBoard.command("close")).ok();
        reckoned();
        String day = past().get(0).day(TestBoard.ZONE).toString();
        String before = past().get(0).day(TestBoard.ZONE).minusDays(1).toString();

        assertThat(history("?plan=big-table")).contains("Big one").doesNotContain("<bdi>Thursday");
        assertThat(history("?kept=on-time")).contains("Big one").doesNotContain("<bdi>Thursday");
        assertThat(history("?kept=late")).contains("<bdi>Thursday").doesNotContain("<bdi>Big one");
        assertThat(history("?from=" + day + "&until=" + day)).contains("<bdi>Thursday", "Show all");
        assertThat(history("?until=" + before)).contains("No past class is like that.").doesNotContain("<bdi>Thursday");
        assertThat(history("?room=Nowhere")).contains("No past class is like that.", "Nowhere");
        assertThat(history("?plan=&room=&from=&until=&kept=")).contains("<bdi>Thursday", "<bdi>Big one");
    }

    @Test void what_cannot_be_asked_for_is_told_and_chooses_nothing() {
        evening("Thursday");
        reckoned();

        assertThat(history("?from=soon")).contains("\"soon\" is no day", "<bdi>Thursday");
        assertThat(history("?kept=never")).contains("late or as on time", "<bdi>Thursday");
        assertThat(history("?page=0")).contains("<bdi>Thursday");
        assertThat(history("?page=99999999999")).contains("<bdi>Thursday");
        assertThat(history("?from=2030-01-02&until=2030-01-01")).contains("The last day lies before the first");
        assertThat(history("?from=%2B999999999-01-01")).contains("is no day");
        assertThat(history("?room=" + "x".repeat(5000))).contains("No past class is like that.");
    }

    @Test void only_the_instructor_reads_it() {
        assertThat(board.get("/history", board.helper()).status()).isEqualTo(403);
        assertThat(board.get("/history", "").status()).isEqualTo(401);
        Reply start = board.get("/", board.instructor()).ok();
        assertThat(start.body()).contains("href=\"/history\"");
        assertThat(board.get("/", board.helper()).ok().body()).doesNotContain("href=\"/history\"");
    }
}
