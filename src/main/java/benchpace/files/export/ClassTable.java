package benchpace.files.export;

import benchpace.files.Formulae;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A class as one table: RFC 4180, with a header, its first column naming what a row tells of. */
public final class ClassTable {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180;

    private static final List<Row> NO_REPORT =
            List.of(Row.of(RowKind.MISSING).text(Column.MISSING, ClassJson.REPORT).row());

    private ClassTable() { }

    /** The header. */
    public static List<String> header() {
        return Arrays.stream(Column.values()).map(Column::key).toList();
    }

    /** Writes it, row by row; closes nothing. */
    public static void write(ClassFile file, Appendable out) throws IOException {
        CSVPrinter printer = new CSVPrinter(out, FORMAT);
        printer.printRecord(header());
        print(printer, file.head());
        for (ObjectNode line : file.events()) {
            print(printer, EventRows.of(line));
        }
        for (Row row : file.report().orElse(NO_REPORT)) {
            print(printer, row);
        }
    }

    private static void print(CSVPrinter printer, Row row) throws IOException {
        for (Column column : Column.values()) {
            Object value = column == Column.ROW ? row.kind().word() : row.cells().get(column);
            printer.print(value == null ? "" : cell(value));
        }
        printer.println();
    }

    /** Numbers, times and truths are no free text: they stay as they are, a number below 0 too. */
    private static String cell(Object value) {
        if (value instanceof Double minutes) {
            return minutes == Math.rint(minutes) && Math.abs(minutes) < 1e9 ? Long.toString(Math.round(minutes))
                    : new BigDecimal(minutes.toString()).toPlainString();
        }
        return value instanceof String text ? Formulae.harmless(text) : value.toString();
    }
}
