package benchpace.board.export;

import benchpace.board.view.ClassReport;
import benchpace.files.export.ClassFile;
import benchpace.files.export.Column;
import benchpace.files.export.EventLines;
import benchpace.files.export.Row;
import benchpace.files.export.RowKind;
import benchpace.files.log.StoredEvent;
import benchpace.live.LiveClass;
import benchpace.live.Nameless;
import java.util.List;
import java.util.Optional;

/**
 * A class to be written out.
 *
 * @param events as they were written down
 * @param told   what was reckoned of them; empty if they make no class
 */
public record ExportedClass(String id, EventLines events, Optional<Told> told) {
    /**
     * What the events make.
     *
     * @param live   who sat there, and what was noted
     * @param report every figure of the look back
     */
    public record Told(LiveClass live, ClassReport report) { }

    /** With everything that the studio knows. */
    public static ExportedClass of(LiveClass live, ClassReport report) {
        return new ExportedClass(report.view().id(), EventLines.of(live.log()), Optional.of(new Told(live, report)));
    }

    /** A class whose events do not add up, or cannot all be read: they alone. */
    public static ExportedClass eventsOnly(String id, List<StoredEvent> events) {
        return new ExportedClass(id, EventLines.stored(events), Optional.empty());
    }

    /** The same without the guests: their names and parties, what is to be minded, and whatever was noted. */
    public ExportedClass withoutGuests() {
        return new ExportedClass(id, events.withoutGuests(), told.map(t -> new Told(
                LiveClass.of(Nameless.ofGuests().all(t.live().log())), t.report())));
    }

    /** As it is written, in whichever form. */
    public ClassFile file() {
        Row head = told.map(t -> ReportRows.head(id, t))
                .orElseGet(() -> Row.of(RowKind.CLASS).text(Column.CLASS_ID, id).row());
        return new ClassFile(head, events, told.map(ReportRows::of));
    }
}
