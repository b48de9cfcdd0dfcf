package benchpace.files.log;

import static benchpace.plan.StandIns.prose;

import benchpace.files.Json;
import benchpace.live.Era;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * An event that cannot be read back, without the words of guests that may be in it: what is known to bear none stays as
 * it stands there, for whoever may mend it, and everything else goes, as a damaged field may have another name.
 */
public final class NamelessFields {
    private static final Set<String> SEAT = Set.of("seat", "candle");
    private static final Set<String> SETUP = Set.of("plan", "name", "startsAt", "promisedEnd", "numbering");
    private static final List<String> APPOINTED = List.of("startsAt", "promisedEnd");
    private static final String SEATS = "seats";
    /** Of each type that bears words of guests, what bears none. */
    private static final Map<String, Set<String>> KEPT = Map.of("create", SETUP, "set-up", SETUP, "add-seat", SEAT,
            "correct-guest", SEAT, "arrive", SEAT, "note", SEAT);

    private NamelessFields() { }

    /** The types of those events that bear words of guests. */
    public static Set<String> types() {
        return KEPT.keySet();
    }

    /**
     * The fields of such an event without words.
     *
     * @param type one of {@link #types}
     * @return empty if this is not the text of any fields, so that there is no telling which words stand in it
     */
    public static Optional<String> of(String type, String payload) {
        try {
            return Json.read(payload) instanceof ObjectNode fields ? Optional.of(Json.text(without(type, fields)))
                    : Optional.empty();
        } catch (JsonProcessingException none) {
            return Optional.empty();
        }
    }

    /** The last of the times that an event, which may be damaged, appoints for a class; empty if none that can be. */
    public static Optional<Instant> lastAppointment(String payload) {
        try {
            JsonNode fields = Json.read(payload);
            return APPOINTED.stream().map(field -> fields.path(field).asText()).flatMap(NamelessFields::instants)
                    .filter(Era::holds).max(Comparator.naturalOrder());
        } catch (JsonProcessingException none) {
            return Optional.empty();
        }
    }

    private static Stream<Instant> instants(String text) {
        try {
            return Stream.of(Instant.parse(text));
        } catch (DateTimeParseException none) {
            return Stream.empty();
        }
    }

    private static ObjectNode without(String type, ObjectNode fields) {
        ObjectNode nameless = only(fields, KEPT.get(type));
        if (KEPT.get(type) == SETUP && fields.get(SEATS) instanceof ArrayNode seats) {
            ArrayNode kept = nameless.putArray(SEATS);
            seats.forEach(seat -> kept.add(only(seat instanceof ObjectNode place ? place : Json.object(), SEAT)
                    .put("name", "")));
        }
        if (type.equals("add-seat") || type.equals("correct-guest")) {
            nameless.put("name", "");
        }
        List.of("arrive/name", "note/text").forEach(one -> { // that something was told stays known
            String field = one.substring(one.indexOf('/') + 1);
            if (one.startsWith(type + "/") && fields.path(field).isTextual()) {
                nameless.put(field, prose(fields.get(field).textValue()));
            }
        });
        return nameless;
    }

    private static ObjectNode only(ObjectNode fields, Set<String> kept) {
        ObjectNode some = Json.object();
        fields.properties().forEach(field -> {
            JsonNode value = field.getValue();
            if (kept.contains(field.getKey())) {
                some.set(field.getKey(), value);
            }
        });
        return some;
    }
}
