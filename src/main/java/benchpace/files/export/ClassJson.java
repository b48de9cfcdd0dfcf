package benchpace.files.export;

import benchpace.files.Json;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Map;

/**
 * A class as one JSON object: {@code class}, its {@code events} as they were written down, and its {@code report},
 * which is null where the events make no class. What the table has in a row is an object here, under the same names.
 */
public final class ClassJson {
    /** Which of the promises about names this is. */
    public static final String FORMAT = "benchpace-class-1";
    static final String REPORT = "report";

    private ClassJson() { }

    /** Writes it, event by event; closes nothing. */
    public static void write(ClassFile file, Writer out) throws IOException {
        JsonGenerator json = Json.mapper().createGenerator(out).useDefaultPrettyPrinter()
                .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
        json.writeStartObject();
        json.writeStringField("format", FORMAT);
        json.writeFieldName(RowKind.CLASS.key());
        write(json, file.head());
        json.writeArrayFieldStart(RowKind.EVENT.key());
        for (ObjectNode line : file.events()) {
            json.writeTree(line);
        }
        json.writeEndArray();
        json.writeFieldName(REPORT);
        if (file.report().isPresent()) {
            report(json, file.report().get());
        } else {
            json.writeNull();
        }
        json.writeEndObject();
        json.flush();
        out.write('\n');
        out.flush();
    }

    private static void report(JsonGenerator json, List<Row> rows) throws IOException {
        json.writeStartObject();
        for (RowKind kind : RowKind.values()) {
            if (kind.ofReport()) {
                json.writeArrayFieldStart(kind.key());
                for (Row row : rows) {
                    if (row.kind() == kind) {
                        write(json, row);
                    }
                }
                json.writeEndArray();
            }
        }
        json.writeEndObject();
    }

    private static void write(JsonGenerator json, Row row) throws IOException {
        json.writeStartObject();
        for (Map.Entry<Column, Object> cell : row.cells().entrySet()) {
            json.writeFieldName(cell.getKey().key());
            Object value = cell.getValue();
            if (value instanceof Double minutes) {
                json.writeNumber(minutes);
            } else if (value instanceof Long count) {
                json.writeNumber(count);
            } else if (value instanceof Boolean so) {
                json.writeBoolean(so);
            } else {
                json.writeString(value.toString());
            }
        }
        json.writeEndObject();
    }
}
