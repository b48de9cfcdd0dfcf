package benchpace.files;

import benchpace.plan.SeatNumber;
import benchpace.shelf.Claim;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.EntryId;
import benchpace.shelf.ShelfArrangement;
import benchpace.shelf.ShelfEvent;
import benchpace.shelf.ShelfLayout;
import benchpace.shelf.ShelfPlace;
import benchpace.shelf.ShelfSettings;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Events of the pickup shelf and its arrangement as JSON. The types and fields of events are a promise to old files:
 * none is ever renamed or dropped.
 */
public final class ShelfJson {
    private static final int MOST_BOARDS = 40;
    private static final int LONGEST_MINUTES = 7 * 24 * 60;
    private static final int LONGEST_DAYS = 365;

    private ShelfJson() { }

    /** The name of an event's type, {@code put}. */
    public static String type(ShelfEvent event) {
        if (event instanceof ShelfEvent.Placed) {
            return "put";
        } else if (event instanceof ShelfEvent.Collected) {
            return "collect";
        } else if (event instanceof ShelfEvent.CollectionUndone) {
            return "undo-collect";
        } else if (event instanceof ShelfEvent.Moved) {
            return "move";
        } else if (event instanceof ShelfEvent.TakenBack) {
            return "take-back";
        } else if (event instanceof ShelfEvent.PutBack) {
            return "put-back";
        }
        return "erase";
    }

    /** What the event says, without its type, candle and time. An erased claim and an empty name are left out. */
    public static ObjectNode fields(ShelfEvent event) {
        ObjectNode fields = Json.object();
        if (event instanceof ShelfEvent.Placed e) {
            fields.put("classId", e.classId()).put("seat", e.seat().value());
            place(fields, e.place());
            fields.put("readyFrom", e.readyFrom().toString()).put("collectBy", e.collectBy().toString());
            if (e.claim() instanceof ClaimWord word) {
                fields.put("claim", word.toString());
            }
            if (!e.name().isEmpty()) {
                fields.put("name", e.name());
            }
        } else if (event instanceof ShelfEvent.CollectionUndone e) {
            place(fields, e.place());
        } else if (event instanceof ShelfEvent.Moved e) {
            place(fields, e.to());
        } else if (event instanceof ShelfEvent.PutBack e) {
            place(fields, e.place());
        }
        return fields;
    }

    private static void place(ObjectNode fields, ShelfPlace place) {
        fields.put("shelf", place.shelf()).put("place", place.number());
    }

    /** @throws BadField if that is no event; nothing else is thrown */
    public static ShelfEvent read(String type, long entry, Instant at, JsonNode node) {
        Fields fields = new Fields(node, "", problem -> {
            throw BadField.of(problem);
        });
        EntryId id = new EntryId(entry);
        return switch (type) {
            case "put" -> new ShelfEvent.Placed(id, at, fields.text("classId").orElseThrow(),
                    new SeatNumber(fields.whole("seat", 1, SeatNumber.MOST).orElseThrow().intValue()), place(fields),
                    fields.instant("readyFrom").orElseThrow(), fields.instant("collectBy").orElseThrow(),
                    claim(fields), fields.line("name", 0, 60).orElseThrow());
            case "collect" -> new ShelfEvent.Collected(id, at);
            case "undo-collect" -> new ShelfEvent.CollectionUndone(id, at, place(fields));
            case "move" -> new ShelfEvent.Moved(id, at, place(fields));
            case "take-back" -> new ShelfEvent.TakenBack(id, at);
            case "put-back" -> new ShelfEvent.PutBack(id, at, place(fields));
            case "erase" -> new ShelfEvent.Erased(id, at);
            default -> throw new BadField("type", "is no event of the shelf: " + type);
        };
    }

    /** Where a candle stood after an event that {@link #read} refuses, if that much of it can be read. */
    public static Optional<ShelfPlace> placeIn(JsonNode node) {
        try {
            return Optional.of(place(new Fields(node, "", problem -> {
                throw BadField.of(problem);
            })));
        } catch (BadField none) {
            return Optional.empty();
        }
    }

    private static ShelfPlace place(Fields fields) {
        return new ShelfPlace(fields.line("shelf", 1, 30).orElseThrow(),
                fields.whole("place", 1, 200).orElseThrow().intValue());
    }

    private static Claim claim(Fields fields) {
        String text = fields.text("claim", "").orElseThrow();
        return text.isEmpty() ? new Claim.Erased() : ClaimWord.read(text)
                .orElseThrow(() -> new BadField("claim", "is no claim word: a word and two digits"));
    }

    // ---- the arrangement

    public static ObjectNode arrangement(ShelfArrangement arrangement) {
        ObjectNode node = Json.object();
        ArrayNode shelves = node.putArray("shelves");
        arrangement.layout().boards().forEach(b -> shelves.addObject().put("name", b.name()).put("places", b.places()));
        ShelfSettings settings = arrangement.settings();
        return node.put("readyMarginMinutes", settings.readyMargin().toMinutes())
                .put("collectWithinDays", settings.collectWithin().toDays())
                .put("eraseAfterDays", settings.eraseAfter().toDays());
    }

    /** @throws BadField in one sentence if that is no arrangement; nothing else is thrown */
    public static ShelfArrangement readArrangement(JsonNode node) {
        Fields fields = new Fields(node, "", problem -> {
            throw BadField.of(problem);
        });
        JsonNode shelves = node.get("shelves");
        if (shelves == null || !shelves.isArray() || shelves.isEmpty() || shelves.size() > MOST_BOARDS) {
            throw new BadField("shelves", "must be a list of 1 to " + MOST_BOARDS + " shelves");
        }
        List<ShelfLayout.Board> boards = new ArrayList<>();
        for (JsonNode shelf : shelves) {
            Fields board = new Fields(shelf, "/shelves/" + boards.size(), problem -> {
                throw BadField.of(problem);
            });
            boards.add(new ShelfLayout.Board(board.line("name", 1, 30).orElseThrow().strip(),
                    board.whole("places", 1, 200).orElseThrow().intValue()));
        }
        try {
            return new ShelfArrangement(new ShelfLayout(boards), new ShelfSettings(
                    Duration.ofMinutes(whole(fields, "readyMarginMinutes", 0, LONGEST_MINUTES)),
                    Duration.ofDays(whole(fields, "collectWithinDays", 1, LONGEST_DAYS)),
                    Duration.ofDays(whole(fields, "eraseAfterDays", 0, LONGEST_DAYS))));
        } catch (IllegalArgumentException e) {
            throw new BadField("shelves", "cannot be: " + e.getMessage());
        }
    }

    private static long whole(Fields fields, String field, int least, int most) {
        Optional<Long> value = fields.whole(field, least, most);
        return value.orElseThrow();
    }
}
