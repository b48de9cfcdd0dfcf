package benchpace.web.setup;

import benchpace.board.plans.BookPlan;
import benchpace.board.plans.PlanBook;
import benchpace.files.Words;
import benchpace.files.log.EventJson;
import benchpace.files.plan.PlanFile;
import benchpace.files.plan.PlanReading;
import benchpace.live.ClassEvent.Place;
import benchpace.live.Setup;
import benchpace.plan.Numbering;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.TableShape;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Refused;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Reads how a class is to be set up. What a class that is there already has, and the body leaves out, stays. In place
 * of {@code startsAt} and {@code promisedEnd}, {@code begins} and {@code ends} say it by the room's clock.
 */
final class SetupReading {
    private static final Duration LONGEST_AGO = Duration.ofDays(400);
    private static final Duration LONGEST_AHEAD = Duration.ofDays(800);
    private static final Duration LONGEST_PAST_MIDNIGHT = Duration.ofHours(12);

    private final JsonNode body;
    private final Optional<Setup> before;
    private final PlanBook plans;
    private final String home;
    private final ZoneId zone;

    private SetupReading(JsonNode body, Optional<Setup> before, PlanBook plans, String home, ZoneId zone) {
        this.body = body;
        this.before = before;
        this.plans = plans;
        this.home = home;
        this.zone = zone;
    }

    /**
     * @param before how the class is now; empty for a new one
     * @param home   where a plan is held that does not say where; may be empty
     * @param now    when a new one begins if it does not say
     * @throws Refused with one sentence, by the field it is about
     */
    static Setup of(JsonNode body, Optional<Setup> before, PlanBook plans, String home, ZoneId zone,
                    Instant now) {
        return new SetupReading(body, before, plans, home, zone).read(now);
    }

    private Setup read(Instant now) {
        Plan plan = plan();
        String place = has("place") || before.isEmpty() ? Bodies.text(body, "place", 80).strip() : plan.place();
        Plan own = plan.heldAt(has("place") ? place : plan.place(), choice("table", TableShape.class, plan.table()));
        String name = Bodies.text(body, "name", 80).strip();
        Instant startsAt = startsAt(now).orElse(before.map(Setup::startsAt)
                .orElse(now.truncatedTo(ChronoUnit.MILLIS)));
        Optional<Instant> end = body.has("promisedEnd") || body.has("ends") ? promisedEnd(startsAt)
                : before.flatMap(Setup::promisedEnd);
        Numbering numbering = choice("numbering", Numbering.class,
                before.map(Setup::numbering).orElse(Numbering.CLOCKWISE_FROM_LEFT));
        try {
            return new Setup(own, !name.isEmpty() ? name : before.map(Setup::name).orElse(plan.name()), startsAt, end,
                    numbering, List.copyOf(places(own).values()));
        } catch (IllegalArgumentException wrong) {
            throw refused(sentence(wrong.getMessage()));
        }
    }

    private boolean has(String field) {
        return body.hasNonNull(field);
    }

    private static Refused refused(String sentence) {
        return new Refused(Problem.unprocessable(sentence));
    }

    private static String sentence(String message) {
        return message.substring(0, 1).toUpperCase(Locale.ROOT) + message.substring(1) + ".";
    }

    private Plan plan() {
        JsonNode given = body.get("plan");
        String planId = Bodies.text(body, "planId", 60);
        if (before.isPresent() && given == null && planId.isEmpty()) {
            return before.get().plan();
        }
        if ((given == null) == planId.isEmpty()) {
            throw refused("Give either \"plan\" or \"planId\".");
        }
        if (given == null) {
            return plans.find(planId).map(BookPlan::plan).map(plan -> plan.orHeldAt(home))
                    .orElseThrow(() -> refused("There is no plan \"" + planId
                    + "\"; there are " + plans.all().stream().map(BookPlan::id).collect(Collectors.joining(", "))
                    + "."));
        }
        PlanReading reading = PlanFile.read(given);
        return reading.ifSound().orElseThrow(() -> new Refused(Problem.unsound(reading.problems())));
    }

    private <E extends Enum<E>> E choice(String field, Class<E> type, E otherwise) {
        String word = Bodies.text(body, field, 40);
        return word.isEmpty() ? otherwise : Words.constant(type, word).orElseThrow(() -> refused("\"" + field
                + "\" must be one of " + Words.quoted(Words.all(type)) + "."));
    }

    private Optional<Instant> startsAt(Instant now) {
        String text = Bodies.text(body, "startsAt", 40);
        String begins = Bodies.text(body, "begins", 40);
        if (text.isEmpty() && begins.isEmpty()) {
            return Optional.empty();
        }
        Instant at = text.isEmpty() ? ofTheRoom("begins", begins) : time("startsAt", text);
        if (at.isBefore(now.minus(LONGEST_AGO)) || at.isAfter(now.plus(LONGEST_AHEAD))) {
            throw refused("\"startsAt\" is too far away: " + text + begins + ".");
        }
        return Optional.of(at);
    }

    /** A time of day is the first after the beginning; a whole night later it was meant to be before it. */
    private Optional<Instant> promisedEnd(Instant startsAt) {
        String text = Bodies.text(body, "promisedEnd", 40);
        String ends = Bodies.text(body, "ends", 5);
        if (!text.isEmpty() || ends.isEmpty()) {
            return text.isEmpty() ? Optional.empty() : Optional.of(time("promisedEnd", text));
        }
        LocalDateTime begins = startsAt.atZone(zone).toLocalDateTime();
        Instant end = ofTheRoom("ends", begins.toLocalDate() + "T" + ends);
        if (end.isAfter(startsAt)) {
            return Optional.of(end);
        }
        Instant past = ofTheRoom("ends", begins.toLocalDate().plusDays(1) + "T" + ends);
        if (Duration.between(startsAt, past).compareTo(LONGEST_PAST_MIDNIGHT) > 0) {
            throw refused("The promised end, " + ends + ", is not after the beginning.");
        }
        return Optional.of(past);
    }

