package benchpace.web;

import benchpace.files.Json;
import benchpace.plan.Plan;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/**
 * One thing somebody taps, of every kind there is, told by numbers that mean something in whatever class it is made: so
 * that most are accepted, and what fails shrinks to few.
 *
 * @param type  of the command
 * @param seat  from 0, counted round the table
 * @param what  which step, activity, candle, or earlier tap is meant; or a time or temperature
 * @param pause seconds before it
 */
record AnyMove(String type, int seat, int what, int pause) {
    private static final List<String> ONCE_IN_A_WHILE = List.of("undo", "correct-time", "correct-seat", "pause",
            "resume", "expect", "arrive", "leave", "pair", "unpair", "poured-again", "note", "read-temperature",
            "choose-candle", "read-room", "read-pour", "judge-skin", "claim", "sorted", "still-at-it",
            "guest-done", "guests-may-tell", "close-activity", "extend-activity", "skip-activity", "join-activity",
            "quit-activity", "close");

    static Arbitrary<AnyMove> moves() {
        Arbitrary<String> types = Arbitraries.frequencyOf(
                Tuple.of(30, Arbitraries.of(ONCE_IN_A_WHILE)), Tuple.of(10, Arbitraries.of("finish-step")),
                Tuple.of(4, Arbitraries.of("open-step", "judge-set", "move-activity", "open-activity")));
        return Combinators.combine(types, Arbitraries.integers().between(0, 7), Arbitraries.integers().between(0, 200),
                Arbitraries.frequencyOf(Tuple.of(4, Arbitraries.integers().between(0, 200)),
                        Tuple.of(1, Arbitraries.integers().between(0, 4000)))).as(AnyMove::new);
    }

    /** @param last the number of the class's last event */
    ObjectNode command(Plan plan, int seats, long last, Instant now) {
        ObjectNode command = TestBoard.command(type);
        int at = 1 + seat % seats;
        switch (type) {
            case "undo" -> command.put("seq", earlier(last));
            case "correct-time" -> command.put("seq", earlier(last)).put("to", minutesFrom(now, what - 150));
            case "correct-seat" -> command.put("seq", earlier(last)).put("to", at);
            case "open-step" -> command.put("step", step(plan));
            case "finish-step", "still-at-it", "guest-done" -> command.put("seat", at).put("step", step(plan));
            case "arrive" -> command.put("seat", at).put("name", what % 2 == 0 ? "" : "Ada");
            case "pair" -> command.put("seat", at).put("with", 1 + what % seats);
            case "note" -> command.put("seat", at).put("text", "two wicks");
            case "read-temperature" -> command.put("seat", at).put("celsius", 20 + what % 50);
            case "choose-candle" -> command.put("seat", at).put("candle", candle(plan));
            case "read-room" -> command.put("celsius", 12 + what % 20);
            case "read-pour" -> command.put("celsius", 50 + what % 40);
            case "claim", "sorted" -> command.put("seat", at).put("helper", "MO");
            case "guests-may-tell" -> command.put("on", what % 3 > 0);
            case "move-activity" -> command.put("activity", activity(plan)).put("to", minutesFrom(now, what));
            case "extend-activity" -> command.put("activity", activity(plan)).put("minutes", 1 + what % 60);
            case "open-activity", "close-activity", "skip-activity" -> command.put("activity", activity(plan));
            case "join-activity", "quit-activity" -> command.put("seat", at).put("activity", activity(plan));
            case "close" -> { }
            default -> command.put("seat", at);
        }
        return command;
    }

    private long earlier(long last) {
        return Math.max(1, last - what % 12);
    }

    private static String minutesFrom(Instant now, int minutes) {
        return now.plusSeconds(60L * minutes).toString();
    }

    private String step(Plan plan) {
        return plan.steps().get(what % plan.steps().size()).id().value();
    }

    private String activity(Plan plan) {
        return plan.activities().isEmpty() ? "dance"
                : plan.activities().get(what % plan.activities().size()).id().value();
    }

    private String candle(Plan plan) {
        return plan.candles().isEmpty() ? "none" : plan.candles().get(what % plan.candles().size()).id();
    }

    @Override public String toString() {
        return Json.text(Json.object().put("type", type).put("seat", seat).put("what", what).put("pause", pause));
    }
}
