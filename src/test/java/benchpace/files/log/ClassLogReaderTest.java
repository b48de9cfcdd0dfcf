package benchpace.files.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.files.BadFile;
import benchpace.pace.PaceStations;
import benchpace.plan.SeatNumber;
import java.io.StringReader;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ClassLogReaderTest {
    static final String HEAD = "{\"t\":0,\"type\":\"class\",\"class_id\":\"c1\",\"steps\":["
            + "{\"step\":\"wicks\",\"planMinutes\":4,\"opening\":\"free\",\"kind\":\"hands-on\"},"
            + "{\"step\":\"pour\",\"planMinutes\":3,\"opening\":\"led\",\"kind\":\"pour\"}],"
            + "\"cureMinutes\":60,\"helpers\":1,\"seats\":[{\"seat\":1,\"party\":1,\"sharesCandle\":false,"
            + "\"present\":true},{\"seat\":2,\"party\":2,\"sharesCandle\":false,\"present\":false}]}\n";

    private static ClassLog read(String text) throws Exception {
        return ClassLogReader.read("log.jsonl", new StringReader(text));
    }

    private static void refused(String text, String sentence) {
        assertThatThrownBy(() -> read(text)).isInstanceOf(BadFile.class).hasMessage(sentence);
    }

    @Test
    void a_log_is_read_with_its_events() throws Exception {
        ClassLog log = read(HEAD + "{\"t\":60,\"type\":\"finish-step\",\"seat\":1,\"step\":\"wicks\",\"id\":1}\n\n"
                + "{\"t\":70.5,\"type\":\"undo\",\"seat\":1,\"ref\":1}\n"
                + "{\"t\":71,\"type\":\"open-step\",\"step\":\"pour\"}");
        assertThat(log.classId()).isEqualTo("c1");
        assertThat(log.steps()).extracting("id").containsExactly("wicks", "pour");
        assertThat(log.events()).extracting(LogEvent::type).isEqualTo(List.of(LogEvent.Type.FINISH_STEP,
                LogEvent.Type.UNDO, LogEvent.Type.OPEN_STEP));
        assertThat(log.events().get(1).line()).isEqualTo(4);
        TrackFold fold = new TrackFold(log);
        log.events().forEach(fold::apply);
        assertThat(fold.track().seats().get(0).taps()).isEmpty();
        assertThat(fold.track().openedMinutes().get(1)).isEqualTo(71 / 60.0);
    }

    private static String served(String stations) {
        return HEAD.replace("\"kind\":\"pour\"", "\"kind\":\"pour\",\"stations\":" + stations);
    }

    @Test
    void a_step_may_say_what_serves_it() throws Exception {
        assertThat(read(served("{\"atOnce\":2,\"minutesEach\":1.5}")).steps().get(1).stations())
                .contains(new PaceStations(2, 1.5));
        assertThat(read(served("{\"atOnce\":1,\"what\":\"melter tap\"}")).steps().get(1).stations())
                .contains(new PaceStations(1, 3));
        assertThat(read(HEAD).steps()).allMatch(step -> step.stations().isEmpty());
        String wrong = "log.jsonl, line 1: the stations of step \"pour\" should serve 1 to " + SeatNumber.MOST
                + " seats, for \"minutesEach\" above 0 and at most those of the step.";
        refused(served("{\"atOnce\":0}"), wrong);
        refused(served("{\"atOnce\":1,\"minutesEach\":4}"), wrong);
        refused(served("{\"atOnce\":1,\"minutesEach\":0}"), wrong);
        refused(served("[]"), "log.jsonl, line 1: the \"stations\" of step \"pour\" should be an object.");
        refused(served("{\"atOnce\":1}").replace("\"pour\",\"stations", "\"wait\",\"stations"),
                "log.jsonl, line 1: nobody waits for a turn at step \"pour\": it is not done by seats.");
    }

    @Test
    void what_is_wrong_is_named_with_file_and_line() {
        refused("", "log.jsonl, line 1: the log is empty; its first line should describe the class.");
        refused(HEAD + "{\"t\":", "log.jsonl, line 2: this is not JSON.");
        refused(HEAD + "{\"t\":1,\"type\":\"leave\",\"seat\":1} x", "log.jsonl, line 2: this is not JSON.");
        refused(HEAD + "[1]", "log.jsonl, line 2: a line should be one JSON object.");
        refused(HEAD + "{\"t\":5,\"type\":\"leave\",\"seat\":1}\n{\"t\":4,\"type\":\"leave\",\"seat\":1}",
                "log.jsonl, line 3: time goes back, from 5.0 s to 4.0 s.");
        refused(HEAD + "{\"t\":5,\"type\":\"leave\",\"seat\":3}",
                "log.jsonl, line 2: there is no seat 3 in this class.");
        refused(HEAD + "{\"t\":5,\"type\":\"open-step\",\"step\":\"label\"}",
                "log.jsonl, line 2: there is no step \"label\" in this class.");
        refused(HEAD + "{\"t\":5,\"type\":\"dance\",\"seat\":1}",
                "log.jsonl, line 2: there is no event of type \"dance\".");
        refused(HEAD + "{\"t\":5,\"type\":\"undo\",\"seat\":1,\"ref\":9}",
                "log.jsonl, line 2: nothing with the id \"9\" came before that could be undone.");
        refused(HEAD + "{\"t\":-5,\"type\":\"leave\",\"seat\":1}",
                "log.jsonl, line 2: \"t\" should be seconds from the class's start, within a week.");
        refused("{\"t\":0,\"type\":\"leave\",\"seat\":1}",
                "log.jsonl, line 1: the first line should be of type \"class\".");
    }
}
