package benchpace.web.data;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.store.Remnants;
import benchpace.web.TestBoard;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Classes that cannot be read back any more, with guests in them. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class UnreadableClassesTest {
    private static final String ARRIVED = "Mirrabeth";
    private static final List<String> WORDS = List.of("Quillonia", "Zephyriné", "Tarrowmead", "hazelnuttery",
            "Velvetscarfe", ARRIVED);

    @TempDir Path data;
    private TestBoard board;
    private String id;

    @BeforeEach void open() {
        board = TestBoard.open(data);
        id = board.create("{\"planId\":\"evening-pour\",\"seats\":4,\"name\":\"Thursday\",\"names\":[\"" + WORDS.get(0)
                + "\",\"" + WORDS.get(1) + "\"]}");
        board.tap(id, TestBoard.command("correct-guest").put("seat", 2).put("name", WORDS.get(1))
                .put("party", WORDS.get(2)).put("note", WORDS.get(3))).ok();
        board.tap(id, TestBoard.command("arrive").put("seat", 3).put("name", ARRIVED)).ok();
        board.tap(id, TestBoard.command("note").put("text", WORDS.get(4))).ok();
        board.tap(id, TestBoard.command("close")).ok();
    }

    @AfterEach void close() {
        board.close();
    }

    /** Past the store's own guards, which are there again afterwards. */
    private void damage(String change) throws Exception {
        board.goAway();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + data.resolve("benchpace.db"));
                Statement statement = connection.createStatement()) {
            String guard;
            try (var row = statement.executeQuery("select sql from sqlite_master where name = "
                    + "'event_is_only_changed_to_forget'")) {
                guard = row.getString(1);
            }
            statement.executeUpdate("drop trigger event_is_only_changed_to_forget");
            assertThat(statement.executeUpdate(change)).isEqualTo(1);
            statement.executeUpdate(guard);
        }
        board.comeBack();
        assertThat(board.boards().unreadable()).containsExactly(id);
    }

    private String pageAfter(int days) {
        board.testClock().advance(Duration.ofDays(days));
        board.erasing().look();
        return board.get("/data", instructor()).ok().body();
    }

    private String instructor() {
        return board.pair(Json.object().put("pin", TestBoard.PIN)); // no pairing lasts that long
    }

    private void afterDays(int days) {
        board.put("/api/settings/forget-guests", "{\"days\":" + days + "}", board.instructor()).ok();
    }

    @Test void names_go_by_their_days_where_what_stands_there_can_be_told() throws Exception {
        afterDays(30);
        damage("update event set payload = json_set(payload, '$.startsAt', 'tea time', '$.nmae', '" + WORDS.get(0)
                + "') where type = 'create'");
        assertThat(pageAfter(29)).contains("Classes that cannot be read", "<b class=\"folder\">" + id + "</b>",
                "forgotten 30 days after that");
        assertThat(Remnants.of(data, WORDS)).hasSizeGreaterThanOrEqualTo(WORDS.size());

        assertThat(pageAfter(2)).as("nothing is left to be told of").doesNotContain("Classes that cannot be read");

        assertThat(Remnants.of(data, WORDS)).isEmpty();
        assertThat(board.boards().unreadable()).as("nothing else of it was touched").containsExactly(id);
        board.restart();
        assertThat(board.get("/data", instructor()).body()).doesNotContain("Classes that cannot be read");
    }

    @Test void names_of_a_class_that_was_set_up_long_before_stay_until_its_own_days_are_over() throws Exception {
        afterDays(30);
        damage("update event set payload = json_set(payload, '$.startsAt', '"
                + board.testClock().instant().plus(Duration.ofDays(50)) + "', '$.numbering', 'odd') "
                + "where type = 'create'");
        assertThat(pageAfter(45)).contains("It was set up for ", "forgotten 30 days after that");
        assertThat(pageAfter(34)).as("79 days on").contains("Classes that cannot be read");
        assertThat(Remnants.of(data, WORDS)).hasSizeGreaterThanOrEqualTo(WORDS.size());

        assertThat(pageAfter(2)).doesNotContain("Classes that cannot be read");
        assertThat(Remnants.of(data, WORDS)).isEmpty();
    }

    @Test void what_cannot_be_told_stays_is_told_and_goes_with_the_class() throws Exception {
        afterDays(30);
        damage("update event set payload = substr(payload, 1, length(payload) - 2) where type = 'arrive'");

        assertThat(pageAfter(31)).contains("One class cannot be read back.", id,
                "names in it cannot be found");

        assertThat(Remnants.of(data, WORDS)).as("the others are gone").isNotEmpty()
                .allMatch(found -> found.startsWith(ARRIVED));
        String token = instructor();
        assertThat(board.change("DELETE", "/api/classes/" + id, "{\"confirm\":\"Thursday\"}", token)
                .problem(409, "needs-its-name").text("detail")).contains("cannot be read", "give its id: " + id);
        board.change("DELETE", "/api/classes/" + id, "{\"confirm\":\"" + id + "\"}", board.helper())
                .problem(403, "no-right");
        assertThat(board.boards().unreadable()).containsExactly(id);

        assertThat(board.change("DELETE", "/api/classes/" + id, "{\"confirm\":\"" + id + "\"}", token).ok().json()
                .get("restorable").asBoolean()).isFalse();

        assertThat(board.boards().unreadable()).isEmpty();
        assertThat(pageAfter(1)).doesNotContain("Classes that cannot be read");
        assertThat(Remnants.of(data, WORDS)).isEmpty();
        board.get("/api/classes/" + id, instructor()).problem(404, "class-deleted");
    }

    @Test void without_days_they_are_kept_and_that_is_told() throws Exception {
        damage("update event set type = 'juggle' where type = 'arrive'");

        assertThat(pageAfter(400)).contains("names in it cannot be found");
        assertThat(Remnants.of(data, WORDS)).hasSizeGreaterThanOrEqualTo(WORDS.size());
    }

    @Test void a_folder_in_which_every_class_can_be_read_is_told_nothing() {
        assertThat(pageAfter(400)).doesNotContain("Classes that cannot be read");
    }
}
