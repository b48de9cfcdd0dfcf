package benchpace.files.log;

import benchpace.files.BadFile;
import benchpace.pace.PaceStations;
import benchpace.pace.PaceStep;
import benchpace.pace.WorkKind;
import benchpace.plan.SeatNumber;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads class logs, JSON lines with {@code t} in seconds from the class's start; says where a log goes wrong. */
public final class ClassLogReader {
    private static final ObjectMapper JSON = new ObjectMapper()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);
    private static final Map<String, LogEvent.Type> TYPES = new HashMap<>();
    private static final double LONGEST_SECONDS = 7 * 24 * 3600;
    private static final int MOST_STEPS = 60;
    private static final int MOST_SEATS = 200;

    static {
        for (LogEvent.Type type : LogEvent.Type.values()) {
            TYPES.put(type.fileName(), type);
        }
    }

    private final String file;
    private int line;
    private double lastSeconds;
    private final Map<String, Integer> steps = new HashMap<>();
    private final Set<Integer> seats = new HashSet<>();
    private final Map<String, Integer> taps = new HashMap<>();

    private ClassLogReader(String file) {
        this.file = file;
    }

    /**
     * Reads one log.
     *
     * @param file what to call it in an error
     * @throws BadFile when a line is not as it should be
     */
    public static ClassLog read(String file, Reader text) throws IOException {
        return new ClassLogReader(file).readAll(new BufferedReader(text));
    }

    private ClassLog readAll(BufferedReader text) throws IOException {
        List<LogEvent> events = new ArrayList<>();
        ClassLog head = null;
        for (String written = text.readLine(); written != null; written = text.readLine()) {
            line++;
            if (written.isBlank()) {
                continue;
            }
            JsonNode node = parse(written);
            if (head == null) {
                head = head(node);
            } else {
                events.add(event(node));
            }
        }
        if (head == null) {
            line = Math.max(1, line);
            throw wrong("the log is empty; its first line should describe the class");
        }
        return new ClassLog(head.classId(), head.steps(), head.cureMinutes(), head.places(), events);
    }

    private JsonNode parse(String written) {
        try {
            JsonNode node = JSON.readTree(written);
            if (!node.isObject()) {
                throw wrong("a line should be one JSON object");
            }
            return node;
        } catch (JsonProcessingException notJson) {
            throw wrong("this is not JSON");
        }
    }

    private ClassLog head(JsonNode node) {
        if (!"class".equals(text(node, "type"))) {
            throw wrong("the first line should be of type \"class\"");
        }
        String classId = text(node, "class_id");
        if (node.has("t")) {
            time(node);
        }
        List<PaceStep> plan = new ArrayList<>();
        for (JsonNode step : list(node, "steps", MOST_STEPS)) {
            plan.add(step(step));
        }
        List<ClassLog.Place> places = new ArrayList<>();
        for (JsonNode seat : list(node, "seats", MOST_SEATS)) {
            places.add(place(seat));
        }
        double cure = node.has("cureMinutes") ? number(node, "cureMinutes") : 60;
        if (!(cure > 0 && cure <= 24 * 60)) {
            throw wrong("\"cureMinutes\" should be above 0 and at most a day");
        }
        return new ClassLog(classId, plan, cure, places, List.of());
    }

    private PaceStep step(JsonNode node) {
        String id = text(node, "step");
        double plan = number(node, "planMinutes");
        if (id.isBlank() || !(plan > 0 && plan <= 600)) {
            throw wrong("a step needs a name and \"planMinutes\" above 0 and at most 600");
        }
        String opening = text(node, "opening");
        if (!opening.equals("led") && !opening.equals("free")) {
            throw wrong("step \"" + id + "\" opens \"" + opening + "\"; it should be \"led\" or \"free\"");
        }
        if (steps.putIfAbsent(id, steps.size()) != null) {
            throw wrong("there are two steps named \"" + id + "\"");
        }
        WorkKind kind = kind(id, text(node, "kind"));
        return new PaceStep(id, plan, opening.equals("led"), kind, stations(id, plan, kind, node.path("stations")));
    }

    /** What serves a step, where it cannot serve all at once: {@code {"atOnce": 1, "minutesEach": 3}}. */
    private Optional<PaceStations> stations(String id, double plan, WorkKind kind, JsonNode node) {
        if (node.isMissingNode() || node.isNull()) {
            return Optional.empty();
        }
        if (!node.isObject()) {
            throw wrong("the \"stations\" of step \"" + id + "\" should be an object");
        }
        int atOnce = whole(node, "atOnce");
        double each = node.has("minutesEach") ? number(node, "minutesEach") : plan;
        if (atOnce < 1 || atOnce > SeatNumber.MOST || !(each > 0 && each <= plan)) {
            throw wrong("the stations of step \"" + id + "\" should serve 1 to " + SeatNumber.MOST
                    + " seats, for \"minutesEach\" above 0 and at most those of the step");
        }
        if (!kind.isWorked() && kind != WorkKind.FINISH) {
            throw wrong("nobody waits for a turn at step \"" + id + "\": it is not done by seats");
        }
        return Optional.of(new PaceStations(atOnce, each));
    }

    private WorkKind kind(String id, String kind) {
        return switch (kind.toLowerCase(Locale.ROOT)) {
            case "hands-on" -> WorkKind.HANDS_ON;
            case "pour" -> WorkKind.POUR;
            case "wait", "cure" -> WorkKind.WAIT;
            case "talk" -> WorkKind.TALK;
            case "finish" -> WorkKind.FINISH;
            default -> throw wrong("step \"" + id + "\" is of an unknown kind \"" + kind + "\"");
        };
    }

    private ClassLog.Place place(JsonNode node) {
        int number = whole(node, "seat");
        if (number < 1 || !seats.add(number)) {
            throw wrong("seat " + number + " is announced twice or is not a seat number");
        }
        int party = node.has("party") ? whole(node, "party") : number;
        boolean shares = node.path("sharesCandle").asBoolean(false);
        boolean present = node.path("present").asBoolean(true);
        return new ClassLog.Place(number, party, shares, present);
    }

    private LogEvent event(JsonNode node) {
        double seconds = time(node);
        String name = text(node, "type");
        LogEvent.Type type = TYPES.get(name);
        if (type == null) {
            throw wrong("there is no event of type \"" + name + "\"");
        }
        int seat = 0;
        if (type.isSeated()) {
            seat = whole(node, "seat");
            if (!seats.contains(seat)) {
                throw wrong("there is no seat " + seat + " in this class");
            }
        }
        int step = -1;
        if (type.isStepped()) {
            String stepName = text(node, "step");
            Integer known = steps.get(stepName);
            if (known == null) {
                throw wrong("there is no step \"" + stepName + "\" in this class");
            }
            step = known;
        }
        return new LogEvent(line, seconds, type, seat, step, id(node, type, seat));
    }

    private String id(JsonNode node, LogEvent.Type type, int seat) {
        if (type == LogEvent.Type.UNDO) {
            String ref = node.path("ref").asText("");
            Integer tapped = taps.get(ref);
            if (tapped == null) {
                throw wrong("nothing with the id \"" + ref + "\" came before that could be undone");
            }
            if (tapped != seat) {
                throw wrong("the event \"" + ref + "\" to undo belongs to seat " + tapped);
            }
            return ref;
        }
        String id = node.path("id").asText("");
        if (!id.isEmpty() && (type == LogEvent.Type.FINISH_STEP || type == LogEvent.Type.SKIP_STEP)) {
            if (taps.putIfAbsent(id, seat) != null) {
                throw wrong("the id \"" + id + "\" is used twice");
            }
        }
        return id;
    }

    private double time(JsonNode node) {
        double seconds = number(node, "t");
        if (!(seconds >= 0 && seconds <= LONGEST_SECONDS)) {
            throw wrong("\"t\" should be seconds from the class's start, within a week");
        }
        if (seconds < lastSeconds) {
            throw wrong("time goes back, from " + lastSeconds + " s to " + seconds + " s");
        }
        lastSeconds = seconds;
        return seconds;
    }

    private JsonNode list(JsonNode node, String field, int most) {
        JsonNode list = node.path(field);
        if (!list.isArray() || list.isEmpty() || list.size() > most) {
            throw wrong("\"" + field + "\" should be a list of 1 to " + most);
        }
        return list;
    }

    private String text(JsonNode node, String field) {
        if (!node.path(field).isTextual()) {
            throw wrong("\"" + field + "\" is missing or not text");
        }
        return node.path(field).textValue();
    }

    private double number(JsonNode node, String field) {
        if (!node.path(field).isNumber() || !Double.isFinite(node.path(field).doubleValue())) {
            throw wrong("\"" + field + "\" is missing or not a number");
        }
        return node.path(field).doubleValue();
    }

    private int whole(JsonNode node, String field) {
        if (!node.path(field).isIntegralNumber() || !node.path(field).canConvertToInt()) {
            throw wrong("\"" + field + "\" is missing or not a whole number");
        }
        return node.path(field).intValue();
    }

    private BadFile wrong(String what) {
        return new BadFile(file + ", line " + line + ": " + what + ".");
    }
}
