package benchpace.web.plans;

import benchpace.board.plans.PlanBook;
import benchpace.files.pattern.NewPlan;
import benchpace.plan.Candle;
import benchpace.plan.PlanId;
import benchpace.plan.pattern.Answers;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Refused;
import benchpace.words.Phrases;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** A plan made from the answers that the dialogue of the plans' page asks for. */
final class NewPlans {
    private static final int LONGEST_NAME = 80;

    private NewPlans() { }

    /** The candles of all plans by name, each once: what a new plan may be made for. */
    static Map<String, Candle> candles(PlanBook book) {
        Map<String, Candle> candles = new LinkedHashMap<>();
        book.all().stream().flatMap(plan -> plan.plan().candles().stream())
                .forEach(candle -> candles.putIfAbsent(candle.name(), candle));
        return candles;
    }

    /**
     * @param body {@code name, seats, candle} (its name), {@code minutes, venue, pouring, atOnce}
     * @throws Refused for the first answer that cannot be
     */
    static NewPlan of(JsonNode body, PlanBook book) {
        String name = Bodies.text(body, "name", LONGEST_NAME).strip();
        Candle candle = candles(book).get(Bodies.text(body, "candle", LONGEST_NAME));
        if (candle == null) {
            throw new Refused(Problem.unprocessable("\"candle\" must be the name of a candle of some plan."));
        }
        try {
            Answers answers = new Answers(whole(body, "seats"), candle, whole(body, "minutes"),
                    choice(body, "venue", Answers.Venue.values()), choice(body, "pouring", Answers.Pouring.values()),
                    whole(body, "atOnce"));
            return NewPlan.of(PlanId.of(name), name, answers);
        } catch (IllegalArgumentException e) {
            throw new Refused(Problem.unprocessable(Phrases.sentence(e.getMessage()) + "."));
        }
    }

    private static int whole(JsonNode body, String field) {
        JsonNode value = body.path(field);
        if (!value.isIntegralNumber() || !value.canConvertToInt()) {
            throw new Refused(Problem.unprocessable("\"" + field + "\" must be a whole number."));
        }
        return value.intValue();
    }

    private static <T extends Enum<T>> T choice(JsonNode body, String field, T[] choices) {
        String said = Bodies.text(body, field, LONGEST_NAME);
        List<T> all = Arrays.asList(choices);
        return all.stream().filter(one -> token(one).equals(said)).findFirst()
                .orElseThrow(() -> new Refused(Problem.unprocessable("\"" + field + "\" must be one of "
                        + all.stream().map(one -> "\"" + token(one) + "\"").collect(Collectors.joining(", ")) + ".")));
    }

    private static String token(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
