package benchpace.simulation;

import benchpace.files.Json;
import benchpace.files.log.EventJson;
import benchpace.live.Recorded;
import benchpace.store.EventLog;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A log in memory, in the words of the real one: what comes out of it was written as text and read back. */
final class MemoryLog implements EventLog {
    private record Row(Recorded head, String type, String fields) { }

    private final Map<String, List<Row>> classes = new LinkedHashMap<>();

    @Override public synchronized List<String> classIds() {
        return List.copyOf(classes.keySet());
    }

    @Override public synchronized boolean anyRecorded(Instant from, Instant until) {
        return classes.values().stream().flatMap(List::stream).map(row -> row.head.recordedAt())
                .anyMatch(at -> !at.isBefore(from) && !at.isAfter(until));
    }

    @Override public synchronized List<Recorded> read(String classId) {
        List<Recorded> events = new ArrayList<>();
        classes.getOrDefault(classId, List.of()).forEach(row -> events.add(read(row)));
        return events;
    }

    private static Recorded read(Row row) {
        try {
            Recorded head = row.head;
            return new Recorded(head.seq(), head.commandId(), head.by(), head.device(),
                    Instant.ofEpochMilli(head.at().toEpochMilli()),
                    Instant.ofEpochMilli(head.recordedAt().toEpochMilli()),
                    EventJson.read(row.type, Json.read(row.fields)));
        } catch (JsonProcessingException e) {
            throw new AssertionError("event " + row.head.seq() + " was written and cannot be read", e);
        }
    }

    /** How many events a class has. */
    synchronized int size(String classId) {
        return classes.get(classId).size();
    }

    /** The same as the last that {@link #read} gives, at less cost. */
    synchronized Recorded last(String classId) {
        List<Row> rows = classes.get(classId);
        return read(rows.get(rows.size() - 1));
    }

    @Override public synchronized void append(String classId, Recorded event) {
        List<Row> rows = classes.computeIfAbsent(classId, id -> new ArrayList<>());
        if (event.seq() != rows.size() + 1
                || rows.stream().anyMatch(row -> row.head.commandId().equals(event.commandId()))) {
            throw new AssertionError("event " + event.seq() + " cannot follow " + rows.size());
        }
        rows.add(new Row(event, EventJson.type(event.event()), Json.text(EventJson.fields(event.event()))));
    }
}
