package benchpace.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What a page weighs for a phone that was never here, on a network that is shared by a whole room. */
@ExtendWith(Browsers.class)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PageWeightTest {
    private static final long HEAVIEST = 120_000;
    @TempDir Path data;

    @Test void no_page_weighs_more_than_120_kB_on_the_first_visit(Browser browser) {
        try (TestBoard board = TestBoard.open(data)) {
            String id = board.evening();
            String code = board.guestCode(id, 1);
            Map<String, String> pages = new LinkedHashMap<>();
            pages.put("/", board.instructor());
            pages.put("/classes/" + id + "/instructor", board.instructor());
            for (int seats : new int[] {24, 40}) {
                pages.put("/classes/" + board.create("{\"planId\":\"evening-pour\",\"seats\":" + seats + "}")
                        + "/instructor", board.instructor());
            }
            pages.put("/classes/" + id + "/helper", board.helper());
            pages.put("/classes/" + id + "/wall", "");
            pages.put("/classes/" + id + "/wait", board.instructor());
            pages.put("/g/" + code, "");

            Map<String, FirstVisit> visits = new LinkedHashMap<>();
            pages.forEach((path, token) -> visits.put(path, FirstVisit.to(board, browser, path, token)));

            visits.forEach((path, visit) -> System.out.printf("%-36s %s%n", path.replace(code, "CODE"), visit));
            assertThat(visits).allSatisfy((path, visit) -> {
                assertThat(visit.files()).as(path).containsKeys(path, "/static/css/tokens.css");
                assertThat(visit.bytes()).as(path + " " + visit.files()).isLessThan(HEAVIEST);
            });
        }
    }
}
