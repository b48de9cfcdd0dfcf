package benchpace.files.log;

import benchpace.files.BadField;
import benchpace.files.BadFile;
import benchpace.files.Fields;
import benchpace.files.Finding;
import benchpace.files.Json;
import benchpace.files.SizedText;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.Reader;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * The file of a class that was held: its whole log, an event a line in JSON, in order, as {@code GET
 * /api/classes/ID/events} gives it. The number of another event is called {@code target} in it. What the commands were
 * called is not kept, so that an event read has the id {@code recorded.} with its number.
 */
public final class RecordedClass {
    /** Ten times what the liveliest day of the largest class has. */
    static final int MOST_EVENTS = 20_000;
    private static final int LONGEST_MARK = 64;

    private final String file;
    private final List<Recorded> events = new ArrayList<>();
    private final List<Integer> lines = new ArrayList<>();
    private final NamesSoFar names = new NamesSoFar();
    private int line;

    private RecordedClass(String file) {
        this.file = file;
    }

    /** The file's text. */
    public static String write(List<Recorded> log) {
        StringBuilder text = new StringBuilder();
        log.forEach(event -> text.append(Json.text(EventJson.line(event))).append('\n'));
        return text.toString();
    }

    /**
     * Reads what {@link #write} wrote.
     *
     * @param file what to call it in an error
     * @return numbered from 1 without gaps; they add up to a class
     * @throws BadFile with the line, when one is not as it should be
     */
    public static List<Recorded> read(String file, Reader text) throws IOException {
        try {
            return new RecordedClass(file).all(SizedText.read(text, SizedText.LOG));
        } catch (SizedText.TooLarge large) {
            throw new BadFile(file + ": it " + large.getMessage() + " of a recorded class.", large);
        }
    }

    private List<Recorded> all(String text) {
        text.lines().forEach(written -> {
            line++;
            if (!written.isBlank()) {
                add(written);
            }
        });
        if (events.isEmpty()) {
            throw new BadFile(file + ": it holds no event.");
        }
        List<Recorded> history = LiveClass.of(events).history();
        for (int i = 1; i < history.size(); i++) {
            if (history.get(i).recordedAt().isBefore(history.get(i - 1).recordedAt())) {
                throw wrong(lines.get(i), "it was written down before the event above it");
            }
        }
        return List.copyOf(events);
    }

    private void add(String written) {
        if (events.size() == MOST_EVENTS) {
            throw wrong(line, "there are more than " + MOST_EVENTS + " events, the most that is read");
        }
        try {
            Recorded event = event(Json.read(written));
            names.see(event.event());
            events.add(event);
            lines.add(line);
        } catch (JsonProcessingException notJson) {
            throw wrong(line, Json.problem(notJson).shownSentence());
        } catch (BadField bad) {
            throw wrong(line, new Finding("", bad.getMessage()).shownSentence());
        }
    }

    private Recorded event(JsonNode node) {
        Fields head = new Fields(node, "", problem -> {
            throw BadField.of(problem);
        });
        long seq = head.whole("seq", 1, Long.MAX_VALUE).orElseThrow();
        if (seq != events.size() + 1) {
            throw new BadField("seq", "is " + seq + " where event " + (events.size() + 1) + " should stand");
        }
        String type = head.text("type").orElseThrow();
        Instant at = head.instant("at").orElseThrow();
        Instant recordedAt = head.instant("recordedAt").orElseThrow();
        String by = head.line("by", 0, LONGEST_MARK).orElseThrow();
        String device = head.line("device", 0, LONGEST_MARK).orElseThrow();
        ClassEvent event = EventJson.read(type, fields((ObjectNode) node));
        return new Recorded(seq, "recorded." + seq, by, device, at, recordedAt, event);
    }

    /** The event's own, the number of another under the name that it has in a command. */
    private static ObjectNode fields(ObjectNode node) {
        ObjectNode fields = node.deepCopy();
        fields.remove("seq");
        if (fields.has("target")) {
            fields.set("seq", fields.remove("target"));
        }
        return fields;
    }

    private BadFile wrong(int where, String what) {
        return new BadFile(file + ", line " + where + ": " + what + (what.endsWith("?") ? "" : "."));
    }
}
