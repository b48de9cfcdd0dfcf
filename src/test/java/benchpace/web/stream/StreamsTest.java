package benchpace.web.stream;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.opening;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.files.Json;
import benchpace.web.Stranger;
import benchpace.web.TestBoard;
import benchpace.web.TestClock;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Live connections: who hears what, how soon, and that one screen asleep holds up nobody. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StreamsTest {
    private static final StreamLimits SHORT = new StreamLimits(Duration.ofMillis(400), Duration.ofSeconds(3), 6, 4, 3);
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    @TempDir Path data;
    private TestBoard board;
    private String id;
    private final List<AutoCloseable> screens = new ArrayList<>();

    @BeforeEach void open() {
        board = TestBoard.open(data, SHORT);
        id = board.evening();
    }

    @AfterEach void close() throws Exception {
        for (AutoCloseable screen : screens) {
            screen.close();
        }
        board.close();
    }

    private ListeningScreen listen(String path, String token) throws IOException, InterruptedException {
        ListeningScreen screen = ListeningScreen.at(board, path, token);
        screens.add(screen);
        return screen;
    }

    private ListeningScreen listen(String token) throws IOException, InterruptedException {
        return listen("/api/classes/" + id + "/stream", token);
    }

    private static void awaitSeq(ListeningScreen screen, long seq) {
        await().atMost(PATIENCE).untilAsserted(() -> assertThat(screen.seq()).isEqualTo(seq));
    }

    private int connected() {
        return board.get("/health", "").json().get("screens").intValue();
    }

    @Test void a_tap_comes_in_two_breaths_of_one_number_and_the_second_is_whole() throws Exception {
        String token = board.instructor();
        ListeningScreen screen = listen("/classes/" + id + "/instructor/stream", token);
        long open = board.tap(id, opening("wicks")).seq();
        await().atMost(PATIENCE).until(() -> states(screen, 0, open).contains(true));
        int before = screen.events().size();

        long seq = board.tap(id, finish(4, "wicks")).seq();

        await().atMost(PATIENCE).until(() -> states(screen, before, seq).contains(true));
        List<EventReader.Event> told = screen.events().subList(before, screen.events().size());
        assertThat(states(screen, before, seq)).startsWith(false).endsWith(true);
        int first = told.indexOf(told.stream().filter(e -> e.type().equals("state")).findFirst().orElseThrow());
        assertThat(told.subList(0, first)).extracting(EventReader.Event::type).contains("seat-4", "undo", "middle")
                .doesNotContain("lines", "known");
        assertThat(told.subList(first, told.size())).extracting(EventReader.Event::type).contains("lines", "known")
                .doesNotContain("undo");
    }

    /** Whether each state of that number, told after so many events, was whole. */
    private static List<Boolean> states(ListeningScreen screen, int after, long seq) throws IOException {
        List<Boolean> whole = new ArrayList<>();
        for (EventReader.Event event : screen.events().stream().skip(after).toList()) {
            JsonNode state = event.type().equals("state") ? Json.read(event.data()) : Json.object();
            if (state.path("seq").longValue() == seq) {
                whole.add(state.get("whole").booleanValue());
            }
        }
        return whole;
    }

    @Test void a_stream_tells_the_state_at_once_and_after_every_change() throws Exception {
        ListeningScreen screen = listen(board.instructor());

        assertThat(screen.response().headers().firstValue("Content-Type").orElseThrow())
                .startsWith("text/event-stream");
        awaitSeq(screen, 1);
        long seq = board.tap(id, opening("wicks")).seq();
        awaitSeq(screen, seq);
        seq = board.tap(id, finish(4, "wicks")).seq();
        awaitSeq(screen, seq);
        JsonNode newest = Json.read(screen.events("state").get(screen.events("state").size() - 1).data());
        assertThat(newest.get("seq").longValue()).isEqualTo(seq);
    }

    @Test void a_change_by_time_alone_is_told_too() throws Exception {
        board.stuckAtWicks(id, 8);
        ListeningScreen screen = listen("/classes/" + id + "/instructor/stream", board.instructor());
        awaitSeq(screen, board.state(id).seq());
        assertThat(screen.events("seat-8").get(0).data()).contains("face--on-pace");

        for (int minute = 5; minute < 25 && board.state(id).json().get("flags").isEmpty(); minute++) {
            board.testClock().advanceMinutes(1);
        }
        listen(board.instructor());  // nobody taps; another screen makes the board look at its clock

        await().atMost(PATIENCE).until(() -> screen.events("seat-8").stream()
                .anyMatch(e -> e.data().contains("face--behind") || e.data().contains("face--slipping")));
    }

    @Test void a_silent_stream_beats() throws Exception {
        ListeningScreen screen = listen(board.instructor());

        await().atMost(PATIENCE).until(() -> screen.events("beat").size() >= 3);

        assertThat(Json.read(screen.events("beat").get(0).data()).get("now").textValue())
                .isEqualTo(TestClock.EVENING.toString());
    }

    @Test void the_beat_that_is_usual_comes_at_least_every_15_s() {
        assertThat(StreamLimits.USUAL.beat()).isLessThanOrEqualTo(Duration.ofSeconds(15));
        assertThat(StreamLimits.USUAL.stalled()).isGreaterThan(StreamLimits.USUAL.beat());
    }

    @Test void without_pairing_a_stream_has_the_walls_share_and_no_names() throws Exception {
        ListeningScreen api = listen("");
        ListeningScreen wall = listen("/classes/" + id + "/wall/stream", "");
        board.tap(id, command("arrive").put("seat", 3).put("name", "Wilhelmina")).ok();
        board.tap(id, opening("wicks")).ok();
        long seq = board.tap(id, command("claim").put("seat", 1).put("helper", "QX")).seq();
        awaitSeq(api, seq);
        awaitSeq(wall, seq);

        assertThat(api.events()).extracting(EventReader.Event::data)
                .noneMatch(d -> d.contains("Wilhelmina") || d.contains("Ida") || d.contains("QX"));
        assertThat(wall.events()).extracting(EventReader.Event::data)
                .noneMatch(d -> d.contains("Wilhelmina") || d.contains("Ida") || d.contains("QX"));
        assertThat(wall.events("wall-main")).isNotEmpty();
    }

    @Test void only_the_parts_that_changed_are_sent() throws Exception {
        board.tap(id, opening("wicks")).ok();
        ListeningScreen screen = listen("/classes/" + id + "/instructor/stream", board.instructor());
        awaitSeq(screen, 2);

        awaitSeq(screen, board.tap(id, finish(4, "wicks")).seq());

        assertThat(screen.events("seat-4")).hasSize(2);
        assertThat(screen.events("seat-5")).hasSize(1);
    }

    @Test void a_name_with_line_breaks_and_markup_neither_forges_events_nor_elements() throws Exception {
        ListeningScreen screen = listen("/classes/" + id + "/instructor/stream", board.instructor());
        board.tap(id, command("arrive").put("seat", 3).put("name", "x\n\nevent: y\ndata: z")).problem(422, "bad-value");
        String odd = "</bdi><script>x\u2028\u2029\u0085";
        board.tap(id, command("arrive").put("seat", 3).put("name", odd)).problem(422, "bad-value");

        String markup = "\"'><b>\u2028event: y\u2029 &amp;";
        long seq = board.tap(id, command("arrive").put("seat", 3).put("name", markup)).seq();
        awaitSeq(screen, seq);

        assertThat(screen.events("y")).isEmpty();
        assertThat(screen.events("seat-3")).isNotEmpty().noneMatch(e -> e.data().contains("<b>\u2028"));
        assertThat(screen.events("seat-3").get(screen.events("seat-3").size() - 1).data())
                .contains("&lt;b&gt;").contains("&amp;amp;");
    }

    @Test void one_screen_that_reads_nothing_delays_no_other_and_is_dropped() throws Exception {
        String crowd = board.create("{\"planId\":\"big-table\",\"seats\":24,\"name\":\"Crowd\"}");
        String path = "/classes/" + crowd + "/helper/stream";
        board.tap(crowd, opening("welcome")).ok();
        StalledScreen stalled = new StalledScreen(board, path, board.instructor());
        screens.add(stalled);
        ListeningScreen awake = listen(path, board.instructor());
        await().atMost(PATIENCE).until(() -> connected() == 2);

        long seq = 0;
        int told = 0;
        for (int i = 0; connected() == 2; i++) {
            assertThat(i).as("taps until the stalled screen was dropped").isLessThan(20_000);
            seq = board.tap(crowd, command(i % 2 == 0 ? "pause" : "resume").put("seat", 1 + i / 2 % 24)).seq();
            if (i % 20 == 19 && connected() == 2) {
                awaitSeq(awake, seq);
                told++;
            }
        }

        assertThat(told).as("times the other screen was current while the stalled one was open").isPositive();
        awaitSeq(awake, seq);
        assertThat(awake.ended()).isFalse();
        assertThat(stalled.readToTheEnd()).as("no backlog is kept for a screen that does not read")
                .isLessThan(awake.events("state").size());
        ListeningScreen again = listen(path, board.instructor());
        awaitSeq(again, seq);
        assertThat(again.events("state")).as("the newest state at once, none of those missed").hasSize(1);
    }

    @Test @Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void a_board_that_is_stopped_while_its_screens_are_being_told_stops_and_comes_back() throws Exception {
        for (int round = 0; round < 10; round++) {
            for (int i = 0; i < SHORT.ofOneAddress(); i++) {
                listen(board.instructor());
            }
            board.tap(id, command("note").put("text", "Round " + round)).ok();

            board.restart();
        }

        assertThat(board.state(id).seq()).isGreaterThanOrEqualTo(10);
    }

    @Test void a_screen_that_hung_up_is_forgotten() throws Exception {
        ListeningScreen screen = listen(board.instructor());
        awaitSeq(screen, 1);
        assertThat(connected()).isEqualTo(1);

        screen.close();

        await().atMost(PATIENCE).until(() -> connected() == 0);
    }

    @Test void more_screens_than_any_class_has_are_refused_until_one_hangs_up() throws Exception {
        for (int i = 0; i < SHORT.most(); i++) {
            awaitSeq(listen(board.instructor()), 1);
        }

        board.get("/api/classes/" + id + "/stream", board.instructor()).problem(503, "too-many-screens");

        screens.remove(0).close();
        await().atMost(PATIENCE).until(() -> connected() < SHORT.most());
        awaitSeq(listen(board.instructor()), 1);
    }

    /** @return the beginning of the answer to a device that nobody paired, which then reads no further */
    private String asked(Stranger stranger) throws IOException {
        screens.add(stranger);
        stranger.says("GET /classes/" + id + "/wall/stream HTTP/1.1\nHost: localhost\n\n");
        return stranger.hearsUntil("\n");
    }

    private Stranger watching(int address) throws IOException {
        Stranger stranger = new Stranger(board, Stranger.at(address));
        assertThat(asked(stranger)).contains(" 200 ");
        return stranger;
    }

    private void assertRefused(int address) throws IOException {
        assertThat(asked(new Stranger(board, Stranger.at(address)))).contains(" 503 ");
    }

    @Test void devices_that_nobody_paired_cannot_keep_staff_or_the_boards_own_machine_out() throws Exception {
        for (int i = 0; i < SHORT.ofOneAddress(); i++) {
            watching(1);
        }

        assertRefused(1);
        awaitSeq(listen(board.instructor()), 1);
        awaitSeq(listen(""), 1);

        screens.remove(0).close();
        await().atMost(PATIENCE).until(() -> connected() == SHORT.ofOneAddress() + 1);
        watching(1);
    }

    @Test void an_address_that_has_no_screen_yet_gets_the_oldest_of_the_one_that_has_most() throws Exception {
        List<Stranger> many = List.of(watching(1), watching(1), watching(1));
        Stranger other = watching(2);
        assertThat(connected()).isEqualTo(SHORT.strangers());

        Stranger wall = watching(3);

        await().atMost(PATIENCE).until(many.get(0)::isHungUpOn);
        assertThat(List.of(many.get(1), many.get(2), other, wall)).noneMatch(Stranger::isHungUpOn);
        assertRefused(3);
        assertThat(connected()).isEqualTo(SHORT.strangers());
    }

    @Test void with_every_place_taken_staff_get_a_strangers() throws Exception {
        List<Stranger> strangers = List.of(watching(1), watching(1), watching(1), watching(2));
        awaitSeq(listen(board.instructor()), 1);
        awaitSeq(listen(board.helper()), 1);
        assertThat(connected()).isEqualTo(SHORT.most());

        awaitSeq(listen(board.instructor()), 1);

        await().atMost(PATIENCE).until(strangers.get(0)::isHungUpOn);
        assertThat(strangers.subList(1, 4)).noneMatch(Stranger::isHungUpOn);
    }

    @Test void a_paired_device_with_every_place_gives_one_to_each_that_has_none() throws Exception {
        for (int i = 0; i < SHORT.most(); i++) {
            awaitSeq(listen(board.helper()), 1);
        }

        awaitSeq(listen(board.instructor()), 1);

        board.get("/api/classes/" + id + "/stream", board.helper()).problem(503, "too-many-screens");
        assertThat(connected()).isEqualTo(SHORT.most());
    }

    @Test void many_that_come_at_once_are_not_one_too_many() throws Exception {
        ExecutorService crowd = Executors.newFixedThreadPool(12);
        try {
            List<Callable<ListeningScreen>> all = java.util.Collections.nCopies(12,
                    () -> ListeningScreen.at(board, "/api/classes/" + id + "/stream", board.instructor()));
            for (Future<ListeningScreen> screen : crowd.invokeAll(all)) {
                screens.add(screen.get());
            }
        } finally {
            crowd.shutdownNow();
        }
        assertThat(connected()).isEqualTo(SHORT.most());
    }

    @Test void a_device_that_is_unpaired_hears_no_more_and_others_do() throws Exception {
        String leaving = board.pair(Json.object().put("pin", TestBoard.HELPER_PIN).put("initials", "ab"));
        ListeningScreen gone = listen(leaving);
        ListeningScreen stays = listen(board.instructor());
        awaitSeq(gone, 1);

        board.post("/api/unpair", "", leaving);

        await().atMost(PATIENCE).until(gone::ended);
        awaitSeq(stays, board.tap(id, opening("wicks")).seq());
        assertThat(connected()).isEqualTo(1);
    }

    @Test void closing_the_board_ends_every_stream() throws Exception {
        ListeningScreen screen = listen(board.instructor());
        awaitSeq(screen, 1);

        board.goAway();

        await().atMost(PATIENCE).until(screen::ended);
        board.comeBack();
        awaitSeq(listen(board.instructor()), 1);
    }

    @Test void screens_of_one_class_hear_nothing_of_another() throws Exception {
        ListeningScreen screen = listen(board.instructor());
        awaitSeq(screen, 1);
        String other = board.evening();

        board.tap(other, opening("wicks")).ok();
        board.tap(other, finish(1, "wicks")).ok();
        await().atMost(PATIENCE).until(() -> screen.events("beat").size() >= 2);

        assertThat(screen.seq()).isEqualTo(1);
    }
}
