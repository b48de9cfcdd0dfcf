package benchpace.bench.tap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StateLinesTest {
    private static final String HEADER = "HTTP/1.1 200 OK\r\nContent-Type: text/event-stream\r\n"
            + "Transfer-Encoding: chunked\r\n\r\n";
    private static final String PART = "event: seats\ndata: <p>" + "long ".repeat(300) + "</p>\ndata: event: state\n\n";
    private static final String FIRST = "event: state\nid: 17\ndata: {\"seq\":17,\"whole\":false}\n\n";
    private static final String WHOLE = "event: state\nid: 17\ndata: {\"seq\":17,\"whole\":true,\"now\":\"x\"}\n\n";
    private static final String BEAT = "event: beat\ndata: {\"seq\":99}\n\n";
    private static final String OLDER = "event: state\nid: 18\ndata: {\"seq\":18}\n\n";
    private static final String ALL = PART + FIRST + PART + WHOLE + BEAT + OLDER;
    private static final List<String> HEARD = List.of("17 FIRST " + (PART + FIRST).length(),
            "17 WHOLE " + (PART + WHOLE).length(), "18 BOTH " + (BEAT + OLDER).length());

    private final List<String> heard = new ArrayList<>();
    private final StateLines lines = new StateLines(
            (seq, breath, bytes) -> heard.add(seq + " " + breath + " " + bytes));

    private static String chunks(String text, int size) {
        StringBuilder chunked = new StringBuilder(HEADER);
        for (int from = 0; from < text.length(); from += size) {
            String chunk = text.substring(from, Math.min(text.length(), from + size));
            chunked.append(Integer.toHexString(chunk.length())).append("\r\n").append(chunk).append("\r\n");
        }
        return chunked.append("0\r\n\r\n").toString();
    }

    private void reads(String text, int atOnce) {
        byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
        for (int from = 0; from < bytes.length; from += atOnce) {
            byte[] part = new byte[4096];
            int length = Math.min(atOnce, bytes.length - from);
            System.arraycopy(bytes, from, part, 0, length);
            lines.read(part, length);
        }
    }

    @Test void states_are_heard_with_their_breath_and_with_the_bytes_that_came_with_them() {
        reads(chunks(ALL, 4000), 4096);

        assertThat(heard).isEqualTo(HEARD);
    }

    @Test void wherever_chunks_and_reads_are_cut_the_same_is_heard() {
        IntStream.of(1, 2, 3, 7, 16, 61, 255, 1000).forEach(chunk -> IntStream.of(1, 5, 13, 64, 777).forEach(read -> {
            StateLinesTest other = new StateLinesTest();
            other.reads(chunks(ALL, chunk), read);

            assertThat(other.heard).as("chunks of %d, read %d at once", chunk, read).isEqualTo(HEARD);
        }));
    }

    @Test void what_is_no_event_stream_is_not_taken_for_a_silent_one() {
        assertThatThrownBy(() -> reads("HTTP/1.1 401 Unauthorized\r\nContent-Length: 0\r\n\r\n", 4096))
                .isInstanceOf(IllegalStateException.class).hasMessageContaining("401");
    }
}
