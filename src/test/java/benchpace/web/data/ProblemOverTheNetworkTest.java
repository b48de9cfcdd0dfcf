package benchpace.web.data;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.OneEvening;
import benchpace.web.TestBoard;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The file that helps those who help: shown first, then downloaded, by instructors alone. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ProblemOverTheNetworkTest extends OneEvening {
    private static final String SHOWN = "aria-label=\"About the board\">";

    private Map<String, String> downloaded(String query) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = HttpClient.newHttpClient().send(board.request("/data/problem.zip" + query)
                .header("Authorization", "Bearer " + board.instructor()).build(),
                HttpResponse.BodyHandlers.ofByteArray());
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/zip");
        assertThat(answer.headers().firstValue("Content-Disposition").orElse("")).contains("benchpace-problem.zip");
        Map<String, String> files = new LinkedHashMap<>();
        ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(answer.body()));
        for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
            files.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
        }
        return files;
    }

    @Test void it_is_shown_before_it_is_downloaded_and_bears_no_name() throws Exception {
        board.tap(id, TestBoard.opening("wicks")).ok();
        board.tap(id, TestBoard.command("note").put("seat", 1).put("text", "Idas sister waits outside")).ok();
        board.tap(id, TestBoard.command("claim").put("seat", 2).put("helper", "QX"), board.helper()).ok();

        String page = board.get("/data/problem", board.instructor()).ok().body();
        assertThat(page).contains("What is in it", "What is not in it", "Word by word", "Download the file",
                "Thursday", "value=\"" + id + "\"", "Rows of the tables");

        Map<String, String> files = downloaded("?class=" + id);
        assertThat(files).containsKeys("README.txt", "board.txt", "log.txt", "classes/class-1.jsonl");
        files.forEach((name, text) -> assertThat(name + text).as(name).doesNotContain("Ida", "Tomasz", "Thursday",
                "sister", "QX", id, TestBoard.PIN, board.instructor(), board.helper(), "Tallow", "evening-pour"));
        assertThat(files.get("classes/class-1.jsonl")).contains("guest 1", "helper 1", "\"type\":\"claim\"");
        assertThat(files.get("board.txt")).isEqualTo(shown(page));
    }

    private static String shown(String page) {
        int from = page.indexOf(SHOWN) + SHOWN.length();
        return page.substring(from, page.indexOf("</pre>", from)).replace("&lt;", "<").replace("&gt;", ">")
                .replace("&amp;", "&");
    }

    @Test void without_a_class_it_is_about_the_board_alone_and_an_unknown_one_is_left_out() throws Exception {
        assertThat(downloaded("")).containsOnlyKeys("README.txt", "board.txt", "log.txt");
        assertThat(downloaded("?class=nobody")).containsOnlyKeys("README.txt", "board.txt", "log.txt");
    }

    @Test void it_is_the_instructors_alone() {
        for (String path : new String[] {"/data/problem", "/data/problem.zip"}) {
            assertThat(board.get(path, board.helper()).status()).isEqualTo(403);
            assertThat(board.get(path, "").status()).isEqualTo(401);
        }
        assertThat(board.get("/data", board.instructor()).ok().body()).contains("/data/problem");
    }
}
