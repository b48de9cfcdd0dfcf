package benchpace.web.setup;

import benchpace.board.Boards;
import benchpace.files.Formulae;
import benchpace.files.Json;
import benchpace.files.Words;
import benchpace.files.roster.Guest;
import benchpace.files.roster.GuestList;
import benchpace.files.roster.RosterText;
import benchpace.live.ClassEvent.Place;
import benchpace.plan.Numbering;
import benchpace.plan.PartySeating;
import benchpace.plan.SeatNumber;
import benchpace.plan.SeatingChart;
import benchpace.plan.TableShape;
import benchpace.web.pairing.Access;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.words.GuestWords;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads lists of guests, seats them, and draws the table they sit at: for the page on which a class is set up. */
public final class GuestsApi {
    private static final String HEADING = "seat,name,party,candle,note\r\n";

    private final Boards boards;
    private final Access access;

    public GuestsApi(Boards boards, Access access) {
        this.boards = boards;
        this.access = access;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/api/seating", this::seating);
        routes.post("/api/guests", this::guests);
        Reads.route(routes, "/classes/{id}/roster.csv", this::roster);
    }

    /** A place as the page's script and the setting up have it. */
    static ObjectNode write(Place place, ObjectNode into) {
        return into.put("seat", place.seat().value()).put("name", place.name()).put("party", place.party())
                .put("candle", place.candle().orElse("")).put("note", place.note());
    }

    private static <E extends Enum<E>> E choice(String field, String word, Class<E> type) {
        return Words.constant(type, word).orElseThrow(() -> new Refused(Problem.unprocessable("\"" + field
                + "\" must be one of " + Words.quoted(Words.all(type)) + ".")));
    }

    private static int seats(String text) {
        if (!text.matches("[0-9]{1,2}") || Integer.parseInt(text) < 1 || Integer.parseInt(text) > SeatNumber.MOST) {
            throw new Refused(Problem.unprocessable("\"seats\" must be a whole number from 1 to " + SeatNumber.MOST
                    + "."));
        }
        return Integer.parseInt(text);
    }

    private static String asked(Context ctx, String name, String otherwise) {
        return Optional.ofNullable(ctx.queryParam(name)).orElse(otherwise);
    }

    private void seating(Context ctx) {
        access.paired(ctx);
        SeatingChart chart = SeatingChart.of(
                choice("table", asked(ctx, "table", "long-table"), TableShape.class),
                seats(asked(ctx, "seats", "8")),
                choice("numbering", asked(ctx, "numbering", "clockwise-from-left"), Numbering.class));
        ObjectNode drawing = Json.object().put("columns", chart.columns()).put("rows", chart.rows());
        ArrayNode places = drawing.putArray("places");
        chart.places().forEach(cell -> places.addObject().put("column", cell.column()).put("row", cell.row()));
        ArrayNode tables = drawing.putArray("tables");
        chart.tables().forEach(block -> tables.addObject().put("column", block.column()).put("row", block.row())
                .put("columns", block.columns()).put("rows", block.rows()));
        Bodies.send(ctx, 200, drawing);
    }

    /** {@code {"text"|"base64","table","seats"}}: as it was pasted, or the bytes of a file. */
    private void guests(Context ctx) {
        access.instructor(ctx);
        JsonNode body = Bodies.object(ctx);
        int seats = seats(body.path("seats").asText(""));
        TableShape table = choice("table", body.path("table").asText(""), TableShape.class);
        GuestList list = GuestList.read(text(body));
        List<String> problems = new ArrayList<>(list.problems().stream().map(Object::toString).toList());
        List<Guest> fixed = list.guests().stream().filter(guest -> guest.seat().isPresent()).toList();
        List<Guest> free = list.guests().stream().filter(guest -> guest.seat().isEmpty()).toList();
        Set<Integer> taken = fixed.stream().map(guest -> guest.seat().get().value()).filter(seat -> seat <= seats)
                .collect(Collectors.toSet());
        PartySeating seating = PartySeating.of(SeatingChart.benches(table, seats), taken,
                free.stream().map(Guest::party).toList());
        ObjectNode answer = Json.object();
        ArrayNode placed = answer.putArray("guests");
        List<String> left = new ArrayList<>();
        for (Guest guest : fixed) {
            place(guest, guest.seat().filter(seat -> seat.value() <= seats), placed, left);
        }
        for (int i = 0; i < free.size(); i++) {
            place(free.get(i), seating.seats().get(i), placed, left);
        }
        ArrayNode told = answer.putArray("told");
        problems.forEach(problem -> told.add(sentence(problem)));
        List.of(GuestWords.left(left, seats), GuestWords.split(seating.split())).stream()
                .filter(words -> !words.isEmpty()).forEach(told::add);
        Bodies.send(ctx, 200, answer);
    }

    private static String sentence(String problem) {
        return (problem.startsWith("is ") ? "The list " : "") + (problem.startsWith("line ") ? "L"
                + problem.substring(1) : problem) + ".";
    }

    private static void place(Guest guest, Optional<SeatNumber> seat, ArrayNode placed, List<String> left) {
        if (seat.isEmpty()) {
            left.add(guest.name());
            return;
        }
        placed.addObject().put("seat", seat.get().value()).put("name", guest.name()).put("party", guest.party())
                .put("candle", guest.candle()).put("note", guest.note());
    }

    private static String text(JsonNode body) {
        if (body.path("text").isTextual()) {
            return body.get("text").textValue();
        }
        byte[] bytes;
        try {
            bytes = Base64.getDecoder().decode(body.path("base64").asText(""));
        } catch (IllegalArgumentException e) {
            throw new Refused(Problem.unprocessable("\"base64\" is not a file in base 64."));
        }
        return Optional.of(bytes).filter(b -> b.length <= RosterText.MOST_BYTES).flatMap(RosterText::of)
                .orElseThrow(() -> new Refused(Problem.unprocessable("This file is no list of guests: it must be text, "
                        + "such as a spreadsheet saved as CSV.")));
    }

    /** The guests as a file that reads back as it was, and that no spreadsheet takes for formulas. */
    private void roster(Context ctx) {
        access.instructor(ctx);
        StringBuilder csv = new StringBuilder("\uFEFF").append(HEADING);
        SetupApi.asItStands(AskedClass.of(ctx, boards).live()).seats().forEach(place -> csv
                .append(place.seat()).append(',').append(field(place.name())).append(',').append(field(place.party()))
                .append(',').append(field(place.candle().orElse(""))).append(',').append(field(place.note()))
                .append("\r\n"));
        ctx.contentType("text/csv; charset=utf-8").header("Content-Disposition", "attachment; filename=\"roster.csv\"")
                .result(csv.toString());
    }

    private static String field(String text) {
        String safe = Formulae.harmless(text);
        return safe.isEmpty() ? "" : "\"" + safe.replace("\"", "\"\"") + "\"";
    }
}
