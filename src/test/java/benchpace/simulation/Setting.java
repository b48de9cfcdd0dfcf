package benchpace.simulation;

import benchpace.files.Json;
import benchpace.files.plan.PlanFile;
import benchpace.plan.Plan;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.ZoneId;

/**
 * Where and how a simulated class is held.
 *
 * @param now      what the computer's clock says when the class is set up
 * @param computed the cure is computed, else the plan's figure
 * @param onDisk   the board is behind its real server and its log in a real database, else both are in memory
 */
record Setting(Plan plan, int seats, Instant now, Instant startsAt, ZoneId zone, boolean computed, boolean onDisk) {

    ObjectNode line() {
        return Json.object().put("seats", seats).put("now", now.toString()).put("startsAt", startsAt.toString())
                .put("zone", zone.getId()).put("computed", computed).put("onDisk", onDisk)
                .set("plan", PlanFile.write(plan));
    }

    static Setting read(JsonNode line) {
        return new Setting(PlanFile.read(line.get("plan")).ifSound().orElseThrow(), line.get("seats").intValue(),
                Instant.parse(line.get("now").textValue()), Instant.parse(line.get("startsAt").textValue()),
                ZoneId.of(line.get("zone").textValue()), line.get("computed").booleanValue(),
                line.get("onDisk").booleanValue());
    }
}
