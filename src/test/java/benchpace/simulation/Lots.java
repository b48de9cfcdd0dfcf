package benchpace.simulation;

import benchpace.files.Json;
import benchpace.files.plan.PlanFile;
import benchpace.files.plan.PlanReading;
import benchpace.plan.Plan;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** Draws how a class is held from a seed: plan, table, place and night. */
final class Lots {
    private static final List<Plan> PLANS = Stream.of("evening-pour", "big-table", "table-of-six", "two-wick-bowl")
            .map(Lots::plan).toList();
    private static final int[] TABLES = {1, 1, 2, 2, 3, 3, 4, 4, 5, 6, 6, 8, 8, 10, 12};

    private Lots() { }

    private static Plan plan(String name) {
        try {
            return PlanFile.read(Path.of("demo-data/plans/" + name + ".json")).ifSound().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Setting setting(Random random) {
        Plan plan = random.nextInt(3) == 0 ? PLANS.get(random.nextInt(PLANS.size())) : varied(random);
        boolean waits = !plan.activities().isEmpty();
        int seats = random.nextInt(60) == 0 ? 13 + random.nextInt(waits ? 12 : 48)
                : TABLES[random.nextInt(waits ? TABLES.length - 3 : TABLES.length)];
        ZoneId zone = ZoneId.of(of(random, "Europe/Berlin", "Europe/Berlin", "Australia/Lord_Howe", "Asia/Kathmandu",
                "America/St_Johns", "UTC"));
        Instant now = night(random, zone).truncatedTo(java.time.temporal.ChronoUnit.MILLIS);
        Instant startsAt = now.plusSeconds(switch (random.nextInt(5)) {
            case 0 -> random.nextInt(5_400) - 1_800;
            case 1 -> random.nextInt(900);
            default -> 0;
        });
        return new Setting(plan, seats, now, startsAt, zone, random.nextBoolean(), random.nextInt(12) == 0);
    }

    /** Any evening; one in four is within hours of a change of the clocks, where the zone has any. */
    private static Instant night(Random random, ZoneId zone) {
        Instant any = Instant.parse("2027-01-01T00:00:00Z").plusSeconds(random.nextInt(365 * 86_400));
        if (random.nextInt(4) > 0 || zone.getRules().isFixedOffset()) {
            return any;
        }
        return java.util.Optional.ofNullable(zone.getRules().nextTransition(any)).map(t -> t.getInstant()
                .minus(Duration.ofMinutes(random.nextInt(240)))).orElse(any);
    }

    /** One of ours with steps and activities left out, opened otherwise, and longer or shorter; sound all the same. */
    private static Plan varied(Random random) {
        while (true) {
            ObjectNode plan = PlanFile.write(PLANS.get(random.nextInt(PLANS.size())));
            boolean waits = random.nextInt(3) > 0;
            thin((ArrayNode) plan.get("steps"), random, 4);
            thin((ArrayNode) plan.get("activities"), random, waits ? 2 : 0);
            thin((ArrayNode) plan.get("candles"), random, random.nextInt(3));
            plan.get("steps").forEach(step -> vary((ObjectNode) step, random));
            plan.get("activities").forEach(activity -> varyActivity((ObjectNode) activity, random));
            PlanReading reading = PlanFile.read(plan);
            if (reading.ifSound().isPresent()) {
                return reading.ifSound().get();
            }
        }
    }

    /** Leaves each out with one chance in {@code keep}; all of them if that is 0. */
    private static void thin(ArrayNode list, Random random, int keep) {
        for (int i = list.size() - 1; i >= 0; i--) {
            String kind = list.get(i).path("kind").asText();
            if (!kind.equals("pour") && !kind.equals("cure") && (keep == 0 || random.nextInt(keep) == 0)) {
                list.remove(i);
            }
        }
    }

    private static void vary(ObjectNode step, Random random) {
        if (random.nextInt(3) == 0) {
            step.put("opening", step.get("kind").asText().equals("cure") ? "free" : of(random, "led", "free"));
        }
        if (random.nextInt(3) == 0) {
            double minutes = step.get("kind").asText().equals("cure") ? 20 + random.nextInt(80)
                    : 1 + random.nextInt(15);
            step.put("minutes", minutes);
        }
    }

    private static void varyActivity(ObjectNode activity, Random random) {
        if (random.nextInt(3) == 0) {
            activity.put("places", 1 + random.nextInt(12));
        }
        if (random.nextInt(3) == 0) {
            int typical = 1 + random.nextInt(25);
            activity.put("typicalMinutes", typical).put("longestMinutes", typical + random.nextInt(10));
        }
        if (random.nextInt(4) == 0) {
            activity.put("interruptible", random.nextBoolean());
        }
        if (random.nextInt(5) == 0) {
            activity.put("audience", of(random, "own-pace", "whole-class"));
        }
    }

    @SafeVarargs static <T> T of(Random random, T... some) {
        return some[random.nextInt(some.length)];
    }

    static ObjectNode command(String id, String type) {
        return Json.object().put("commandId", id).put("type", type);
    }
}
