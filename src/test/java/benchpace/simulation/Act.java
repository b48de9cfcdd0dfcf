package benchpace.simulation;

import benchpace.board.time.ClockChoice;
import benchpace.files.Json;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;

/** One thing that happens to a board, written on a line and read back, so that a failing class is a text. */
sealed interface Act {

    /** Time goes by, on the wall and on the board. */
    record Pass(Duration by) implements Act { }

    /** Somebody sets the computer's clock; it goes on from there. */
    record Jump(Duration by) implements Act { }

    /** The computer sleeps with its lid closed: its clocks go on, and nothing else does. */
    record Sleep(Duration by) implements Act { }

    /** Somebody says which clock is right; nothing happens where the board does not ask. */
    record Choose(ClockChoice clock) implements Act { }

    /**
     * A request arrives at the board, the first time or again.
     *
     * @param device  the mark of the device that sends it
     * @param by      a role, or a helper's initials
     * @param command as the device says it
     */
    record Send(String device, String by, ObjectNode command) implements Act { }

    /** A guest leaves before the candle is set, and it goes to the shelf. @param wish as a device says it */
    record Leave(int seat, ObjectNode wish) implements Act { }

    /** The program is stopped anywhere and started again. */
    record Restart() implements Act { }

    /** Every screen of everybody is looked at. */
    record Look() implements Act { }

    default ObjectNode line() {
        if (this instanceof Pass pass) {
            return Json.object().put("pass", pass.by.toString());
        }
        if (this instanceof Jump jump) {
            return Json.object().put("jump", jump.by.toString());
        }
        if (this instanceof Sleep sleep) {
            return Json.object().put("sleep", sleep.by.toString());
        }
        if (this instanceof Send send) {
            return Json.object().put("device", send.device).put("by", send.by).set("send", send.command);
        }
        if (this instanceof Choose choose) {
            return Json.object().put("choose", choose.clock.name());
        }
        if (this instanceof Leave leave) {
            return Json.object().put("seat", leave.seat).set("leave", leave.wish);
        }
        return Json.object().put("do", this instanceof Restart ? "restart" : "look");
    }

    static Act read(JsonNode line) {
        if (line.has("pass")) {
            return new Pass(Duration.parse(line.get("pass").textValue()));
        }
        if (line.has("jump")) {
            return new Jump(Duration.parse(line.get("jump").textValue()));
        }
        if (line.has("sleep")) {
            return new Sleep(Duration.parse(line.get("sleep").textValue()));
        }
        if (line.has("send")) {
            return new Send(line.get("device").textValue(), line.get("by").textValue(),
                    (ObjectNode) line.get("send"));
        }
        if (line.has("choose")) {
            return new Choose(ClockChoice.valueOf(line.get("choose").textValue()));
        }
        if (line.has("leave")) {
            return new Leave(line.get("seat").intValue(), (ObjectNode) line.get("leave"));
        }
        return line.get("do").textValue().equals("restart") ? new Restart() : new Look();
    }
}
