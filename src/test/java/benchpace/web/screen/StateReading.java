package benchpace.web.screen;

import benchpace.board.view.ClassView;
import benchpace.web.classes.StateJson;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.TreeSet;

/** Reads what the state of a class as JSON says of what its pages say, too. */
final class StateReading {
    private static final String JSON = "JSON";
    private final JsonNode state;
    private final ClassView view;
    private final Telling telling;

    StateReading(ClassView view, Telling telling) {
        this.view = view;
        this.telling = telling;
        this.state = StateJson.of(view, EveryScreen.LEAD);
    }

    void read() {
        telling.each("^Home (.*)$", state.get("forecast").get("words").asText(), m -> telling.tell(
                "everyone goes home", m.group(1).replace(",", ""), JSON));
        state.get("seats").forEach(this::candle);
        if (!state.get("cure").isNull()) {
            telling.tell("the first candle can be tried at", clock(state.get("cure").get("readyFrom")), JSON);
            telling.tell("all candles are ready by", clock(state.get("cure").get("readyUntil")), JSON);
        }
        TreeSet<Integer> flagged = new TreeSet<>();
        state.get("flags").forEach(f -> flagged.add(f.get("seat").asInt()));
        telling.tell("who needs somebody", flagged, JSON);
        state.get("flags").forEach(f -> telling.each("^(Seat \\d+: .*?(?:\\?|needs\\.))", f.get("reason").asText(),
                m -> telling.tell("why seat " + f.get("seat").asInt() + " needs somebody", m.group(1), JSON)));
        state.get("steps").forEach(s -> {
            if (view.present().step().filter(p -> p.id().equals(s.get("id").asText())).isPresent()) {
                telling.tell("done with the step of the heading",
                        s.get("finished").asInt() + " of " + view.present().of(), JSON);
            }
        });
        wait(state.get("wait"));
    }

    private void candle(JsonNode seat) {
        boolean counts = view.seat(seat.get("seat").asInt()).counts();
        if (counts && !seat.get("readyFrom").isNull() && !seat.get("readyBasis").asText().equals("hand-test")) {
            telling.tell("seat " + seat.get("seat").asInt() + " is ready",
                    clock(seat.get("readyFrom")) + " to " + clock(seat.get("readyUntil")), JSON);
        }
        if (counts && !seat.get("skinFrom").isNull()) {
            String from = clock(seat.get("skinFrom"));
            String until = clock(seat.get("skinUntil"));
            telling.tell("seat " + seat.get("seat").asInt() + " has a skin", from + " to " + until, JSON);
        }
    }

    private void wait(JsonNode wait) {
        wait.get("activities").forEach(a -> {
            String name = a.get("name").asText();
            if (!a.get("nowUntil").isNull()) {
                telling.tell(name + " goes on until", clock(a.get("nowUntil")), JSON);
                telling.tell("seats at " + name + " now", numbers(a.get("now")), JSON);
            }
            if (!a.get("expectedAt").isNull()) {
                telling.tell(name + " begins about", clock(a.get("expectedAt")), JSON);
            }
            if (!a.get("next").isNull()) {
                telling.tell("next time of " + name, clock(a.get("next").get("at")), JSON);
                telling.tell("next seats of " + name, numbers(a.get("next").get("seats")), JSON);
            }
        });
        wait.get("calls").forEach(call -> {
            String words = call.get("words").asText();
            telling.each("^First candles ready (?:from )?about " + Telling.TIME, words, m -> {
                telling.tell("the first candle can be tried at", m.group(1), JSON);
                telling.tell("the first candle can be tried at", clock(call.get("at")), JSON + ", call");
            });
            telling.each("^(.*) from about " + Telling.TIME, words, m -> {
                if (!m.group(1).equals("First candles ready")) {
                    telling.tell(m.group(1) + " begins about", m.group(2), JSON);
                    telling.tell(m.group(1) + " begins about", clock(call.get("at")), JSON + ", call");
                }
            });
        });
    }

    private static TreeSet<Integer> numbers(JsonNode seats) {
        TreeSet<Integer> numbers = new TreeSet<>();
        seats.forEach(n -> numbers.add(n.asInt()));
        return numbers;
    }

    private static String clock(JsonNode at) {
        return Telling.clock(Instant.parse(at.asText()));
    }
}
