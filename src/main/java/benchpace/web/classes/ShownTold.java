package benchpace.web.classes;

import benchpace.board.ClassBoard;
import benchpace.board.attempt.Faults;
import benchpace.files.Json;
import benchpace.files.StudioJson;
import benchpace.live.LiveClass;
import benchpace.web.screen.Screens;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.util.Map;

/** Which class is meant now and which run, as pages hear it: no more than the start page tells everybody. */
public final class ShownTold {
    private static final Logger LOG = System.getLogger(ShownTold.class.getName());
    /** The event by which a stream tells it. */
    private static final String PART = "shown";
    /** Classes begin seldom, and every screen is told with every tap. */
    private static final Duration HOLDS = Duration.ofSeconds(1);

    private final ShownClass shown;
    private final Screens screens;
    private final Faults faults = new Faults();
    private Map<String, String> last = Map.of();
    private long lastAt = System.nanoTime() - HOLDS.toNanos();

    public ShownTold(ShownClass shown, Screens screens) {
        this.shown = shown;
        this.screens = screens;
    }

    ShownClass.Choice choice() {
        return shown.now();
    }

    /** Names the class and whose room it is in, so that a wall shows either anew once it is another. */
    String mark(ShownClass.Choice choice) {
        return choice.mark() + " " + StudioJson.tag(choice.board()
                .map(board -> screens.headed(board.id(), board.live().plan().place()))
                .orElseGet(() -> screens.studioOf("")));
    }

    ObjectNode json() {
        ShownClass.Choice choice = choice();
        ObjectNode told = Json.object().put("mark", mark(choice))
                .put("studio", StudioJson.tag(screens.studioOf("")));
        choice.board().ifPresent(b -> told.set("class", named(b)));
        ArrayNode running = told.putArray("running");
        choice.running().forEach(b -> running.add(named(b)));
        return told;
    }

    /** The same as a part of a stream, where none holds markup but what a page is drawn with; up to a second old. */
    synchronized Map<String, String> part() {
        long now = System.nanoTime();
        if (now - lastAt >= HOLDS.toNanos()) {
            lastAt = now;
            try {
                last = Map.of(PART, Json.text(json()).replace("<", "\\u003c").replace(">", "\\u003e"));
            } catch (RuntimeException e) { // screens go on with their class; pages that hear nothing ask
                if (faults.isNew(PART, e)) {
                    LOG.log(Level.ERROR, "which class is meant cannot be told", e);
                }
            }
        }
        return last;
    }

    private static ObjectNode named(ClassBoard board) {
        LiveClass live = board.live();
        return Json.object().put("id", board.id()).put("name", live.name()).put("startsAt", live.startsAt().toString());
    }
}
