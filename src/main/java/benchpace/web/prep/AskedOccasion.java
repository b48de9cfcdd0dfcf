package benchpace.web.prep;

import benchpace.board.prep.Occasion;
import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.web.request.Problem;
import benchpace.web.request.Refused;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads for how many seats a plan is worked out, and which candles they make: {@code ?seats=8&candles=tin=2}. */
final class AskedOccasion {
    private AskedOccasion() { }

    /** @throws Refused with a sentence if the numbers are none, or do not go with the plan */
    static Occasion of(Context ctx, Plan plan) {
        int seats = number(ctx.queryParam("seats"), plan.usualSeats(), 1, "\"seats\"");
        Map<String, Integer> candles = new LinkedHashMap<>();
        for (Candle candle : plan.candles()) {
            int made = number(ctx.queryParam("make-" + candle.id()), 0, 0, "The seats for " + candle.name());
            if (made > 0) {
                candles.put(candle.id(), made);
            }
        }
        listed(Optional.ofNullable(ctx.queryParam("candles")).orElse(""), plan, candles);
        int sum = candles.values().stream().mapToInt(n -> n).sum();
        if (sum > seats) {
            throw refused("Candles are chosen for " + sum + " seats, and there " + (seats == 1 ? "is 1."
                    : "are " + seats + "."));
        }
        return Occasion.of(plan, seats, candles);
    }

    private static void listed(String text, Plan plan, Map<String, Integer> candles) {
        for (String choice : text.isEmpty() ? new String[0] : text.split(",", -1)) {
            String[] parts = choice.split("=", -1);
            if (parts.length != 2 || plan.candle(parts[0]).isEmpty()) {
                throw refused("\"candles\" must be candles of the plan with their seats, such as "
                        + plan.candles().stream().findFirst().map(Candle::id).orElse("glass") + "=4.");
            }
            candles.put(parts[0], number(parts[1], 0, 0, "The seats for " + parts[0]));
        }
    }

    private static int number(String text, int otherwise, int least, String what) {
        if (text == null || text.isEmpty()) {
            return otherwise;
        }
        if (!text.matches("\\d{1,3}") || Integer.parseInt(text) < least
                || Integer.parseInt(text) > SeatNumber.MOST) {
            throw refused(what + " must be a whole number from " + least + " to " + SeatNumber.MOST + ".");
        }
        return Integer.parseInt(text);
    }

    private static Refused refused(String sentence) {
        return new Refused(Problem.unprocessable(sentence));
    }
}
