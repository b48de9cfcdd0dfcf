package benchpace.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The evening that comes with the program shows what it is there to show. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RecordedEveningTest {
    @Test void the_file_is_what_is_made_of_its_script() throws IOException {
        assertThat(Files.readString(RecordedEvening.FILE)).isEqualTo(RecordedEvening.text());
    }
}
