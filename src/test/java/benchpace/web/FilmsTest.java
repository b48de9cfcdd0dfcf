package benchpace.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tablets whose players ask for parts of a film get parts, so that their screens stay on. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FilmsTest {
    @TempDir Path data;

    private static HttpResponse<byte[]> film(TestBoard board, String range) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(
                URI.create("http://127.0.0.1:" + board.port() + "/static/img/awake.mp4"))
                .header("Range", range).build();
        return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray());
    }

    @Test void a_part_is_sent_as_a_part_and_a_wish_that_cannot_be_met_as_the_whole() throws Exception {
        try (TestBoard board = TestBoard.open(data)) {
            HttpResponse<byte[]> whole = film(board, "lines=1-2");
            int length = whole.body().length;
            assertThat(whole.statusCode()).isEqualTo(200);
            assertThat(whole.headers().firstValue("Accept-Ranges")).hasValue("bytes");

            HttpResponse<byte[]> two = film(board, "bytes=0-1");
            assertThat(two.statusCode()).isEqualTo(206);
            assertThat(two.headers().firstValue("Content-Range")).hasValue("bytes 0-1/" + length);
            assertThat(two.headers().firstValue("Content-Type")).hasValue("video/mp4");
            assertThat(two.body()).hasSize(2);
            assertThat(film(board, "bytes=10-").body()).hasSize(length - 10);
            assertThat(film(board, "bytes=0-999999").body()).isEqualTo(whole.body());
            assertThat(film(board, "bytes=" + length + "-").statusCode()).isEqualTo(200);
        }
    }
}
