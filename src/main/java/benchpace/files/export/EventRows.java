package benchpace.files.export;

import benchpace.files.Json;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/**
 * An event as the table has it: what many events have in columns of their own, and all else of its line, as one JSON
 * object, in {@code fields}. Both together are the line again, which the JSON has as it is.
 */
final class EventRows {
    private static final List<Column> OWN = List.of(Column.SEQ, Column.TYPE, Column.AT, Column.RECORDED_AT, Column.BY,
            Column.DEVICE, Column.SEAT, Column.STEP);

    private EventRows() { }

    /** @param line as {@link benchpace.files.log.EventJson#line} makes it */
    static Row of(ObjectNode line) {
        Row.Filling row = Row.of(RowKind.EVENT);
        ObjectNode rest = line.deepCopy();
        for (Column column : OWN) {
            JsonNode value = line.get(column.key());
            if (value != null && value.isIntegralNumber()) {
                row.count(column, value.longValue());
                rest.remove(column.key());
            } else if (value != null && value.isTextual() && !value.textValue().isEmpty()) {
                row.text(column, value.textValue());
                rest.remove(column.key());
            }
        }
        return rest.isEmpty() ? row.row() : row.text(Column.FIELDS, Json.text(rest)).row();
    }
}
