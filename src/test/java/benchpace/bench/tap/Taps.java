package benchpace.bench.tap;

import benchpace.files.Json;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The taps of an evening after the plan {@value #PLAN}, in an order in which each is accepted. It begins with a past
 * of its own, {@value #PAST_MINUTES} minutes of it: everybody has come, the vessels are opened, one seat in six is late
 * with them. From there on the seats finish step after step in an order drawn by lot; every fourth tap of that kind is
 * taken back and tapped again, every sixth seat rests for a moment before, and every ninth time somebody writes a note.
 * After the last step the last tap is taken back and made again, over and over.
 */
final class Taps {
    static final String PLAN = "class-of-forty";
    static final int PAST_MINUTES = 25;
    /** Each but the talks, which are over when the next is opened. */
    private static final List<String> FINISHED = List.of("vessel", "wicks", "fragrance", "mix", "pour", "cure", "trim",
            "wrap");
    private static final List<String> OPENED = List.of("wicks", "fragrance", "before-wax", "mix", "pour", "trim");

    private final int seats;
    private final Random random;
    private final Deque<ObjectNode> due = new ArrayDeque<>();
    private final Deque<String> opened = new ArrayDeque<>(OPENED);
    private final List<Integer> late;
    private int made;
    private int finishes;
    private ObjectNode last = Json.object();

    Taps(int seats, long seed) {
        this.seats = seats;
        this.random = new Random(seed);
        this.late = shuffled().subList(0, (seats + 5) / 6);
    }

    private List<Integer> shuffled() {
        List<Integer> all = IntStream.rangeClosed(1, seats).boxed().collect(Collectors.toCollection(ArrayList::new));
        Collections.shuffle(all, random);
        return all;
    }

    private static ObjectNode wish(String type) {
        return Json.object().put("type", type);
    }

    private static ObjectNode of(String type, int seat) {
        return wish(type).put("seat", seat);
    }

    private static ObjectNode finish(int seat, String step) {
        return of("finish-step", seat).put("step", step);
    }

    /** When such a class was to begin. */
    static Instant start(Instant now) {
        return now.minus(Duration.ofMinutes(PAST_MINUTES));
    }

    /** What has happened by {@code now}, each with its own time. */
    List<String> past(Instant now) {
        List<ObjectNode> past = new ArrayList<>();
        Instant start = start(now);
        for (int seat = 1; seat <= seats; seat++) {
            past.add(of("arrive", seat).put("at", start.plusSeconds(seat).toString()));
        }
        past.add(wish("open-step").put("step", "welcome").put("at", start.plusSeconds(120).toString()));
        past.add(wish("open-step").put("step", "vessel").put("at", start.plusSeconds(600).toString()));
        long from = 600 + 240;
        for (int seat : shuffled()) {
            if (!late.contains(seat)) {
                from += Math.max(1, 480 / seats);
                past.add(finish(seat, "vessel").put("at", start.plusSeconds(from).toString()));
            }
        }
        return past.stream().map(this::numbered).toList();
    }

    /** The next tap. @param lastSeq the number of the one before */
    String next(long lastSeq) {
        if (due.isEmpty()) {
            goOn();
        }
        ObjectNode next = due.isEmpty() ? again(lastSeq) : due.poll();
        if (next.path("type").textValue().equals("undo")) {
            next.put("seq", lastSeq);
        }
        last = next;
        return numbered(next);
    }

    private ObjectNode again(long lastSeq) {
        due.add(last.deepCopy());
        return wish("undo").put("seq", lastSeq);
    }

    private String numbered(ObjectNode wish) {
        return Json.text(wish.put("commandId", "t-" + made++));
    }

    /** The next step, opened and tapped by everybody. */
    private void goOn() {
        if (opened.isEmpty()) {
            return;
        }
        String step = opened.poll();
        due.add(wish("open-step").put("step", step));
        if (!FINISHED.contains(step)) {
            return;
        }
        for (int seat : shuffled()) {
            if (step.equals("wicks") && late.contains(seat)) {
                finished(seat, "vessel");
            }
            finished(seat, step);
        }
        if (step.equals("pour") || step.equals("trim")) {
            String free = FINISHED.get(FINISHED.indexOf(step) + 1);
            shuffled().forEach(seat -> finished(seat, free));
        }
    }

    private void finished(int seat, String step) {
        finishes++;
        if (finishes % 6 == 0) {
            due.add(of("pause", seat));
            due.add(of("resume", seat));
        }
        due.add(finish(seat, step));
        if (finishes % 4 == 0) {
            due.add(wish("undo"));
            due.add(finish(seat, step));
        }
        if (finishes % 9 == 0) {
            due.add(wish("note").put("seat", seat).put("text", "Note " + finishes));
        }
    }
}
