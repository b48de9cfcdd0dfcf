package benchpace.files.log;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.BadFile;
import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Whatever a log holds, it is either read or refused in one sentence; nothing else ever happens. */
class ClassLogReaderProperties {
    private static final String[] PIECES = {"{", "}", "\"t\":", "\"type\":", "\"finish-step\"", "\"undo\"", "\"seat\":",
        "1", "-7", "1e308", "1e999", "null", "\"step\":", "\"wicks\"", "\"pour\"", "\"id\":", "\"ref\":", ",", "[", "]",
        "\n", "\u0000", "\"pause\"", "\"resume\"", "\"open-step\"", "true", "é", "99999999999999999999",
        "\"judge-set\""};

    @Property(tries = 400)
    void any_text_is_read_or_refused_in_one_sentence(@ForAll String text) throws Exception {
        readOrRefused(text);
        readOrRefused(ClassLogReaderTest.HEAD + text);
    }

    @Property(tries = 400)
    void any_heap_of_pieces_is_read_or_refused_in_one_sentence(@ForAll long seed,
                                                               @ForAll @IntRange(max = 30) int length)
            throws Exception {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder(ClassLogReaderTest.HEAD);
        for (int j = 0; j < length; j++) {
            text.append(PIECES[random.nextInt(PIECES.length)]);
        }
        readOrRefused(text.toString());
    }

    @Property(tries = 300)
    void a_good_log_with_one_character_changed_is_replayed_or_refused(@ForAll long seed) throws Exception {
        StringBuilder text = new StringBuilder(ClassLogReaderTest.HEAD
                + "{\"t\":60,\"type\":\"finish-step\",\"seat\":1,\"step\":\"wicks\",\"id\":1}\n"
                + "{\"t\":61,\"type\":\"arrive\",\"seat\":2}\n{\"t\":62,\"type\":\"pause\",\"seat\":2}\n"
                + "{\"t\":90,\"type\":\"open-step\",\"step\":\"pour\"}\n{\"t\":95,\"type\":\"resume\",\"seat\":2}\n"
                + "{\"t\":99,\"type\":\"undo\",\"seat\":1,\"ref\":1}\n{\"t\":99,\"type\":\"claim\",\"seat\":1}\n");
        Random random = new Random(seed);
        text.setCharAt(random.nextInt(text.length()), (char) (32 + random.nextInt(95)));
        StringBuilder out = new StringBuilder();
        StringBuilder err = new StringBuilder();
        int code = new ReplayCommand().run(List.of("-"), "-", "-", Optional.empty(),
                new ByteArrayInputStream(text.toString().getBytes(StandardCharsets.UTF_8)), out, err);
        assertThat(code).isIn(0, 2);
        assertThat(err.isEmpty()).isEqualTo(code == 0);
        assertThat(out.isEmpty()).isEqualTo(code == 2);
    }

    private static void readOrRefused(String text) throws Exception {
        try {
            ClassLogReader.read("log", new StringReader(text));
        } catch (BadFile refused) {
            assertThat(refused.getMessage()).matches("(?s)log, line \\d+: .+\\.");
        }
    }
}
