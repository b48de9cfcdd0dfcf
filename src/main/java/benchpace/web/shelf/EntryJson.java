package benchpace.web.shelf;

import benchpace.files.Json;
import benchpace.files.Words;
import benchpace.shelf.ShelfEntry;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.function.UnaryOperator;

/** A candle on the shelf as JSON. */
final class EntryJson {
    private EntryJson() { }

    /** @param className names a class by its id */
    static ObjectNode of(ShelfEntry e, Instant now, UnaryOperator<String> className) {
        return Json.object().put("id", e.id().value()).put("classId", e.classId())
                .put("className", className.apply(e.classId())).put("seat", e.seat().value())
                .put("shelf", e.place().shelf()).put("place", e.place().number())
                .put("status", Words.of(e.status(now))).put("readyFrom", e.readyFrom().toString())
                .put("collectBy", e.collectBy().toString())
                .put("claim", e.claimWord().map(Object::toString).orElse(null)).put("name", e.name())
                .put("leftAt", e.leftAt().toString())
                .put("collectedAt", e.collected() ? e.collectedAt().toString() : null)
                .put("tag", "/shelf/tags?ids=" + e.id());
    }
}
