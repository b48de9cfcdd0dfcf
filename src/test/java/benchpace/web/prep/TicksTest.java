package benchpace.web.prep;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is ticked off of a class's lists, over the network: by whom, once, and for good. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TicksTest {
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

    private String of(String item) {
        return "/api/classes/" + id + "/prep/ticks/" + item;
    }

    private Reply ticks() {
        return board.get("/api/classes/" + id + "/prep/ticks", board.helper()).ok();
    }

    @Test void an_instructor_and_a_helper_tick_off_and_it_is_told_who_did_and_when() {
        board.put(of("place:wick"), "{}", board.instructor()).ok();
        board.testClock().advanceMinutes(3);
        Reply reply = board.put(of("shared:scales"), "{}", board.helper()).ok();

        assertThat(reply.json().at("/ticks/place:wick/by").textValue()).isEqualTo("instructor");
        assertThat(reply.json().at("/ticks/shared:scales/by").textValue()).isEqualToIgnoringCase("ab");
        assertThat(reply.json().at("/ticks/shared:scales/at").textValue())
                .isEqualTo(board.clock.instant().toString());
        assertThat(ticks().json()).isEqualTo(reply.json());
    }

    @Test void the_same_again_changes_nothing_and_the_first_stays_named() {
        Reply first = board.put(of("place:wick"), "{}", board.helper()).ok();
        board.testClock().advanceMinutes(3);

        assertThat(board.put(of("place:wick"), "{}", board.instructor()).ok().json()).isEqualTo(first.json());
        assertThat(board.delete(of("shared:scales"), board.helper()).ok().json()).isEqualTo(first.json());
    }

    @Test void a_tick_that_was_a_mistake_is_taken_away() {
        board.put(of("place:wick"), "{}", board.helper()).ok();
        board.delete(of("place:wick"), board.instructor()).ok();

        assertThat(ticks().json().get("ticks")).isEmpty();
    }

    @Test void two_devices_at_once_tick_one_thing_once_and_lose_none_of_many() throws Exception {
        List<String> devices = List.of(board.instructor(), board.helper());
        List<String> items = List.of("place:wick", "shared:scales", "pack:supply:wick", "pack:supply:scales",
                "pack:wax:soy", "buy:wick", "check:wax-data-sheet");
        ExecutorService hands = Executors.newFixedThreadPool(8);
        CountDownLatch together = new CountDownLatch(1);
        try {
            List<Future<Reply>> replies = IntStream.range(0, 40).mapToObj(n -> hands.submit(() -> {
                together.await();
                return board.put(of(items.get(n % items.size())), "{}", devices.get(n % 2));
            })).toList();
            together.countDown();
            for (Future<Reply> reply : replies) {
                reply.get().ok();
            }
        } finally {
            hands.shutdownNow();
        }
        assertThat(ticks().json().get("ticks").fieldNames()).toIterable().containsExactlyInAnyOrderElementsOf(items);
        assertThat(ticks().json().get("revision").longValue()).isEqualTo(items.size());
    }

    @Test void what_was_ticked_off_is_there_after_a_restart() {
        String before = Json.text(board.put(of("place:wick"), "{}", board.helper()).ok().json().get("ticks"));
        board.restart();

        assertThat(Json.text(ticks().json().get("ticks"))).isEqualTo(before);
    }

    @Test void what_is_on_no_list_of_the_class_cannot_be_ticked_off() {
        for (String item : List.of("place:flame", "nowhere:wick", "wick", ":", "place:", "place:flame%20",
                "pack:wick", "check:wick")) {
            board.put(of(item), "{}", board.helper()).problem(404, "not-listed");
        }
        board.put("/api/classes/none/prep/ticks/place:wick", "{}", board.helper()).problem(404, "no-such-class");
        assertThat(ticks().json().get("ticks")).isEmpty();
    }

    @Test void strangers_and_walls_neither_read_nor_tick() {
        board.put(of("place:wick"), "{}", "").problem(401, "not-paired");
        board.delete(of("place:wick"), "").problem(401, "not-paired");
        board.get("/api/classes/" + id + "/prep/ticks", "").problem(401, "not-paired");
        String wall = board.pair(Json.object().put("pin", TestBoard.WALL_PIN));
        board.put(of("place:wick"), "{}", wall).problem(403, "no-right");
    }

    @Test void a_class_that_is_deleted_and_had_back_has_its_ticks_still() {
        board.put(of("place:wick"), "{}", board.helper()).ok();
        board.change("DELETE", "/api/classes/" + id, "{}", board.instructor()).ok();
        board.post("/api/classes/" + id + "/restore", "", board.instructor()).ok();
        board.restart();

        assertThat(ticks().json().get("ticks")).hasSize(1);
    }
}
