package benchpace.simulation;

import benchpace.files.Json;
import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.plan.Activity;
import benchpace.plan.Plan;
import benchpace.plan.Step;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.Instant;
import java.util.Random;

/** Everything that can be wished for in a class, sensible and not; most of it names things the class has. */
final class AnyWish {
    private final Random random;
    private final Plan plan;
    private final int seats;
    private int commands;

    AnyWish(Random random, Setting setting) {
        this.random = random;
        this.plan = setting.plan();
        this.seats = setting.seats();
    }

    ObjectNode command(String type) {
        commands++;
        return Lots.command("c" + commands, type);
    }

    private ObjectNode atSeat(String type) {
        return command(type).put("seat", seat());
    }

    /** By the shelf; two guests may want one place, and a place may not be there. */
    Act.Leave leave() {
        commands++;
        return new Act.Leave(seat(), Json.object().put("commandId", "l" + commands).put("shelf", "Upper")
                .put("place", 1 + random.nextInt(5)).put("name", Lots.of(random, "", "Io")));
    }

    private int seat() {
        return random.nextInt(20) == 0 ? seats + 1 : 1 + random.nextInt(seats);
    }

    private String step() {
        Step step = plan.steps().get(random.nextInt(plan.steps().size()));
        return random.nextInt(20) == 0 ? "glaze" : step.id().value();
    }

    private String activity() {
        return plan.activities().isEmpty() || random.nextInt(20) == 0 ? "dance"
                : Lots.of(random, plan.activities().toArray(Activity[]::new)).id().value();
    }

    private long seq(LiveClass live) {
        long back = random.nextInt(3) == 0 ? random.nextInt((int) live.seq() + 1) : random.nextInt(6);
        return Math.max(1, live.seq() - back);
    }

    private Instant around(Instant now, int fromMinutes, int toMinutes) {
        return now.plusSeconds(60L * fromMinutes + random.nextInt(60 * (toMinutes - fromMinutes)));
    }

    /** Anything at all. */
    ObjectNode any(LiveClass live, Instant now) {
        return switch (random.nextInt(19)) {
            case 0, 1 -> corrections(live, now);
            case 2 -> command("undo").put("seq", seq(live));
            case 3 -> atSeat("arrive").put("name", Lots.of(random, "", "Ada", "<i>", "Null"));
            case 4 -> atSeat(Lots.of(random, "expect", "leave", "leave"));
            case 5 -> random.nextBoolean() ? atSeat("pair").put("with", seat()) : atSeat("unpair");
            case 6, 7 -> atSeat(Lots.of(random, "pause", "resume"));
            case 8 -> random.nextBoolean() ? atSeat("note").put("text", "two wicks") : command("note")
                    .put("text", "a draught");
            case 9 -> atSeat(Lots.of(random, "claim", "claim", "sorted")).put("helper", Lots.of(random, "MO", "AB"));
            case 10 -> atSeat(Lots.of(random, "still-at-it", "guest-done")).put("step", step());
            case 11 -> command("guests-may-tell").put("on", random.nextInt(3) > 0);
            case 12 -> command("open-step").put("step", step());
            case 13, 14 -> atSeat("finish-step").put("step", step());
            case 15 -> atSeat("choose-candle").put("candle", plan.candles().isEmpty() ? "none"
                    : plan.candles().get(random.nextInt(plan.candles().size())).id());
            case 18 -> theSeats();
            case 16 -> random.nextInt(8) == 0 ? command("close") : activities(now);
            default -> activities(now);
        };
    }

    /** Places added and taken away, and guests that were written down wrongly. */
    private ObjectNode theSeats() {
        return switch (random.nextInt(3)) {
            case 0 -> command("add-seat").put("seat", 1 + random.nextInt(seats + 2)).put("name", "Io")
                    .put("party", "choir").put("note", Lots.of(random, "", "no nuts"));
            case 1 -> atSeat("take-away-seat");
            default -> atSeat("correct-guest").put("name", Lots.of(random, "", "Bo")).put("party", "")
                    .put("note", Lots.of(random, "", "no nuts"));
        };
    }

    private ObjectNode corrections(LiveClass live, Instant now) {
        return random.nextBoolean()
                ? command("correct-time").put("seq", seq(live)).put("to", around(now, -60, 2).toString())
                : command("correct-seat").put("seq", seq(live)).put("to", seat());
    }

    private ObjectNode activities(Instant now) {
        ObjectNode command = switch (random.nextInt(8)) {
            case 0, 1 -> command("open-activity");
            case 2 -> command("close-activity");
            case 3 -> command("extend-activity").put("minutes", 1 + random.nextInt(60));
            case 4 -> command("move-activity").put("to", around(now, -1, random.nextInt(4) == 0 ? 720 : 90).toString());
            case 5 -> command("skip-activity");
            case 6 -> atSeat("join-activity");
            default -> atSeat("quit-activity");
        };
        return command.put("activity", activity());
    }

    /** What is done while a seat's candle sets, more or less at its time. */
    ObjectNode curing(LiveClass live, Seat seat, Duration poured, Instant now) {
        int number = seat.number().value();
        long minutes = poured.toMinutes();
        if (minutes > 35 && random.nextInt(3) > 0 || random.nextInt(25) == 0) {
            return command("judge-set").put("seat", number);
        }
        return switch (random.nextInt(9)) {
            case 0 -> command("read-temperature").put("seat", number).put("celsius", 21 + random.nextInt(45));
            case 1 -> random.nextBoolean() ? command("read-room").put("celsius", 15 + random.nextInt(15))
                    : command("read-pour").put("celsius", 50 + random.nextInt(30));
            case 2 -> command("judge-skin").put("seat", number);
            case 3 -> random.nextInt(3) == 0 ? command("poured-again").put("seat", number) : activities(now);
            case 4 -> random.nextInt(3) == 0 ? command("leave").put("seat", number) : activities(now);
            case 5 -> any(live, now);
            default -> activities(now);
        };
    }
}
