package benchpace.files.export;

import java.util.List;
import java.util.Optional;

/**
 * All that is written of a class.
 *
 * @param head   the class itself
 * @param events as they were written down
 * @param report what was reckoned of them, kind by kind; empty if they make no class
 */
public record ClassFile(Row head, EventLines events, Optional<List<Row>> report) {
    public ClassFile {
        report = report.map(List::copyOf);
    }
}