    private static Instant time(String field, String text) {
        try {
            return OffsetDateTime.parse(text).toInstant().truncatedTo(ChronoUnit.MILLIS);
        } catch (DateTimeException e) {
            throw refused("\"" + field + "\" must be a time such as 2027-03-04T18:30:00Z.");
        }
    }

    private Instant ofTheRoom(String field, String text) {
        try {
            return LocalDateTime.parse(text).atZone(zone).toInstant();
        } catch (DateTimeException e) {
            throw refused("\"" + field + "\" must be a time of the room's clock, such as "
                    + (field.equals("begins") ? "2027-03-04T18:30." : "20:45."));
        }
    }

    // ---- the seats

    private Map<Integer, Place> places(Plan plan) {
        Map<Integer, Place> there = has("roster") ? Map.of() : there(plan);
        if (!there.isEmpty() && !has("seats") && !has("names")) {
            return there;
        }
        Map<Integer, Place> places = new TreeMap<>();
        int seats = seats(plan);
        for (int seat = 1; seat <= seats; seat++) {
            Place place = there.getOrDefault(seat, new Place(new SeatNumber(seat), ""));
            places.put(seat, !has("names") ? place : new Place(place.seat(), name(seat, seats), place.party(),
                    place.candle(), place.note()));
        }
        roster(plan, places, seats);
        return places;
    }

    /** Those who are to come already, by seat; none for a new class. A candle that the plan has not is let go. */
    private Map<Integer, Place> there(Plan plan) {
        Map<Integer, Place> there = new TreeMap<>();
        before.map(Setup::seats).orElse(List.of()).forEach(place -> there.put(place.seat().value(),
                new Place(place.seat(), place.name(), place.party(),
                        place.candle().filter(candle -> plan.candle(candle).isPresent()), place.note())));
        return there;
    }

    private int seats(Plan plan) {
        JsonNode seats = body.get("seats");
        if (seats == null || seats.isNull()) {
            return before.map(b -> b.seats().stream().mapToInt(p -> p.seat().value()).max().orElseThrow())
                    .orElse(plan.usualSeats());
        }
        if (!seats.isIntegralNumber() || !seats.canConvertToInt() || seats.intValue() < 1
                || seats.intValue() > SeatNumber.MOST) {
            throw refused("\"seats\" must be a whole number from 1 to " + SeatNumber.MOST + ".");
        }
        return seats.intValue();
    }

    /** {@code "names": ["Ada", ""]}: first names in seat order, those that want theirs shown. */
    private String name(int seat, int seats) {
        JsonNode names = body.get("names");
        if (names == null || names.isNull()) {
            return "";
        }
        if (!names.isArray()) {
            throw refused("\"names\" must be a list of texts.");
        }
        requireRoom("names reach", names.size(), seats);
        JsonNode name = names.get(seat - 1);
        return name == null ? "" : line("name", name, EventJson.LONGEST_NAME, seat);
    }

    private static void requireRoom(String what, int to, int seats) {
        if (to > seats) {
            throw refused("The " + what + " to seat " + to + ", but there "
                    + (seats == 1 ? "is 1 seat" : "are " + seats + " seats") + ". Add seats or leave names out.");
        }
    }

    private static String line(String what, JsonNode text, int most, int seat) {
        if (!Bodies.isLine(text, most)) {
            boolean tooLong = text.isTextual() && text.textValue().length() > most;
            throw refused("The " + what + " for seat " + seat + (tooLong ? " is too long: at most " + most
                    + " characters" + (what.equals("name") ? ", a first name is enough." : ".")
                    : " must be text on one line."));
        }
        return text.textValue().strip();
    }

    /** {@code "roster": [{"seat": 3, "name": "", "party": "", "candle": "", "note": ""}]}. */
    private void roster(Plan plan, Map<Integer, Place> places, int seats) {
        JsonNode roster = body.path("roster");
        if (roster.isMissingNode() || roster.isNull()) {
            return;
        }
        if (!roster.isArray()) {
            throw refused("\"roster\" must be a list.");
        }
        Map<Integer, Place> seen = new TreeMap<>();
        for (JsonNode row : roster) {
            JsonNode number = row.path("seat");
            if (!number.isInt() || number.intValue() < 1 || number.intValue() > SeatNumber.MOST) {
                throw refused("A seat of the roster must be a whole number from 1 to " + SeatNumber.MOST + ".");
            }
            int seat = number.intValue();
            requireRoom("roster reaches", seat, seats);
            String candle = text(row, "candle", EventJson.LONGEST_CANDLE, seat);
            if (!candle.isEmpty() && plan.candle(candle).isEmpty()) {
                throw refused("The plan has no candle \"" + candle + "\" for seat " + seat + ".");
            }
            Place place = new Place(new SeatNumber(seat), text(row, "name", EventJson.LONGEST_NAME, seat),
                    text(row, "party", EventJson.LONGEST_PARTY, seat),
                    candle.isEmpty() ? Optional.empty() : Optional.of(candle),
                    text(row, "note", EventJson.LONGEST_MIND, seat));
            if (seen.put(seat, place) != null) {
                throw refused("The roster names seat " + seat + " a second time.");
            }
        }
        places.putAll(seen);
    }

    private static String text(JsonNode row, String field, int most, int seat) {
        return row.hasNonNull(field) ? line(field, row.get(field), most, seat) : "";
    }
}
