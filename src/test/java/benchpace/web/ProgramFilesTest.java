package benchpace.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program's own files, as they are sent. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ProgramFilesTest {
    @TempDir Path data;

    @Test void the_sheets_of_a_page_come_as_one_in_the_order_they_are_named_in() {
        try (TestBoard board = TestBoard.open(data)) {
            String base = board.get("/static/css/base.css", "").ok().body();
            String wall = board.get("/static/css/wall.css", "").ok().body();

            assertThat(board.get("/static/css/base+wall.css", "").ok().body()).contains(base.strip(), wall.strip());
            assertThat(board.get("/static/css/base+wall.css", "").body().indexOf(wall.strip()))
                    .isGreaterThan(board.get("/static/css/base+wall.css", "").body().indexOf(base.strip()));
        }
    }

    @Test void made_up_addresses_of_sheets_are_not_there() {
        try (TestBoard board = TestBoard.open(data)) {
            for (String made : List.of("base+base", "base+none", "base+", "+base", "base+../js/clock",
                    "base+wall+base")) {
                assertThat(board.get("/static/css/" + made + ".css", "").status()).as(made).isEqualTo(404);
            }
        }
    }

    @Test void a_file_that_is_still_the_same_is_told_so_with_what_it_varies_by() {
        try (TestBoard board = TestBoard.open(data)) {
            String mark = board.get("/static/js/clock.js", "").ok().header("ETag").orElseThrow();
            Reply again = board.send(board.request("/static/js/clock.js").header("If-None-Match", mark));

            assertThat(again.status()).isEqualTo(304);
            assertThat(again.header("Vary")).isEqualTo(Optional.of("Accept-Encoding"));
        }
    }
}
