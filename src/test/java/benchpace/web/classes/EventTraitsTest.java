package benchpace.web.classes;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.freshId;
import static benchpace.web.TestBoard.opening;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.files.log.EventJson;
import benchpace.live.EventTrait;
import benchpace.live.LiveClass;
import benchpace.plan.Activity;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a page is told of commands by their type alone is what the board does with them. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EventTraitsTest {
    private static final Pattern TOLD = Pattern.compile(
            "<div id=\"traits\" hidden><i data-json=\"([^\"]*)\"></i></div>");
    private static final Pattern OFFERED = Pattern.compile("data-command=\"([a-z-]+)\"");
    /** No commands for anybody. */
    private static final Set<String> THE_BOARDS_OWN = Set.of("create", "set-up", "shift-clock");
    /** What has to have happened before a wish of that type stands; seat 1 has poured, seat 5 has begun nothing. */
    private static final Map<String, ObjectNode> BEFORE = Map.of(
            "resume", command("pause").put("seat", 1), "sorted", command("claim").put("seat", 1).put("helper", "AB"),
            "unpair", command("pair").put("seat", 5).put("with", 6),
            "close-activity", command("open-activity").put("activity", "labels"),
            "quit-activity", command("join-activity").put("seat", 1).put("activity", "labels"));
    private static final Map<String, Object> FIELDS = Map.of("step", "centre", "helper", "AB", "activity", "labels",
            "text", "hello", "celsius", 21, "minutes", 5, "candle", "tin-paraffin", "on", true);

    @TempDir Path data;
    private TestBoard board;

    @BeforeEach void open() {
        board = TestBoard.open(data);
    }

    @AfterEach void close() {
        board.close();
    }

    private Matcher told(String id, String screen) {
        return TOLD.matcher(board.get("/classes/" + id + "/" + screen, board.instructor()).ok().body());
    }

    private JsonNode told(String id) throws JsonProcessingException {
        Matcher told = told(id, "instructor");
        assertThat(told.find()).isTrue();
        return Json.read(told.group(1).replace("&#34;", "\"").replace("&quot;", "\""));
    }

    private static Set<String> types(JsonNode list) {
        return new TreeSet<>(StreamSupport.stream(list.spliterator(), false).map(JsonNode::textValue).toList());
    }

    /** Everything is opened up to the pour, and seat 1 has poured. */
    private String poured() {
        String id = board.evening();
        for (String step : List.of("welcome", "wicks", "fragrance", "before-wax", "mix", "pour")) {
            board.tap(id, opening(step)).ok();
        }
        board.tap(id, finish(1, "pour")).ok();
        return id;
    }

    private ObjectNode wish(String id, String type) {
        ObjectNode wish = command(type);
        FIELDS.forEach(wish::putPOJO);
        wish.put("seat", 1).put("with", 6).put("seq", board.state(id).seq()).put("to", 2);
        return switch (type) {
            case "expect", "pair" -> wish.put("seat", 5);
            case "add-seat" -> wish.put("seat", 9);
            case "take-away-seat" -> wish.put("seat", 5);
            case "correct-guest" -> wish.put("name", "Io");
            case "unpair" -> wish.put("seat", 6);
            case "open-step" -> wish.put("step", "trim");
            case "read-pour" -> wish.put("celsius", 60);
            case "correct-time", "move-activity" -> wish.put("to", board.testClock().instant().toString());
            default -> wish;
        };
    }

    @Test void every_page_with_buttons_is_told_the_same_and_a_wall_nothing() {
        String id = poured();
        for (String screen : List.of("instructor", "helper", "wait")) {
            Matcher told = told(id, screen);
            assertThat(told.find()).as(screen).isTrue();
            assertThat(told.group(1)).as(screen).contains("read-room");
        }
        assertThat(told(id, "wall").find()).isFalse();
    }

    @Test void the_pages_of_a_helper_offer_nothing_that_the_board_takes_from_instructors_alone() {
        String id = poured();
        Set<String> offered = new TreeSet<>();
        for (String page : List.of("/helper", "/wait")) {
            OFFERED.matcher(board.get("/classes/" + id + page, board.helper()).ok().body()).results()
                    .forEach(button -> offered.add(button.group(1)));
        }

        assertThat(offered).isNotEmpty().isSubsetOf(EventJson.types(EventTrait.HELPERS_MAY));
    }

    @Test void once_the_class_is_closed_the_board_takes_what_the_page_is_told_and_nothing_else() throws Exception {
        String id = poured();
        board.tap(id, command("close")).ok();

        Set<String> taken = new TreeSet<>(EventJson.types());
        taken.removeAll(THE_BOARDS_OWN);
        taken.removeIf(type -> {
            Reply reply = board.tap(id, wish(id, type).put("seq", 1));
            return reply.status() == 409 && reply.text("type").endsWith(":class-closed");
        });

        assertThat(types(told(id).get("afterTheClose"))).isEqualTo(taken).contains("undo");
    }

    @Test void said_twice_only_that_counts_twice_of_which_the_page_is_told_so() throws Exception {
        Set<String> twice = new TreeSet<>();
        List<String> untried = new ArrayList<>();
        for (String type : EventJson.types()) {
            String id = poured();
            if (BEFORE.containsKey(type)) {
                board.tap(id, BEFORE.get(type).deepCopy().put("commandId", freshId())).ok();
            }
            ObjectNode wish = wish(id, type);
            if (board.tap(id, wish).status() != 200) {
                untried.add(type);
                continue;
            }
            Object once = state(id);
            boolean again = board.tap(id, wish.put("commandId", freshId())).status() == 200;
            if (again && !state(id).equals(once)) {
                twice.add(type);
            }
        }

        assertThat(untried).containsExactlyInAnyOrderElementsOf(THE_BOARDS_OWN);
        assertThat(types(told(poured()).get("eachCounts"))).isEqualTo(twice);
    }

    private Object state(String id) {
        LiveClass live = board.boards().find(id).orElseThrow().live();
        return List.of(List.copyOf(live.seats()), live.notes(), live.roomReadings(), live.pourReadings(),
                live.closedAt(), live.guestsMayTell(), live.furthestOpened(),
                live.plan().activities().stream().map(Activity::id).map(live::activity).toList());
    }
}
