package benchpace.files.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.files.BadFile;
import benchpace.files.SizedText;
import benchpace.live.ClassEvent;
import benchpace.live.Recorded;
import benchpace.live.TestClass;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RecordedClassTest {
    private static final String CREATED = RecordedClass.write(TestClass.evening(2).live().log());

    private static List<Recorded> read(String text) throws IOException {
        return RecordedClass.read("evening.jsonl", new StringReader(text));
    }

    private static void refused(String text, String sentence) {
        assertThatThrownBy(() -> read(text)).isInstanceOf(BadFile.class).hasMessage("evening.jsonl" + sentence);
    }

    /** An event of minute one. */
    private static String event(int seq, String rest) {
        return "{\"seq\":" + seq + ",\"at\":\"2027-03-04T19:01:00Z\",\"recordedAt\":\"2027-03-04T19:01:00Z\","
                + "\"by\":\"instructor\"," + rest + "}\n";
    }

    @Test void a_class_is_read_back_but_for_what_its_commands_were_called() throws IOException {
        TestClass c = TestClass.evening(2).open("welcome").minute(5).open("wicks").minute(9.25).finish(1, "wicks")
                .madeAt(8).finish(2, "wicks").undoLast();

        List<Recorded> read = read(RecordedClass.write(c.live().log()));

        assertThat(read).usingRecursiveFieldByFieldElementComparatorIgnoringFields("commandId")
                .isEqualTo(c.live().log());
        assertThat(read).extracting(Recorded::commandId).startsWith("recorded.1", "recorded.2").doesNotHaveDuplicates();
    }

    @Test void what_is_corrected_is_named_by_its_number_as_target() throws IOException {
        List<Recorded> read = read(CREATED + event(2, "\"type\":\"open-step\",\"step\":\"welcome\"")
                + event(3, "\"type\":\"undo\",\"target\":2"));

        assertThat(read.get(2).event()).isEqualTo(new ClassEvent.Undone(2));
    }

    @Test void blank_lines_and_a_byte_order_mark_are_passed_over() throws IOException {
        assertThat(read("\uFEFF\n" + CREATED + "\n\n" + event(2, "\"type\":\"close\"") + "\n")).hasSize(2);
    }

    @Test void what_is_no_event_is_told_with_its_line() {
        refused("", ": it holds no event.");
        refused(CREATED + "{} {}", ", line 2: is not sound JSON: it goes on after its end.");
        refused(CREATED + "[1]", ", line 2: must be an object in braces, not a list.");
        refused(CREATED + event(2, "\"type\":\"finish-step\",\"seat\":1"), ", line 2: \"step\" is missing.");
        refused(CREATED + event(2, "\"type\":\"clos\""),
                ", line 2: \"type\" is not a type of event; did you mean \"close\"?");
        refused(CREATED + "\n" + event(2, "\"type\":\"close\"").replace("04T19:01:00Z\",\"by", "99\",\"by"),
                ", line 3: \"recordedAt\" must be a time such as \"2027-03-04T18:30:00Z\", not \"2027-03-99\".");
    }

    @Test void events_that_add_up_to_no_class_are_told_with_their_line() {
        refused(event(1, "\"type\":\"close\""), ", line 1: \"type\" must be \"create\" in the first event.");
        refused(CREATED + CREATED.replace("\"seq\":1,", "\"seq\":2,"),
                ", line 2: \"type\" is \"create\" a second time.");
        refused(CREATED + event(3, "\"type\":\"close\""), ", line 2: \"seq\" is 3 where event 2 should stand.");
        refused(CREATED + event(2, "\"type\":\"pause\",\"seat\":3"),
                ", line 2: \"seat\" is 3, and this class has no such seat.");
        refused(CREATED + event(2, "\"type\":\"open-step\",\"step\":\"wick\""),
                ", line 2: \"step\" is \"wick\", which is not in the class's plan; did you mean \"wicks\"?");
        refused(CREATED + event(2, "\"type\":\"open-activity\",\"activity\":\"dance\""),
                ", line 2: \"activity\" is \"dance\", which is not in the class's plan.");
        refused(CREATED + event(2, "\"type\":\"undo\",\"target\":2"),
                ", line 2: \"target\" is 2, and no such event came before.");
        refused(CREATED + event(2, "\"type\":\"undo\",\"target\":1"),
                ", line 2: \"target\" is 1, an event that cannot be taken back or corrected.");
        refused(CREATED + event(2, "\"type\":\"close\"").replaceAll("T19:01", "T18:01"),
                ", line 2: it was written down before the event above it.");
    }

    @Test void no_more_is_read_than_a_recorded_class_can_have() {
        refused(CREATED + " ".repeat(SizedText.LOG),
                ": it is larger than 8 MiB, the most that is read of a recorded class.");
        StringBuilder many = new StringBuilder(CREATED);
        for (int seq = 2; seq <= RecordedClass.MOST_EVENTS + 1; seq++) {
            many.append(event(seq, "\"type\":\"note\",\"text\":\"a\""));
        }
        refused(many.toString(), ", line 20001: there are more than 20000 events, the most that is read.");
    }
}
