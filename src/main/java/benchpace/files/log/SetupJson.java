package benchpace.files.log;

import benchpace.files.Fields;
import benchpace.files.Words;
import benchpace.files.plan.PlanFile;
import benchpace.live.ClassEvent.Place;
import benchpace.live.Setup;
import benchpace.plan.Numbering;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** How a class is set up, as JSON. What nobody said is left out, as it was before there was a way to say it. */
final class SetupJson {
    private SetupJson() { }

    static void write(Setup setup, ObjectNode into) {
        into.put("name", setup.name()).put("startsAt", setup.startsAt().toString());
        setup.promisedEnd().ifPresent(end -> into.put("promisedEnd", end.toString()));
        into.set("plan", PlanFile.write(setup.plan()));
        if (setup.numbering() != Numbering.CLOCKWISE_FROM_LEFT) {
            into.put("numbering", Words.of(setup.numbering()));
        }
        ArrayNode seats = into.putArray("seats");
        setup.seats().forEach(place -> write(place, seats.addObject()));
    }

    static ObjectNode write(Place place, ObjectNode into) {
        write(place.seat(), place.name(), place.party(), place.note(), into);
        place.candle().ifPresent(candle -> into.put("candle", candle));
        return into;
    }

    static ObjectNode write(SeatNumber seat, String name, String party, String note, ObjectNode into) {
        into.put("seat", seat.value()).put("name", name);
        if (!party.isEmpty()) {
            into.put("party", party);
        }
        if (!note.isEmpty()) {
            into.put("note", note);
        }
        return into;
    }

    static Setup read(Fields fields) {
        String name = fields.line("name", 1, 80).orElseThrow();
        Instant startsAt = fields.instant("startsAt").orElseThrow();
        Optional<Instant> promisedEnd = fields.has("promisedEnd") ? fields.instant("promisedEnd") : Optional.empty();
        Numbering numbering = fields.choice("numbering", Numbering.class, Numbering.CLOCKWISE_FROM_LEFT).orElseThrow();
        Plan plan = fields.tree("plan", KnownPlans::read).orElseThrow();
        List<Place> places = new ArrayList<>();
        Set<SeatNumber> taken = new HashSet<>();
        fields.eachObject("seats", 1, SeatNumber.MOST, f -> {
            Place place = place(f);
            if (!taken.add(place.seat())) {
                f.tell("seat", "names seat " + place.seat() + " a second time");
            }
            places.add(place);
        });
        try {
            return new Setup(plan, name, startsAt, promisedEnd, numbering, places);
        } catch (IllegalArgumentException wrong) {
            fields.tell("", wrong.getMessage());
            throw wrong;
        }
    }

    /** A place at the table, and who is to sit there. */
    static Place place(Fields fields) {
        SeatNumber seat = EventReader.seat(fields, "seat");
        String candle = fields.line("candle", 0, EventJson.LONGEST_CANDLE).orElseThrow();
        return new Place(seat, fields.line("name", 0, EventJson.LONGEST_NAME).orElseThrow(),
                fields.line("party", 0, EventJson.LONGEST_PARTY).orElseThrow(),
                candle.isEmpty() ? Optional.empty() : Optional.of(candle),
                fields.line("note", 0, EventJson.LONGEST_MIND).orElseThrow());
    }
}
