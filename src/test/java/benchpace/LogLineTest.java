package benchpace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.logging.Level;
import java.util.logging.LogRecord;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LogLineTest {
    private static LogRecord failed(Throwable thrown) {
        LogRecord record = new LogRecord(Level.SEVERE, "class a cannot\nbe shown");
        record.setThrown(thrown);
        return record;
    }

    @Test void a_failure_is_one_line_that_says_what_and_where() {
        String line = new LogLine(false).format(failed(new IllegalStateException("no\nplace", new Error())));

        assertThat(line).hasLineCount(1).matches("\\d\\d:\\d\\d:\\d\\d SEVERE class a cannot be shown \\(no place, "
                + "LogLineTest.java:\\d+; --debug shows more\\)\\n");
    }

    @Test void a_failure_without_words_is_called_by_its_kind() {
        assertThat(new LogLine(false).format(failed(new StackOverflowError()))).contains("(StackOverflowError, ");
    }

    @Test void the_trace_is_shown_to_whoever_asks_for_it() {
        assertThat(new LogLine(true).format(failed(new IllegalStateException("x", new Error("deep")))))
                .contains("java.lang.IllegalStateException: x", "\tat benchpace.LogLineTest.", "Caused by: ", "deep");
    }

    @Test void what_is_no_failure_is_said_as_it_is() {
        assertThat(new LogLine(true).format(failed(null))).endsWith(" SEVERE class a cannot be shown\n");
    }
}
