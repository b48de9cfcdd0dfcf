package benchpace.files.export;

import java.time.Instant;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * One thing that is told of a class.
 *
 * @param cells what of it is known: text, whole numbers, minutes, times, or whether
 */
public record Row(RowKind kind, Map<Column, Object> cells) {
    public Row {
        cells = Collections.unmodifiableMap(new EnumMap<>(cells));
    }

    public static Filling of(RowKind kind) {
        return new Filling(kind);
    }

    /** A row in the making. */
    public static final class Filling {
        private final RowKind kind;
        private final Map<Column, Object> cells = new EnumMap<>(Column.class);

        private Filling(RowKind kind) {
            this.kind = kind;
        }

        /** Text; the empty one is left out. */
        public Filling text(Column column, String text) {
            if (!text.isEmpty()) {
                cells.put(column, text);
            }
            return this;
        }

        public Filling count(Column column, long count) {
            cells.put(column, count);
            return this;
        }

        public Filling minutes(Column column, double minutes) {
            cells.put(column, minutes);
            return this;
        }

        public Filling whether(Column column, boolean so) {
            cells.put(column, so);
            return this;
        }

        public Filling at(Column column, Instant at) {
            cells.put(column, at);
            return this;
        }

        public Filling at(Column column, Optional<Instant> at) {
            at.ifPresent(known -> cells.put(column, known));
            return this;
        }

        public Row row() {
            return new Row(kind, cells);
        }
    }
}
