package benchpace.simulation;

import benchpace.board.view.ClassView;
import benchpace.files.Json;
import benchpace.files.log.EventJson;
import benchpace.files.log.ReplayCommand;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A class's log as the {@code replay} command reads it, and the flags it finds in it: those that the board shows. Only
 * of classes that the format can tell whole, in which nobody came late, shared, left or was corrected.
 */
final class Replay {
    /** What the log format has a word for, and what pace does not look at. */
    private static final Map<String, String> TOLD = Map.of("open-step", "open-step", "finish-step", "finish-step",
            "pause", "pause", "resume", "resume", "still-at-it", "still-at-it", "guest-done", "says-done",
            "judge-set", "judge-set");
    private static final Set<String> PASSED_OVER = Set.of("create", "note", "guests-may-tell", "open-activity",
            "close-activity", "extend-activity", "move-activity", "skip-activity", "join-activity", "quit-activity",
            "read-room", "read-pour", "read-temperature", "judge-skin", "choose-candle");

    private Replay() { }

    /** @return whether the class could be told, and so was compared */
    static boolean check(LiveClass live, boolean computed, ClassView view) {
        Optional<String> log = log(live, computed, view.now());
        log.ifPresent(text -> {
            Map<Integer, String> shown = new TreeMap<>();
            view.seats().forEach(s -> s.flag().ifPresent(f -> shown.put(s.seat(), level(f.level()))));
            Map<Integer, String> replayed = flags(text);
            Broken.unless(shown.equals(replayed), "a replay of the log gives the flags that were shown",
                    () -> shown + " shown, " + replayed + " replayed of\n" + text);
        });
        return log.isPresent();
    }

    /** What the command writes of a class: the rows of flags, and those of forecasts. */
    record Tables(List<String[]> flags, List<String[]> forecasts) { }

    /** @param until to where it is replayed @throws java.util.NoSuchElementException if the format cannot tell it */
    static Tables tables(LiveClass live, Instant until) {
        List<String[]> rows = Stream.of(run(log(live, false, until).orElseThrow()).split("\n"))
                .map(line -> line.split(",")).filter(row -> row[1].matches("\\d.*")).toList();
        return new Tables(rows.stream().filter(row -> row.length == 4).toList(),
                rows.stream().filter(row -> row.length == 5).toList());
    }

    private static String level(Enum<?> level) {
        return level.name().toLowerCase(Locale.ROOT);
    }

    private static String run(String log) {
        StringBuilder out = new StringBuilder();
        StringBuilder err = new StringBuilder();
        try {
            new ReplayCommand().run(List.of("-"), "-", "-", Optional.empty(),
                    new ByteArrayInputStream(log.getBytes(StandardCharsets.UTF_8)), out, err);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        Broken.unless(err.isEmpty(), "a class's log can be replayed", () -> err + log);
        return out.toString();
    }

    private static Map<Integer, String> flags(String log) {
        Map<Integer, String> flags = new TreeMap<>();
        for (String line : run(log).split("\n")) {
            String[] row = line.split(",");
            if (row.length == 4 && row[1].matches("\\d+")) {
                flags.put(Integer.parseInt(row[1]), row[3]);
            }
        }
        flags.values().removeIf("none"::equals);
        return flags;
    }

    /** Empty if the format cannot tell the class. */
    private static Optional<String> log(LiveClass live, boolean computed, Instant now) {
        Instant origin = live.startsAt();
        Optional<Step> opened = live.plan().steps().stream().filter(s -> live.openedAt(s.id()).isPresent()).findFirst();
        boolean steady = live.history().stream().allMatch(r -> isTold(r, origin));
        boolean passedOver = live.plan().steps().stream().limit(live.furthestOpened() + 1L)
                .anyMatch(s -> s.led() && live.openedAt(s.id()).isEmpty());
        boolean poured = live.seats().stream().anyMatch(s -> live.progress().pouredAt(s).isPresent());
        if (!steady || passedOver || opened.isEmpty() || live.createdAt().isAfter(origin) || computed && poured) {
            return Optional.empty();
        }
        StringBuilder lines = new StringBuilder(Json.text(head(live))).append('\n');
        Set<SeatNumber> paused = new HashSet<>();
        live.history().forEach(r -> line(r, origin, paused, lines));
        lines.append(Json.text(at(now, origin).put("type", "open-step").put("step", opened.get().id().value())));
        return Optional.of(lines.toString()); // the last line opens nothing, and says when it is now
    }

    private static boolean isTold(Recorded event, Instant origin) {
        String type = EventJson.type(event.event());
        return PASSED_OVER.contains(type) || TOLD.containsKey(type) && event.at().equals(event.recordedAt())
                && !event.at().isBefore(origin);
    }

    private static ObjectNode head(LiveClass live) {
        Plan plan = live.plan();
        Duration cure = plan.cure().map(Step::planned).orElse(Duration.ofMinutes(60));
        ObjectNode head = Json.object().put("t", 0).put("type", "class").put("class_id", "simulated")
                .put("cureMinutes", cure.toMillis() / 60_000.0);
        ArrayNode steps = head.putArray("steps");
        plan.steps().forEach(s -> {
            ObjectNode step = steps.addObject().put("step", s.id().value())
                    .put("planMinutes", s.planned().toMillis() / 60_000.0).put("opening", s.led() ? "led" : "free")
                    .put("kind", level(s.kind()).replace('_', '-'));
            s.stations().ifPresent(served -> step.putObject("stations").put("atOnce", served.atOnce())
                    .put("minutesEach", served.each().toMillis() / 60_000.0));
        });
        ArrayNode seats = head.putArray("seats");
        live.seats().forEach(s -> seats.addObject().put("seat", s.number().value()));
        return head;
    }

    private static ObjectNode at(Instant at, Instant origin) {
        return Json.object().put("t", Duration.between(origin, at).toMillis() / 1_000.0);
    }

    /** A tap of a seat that is paused ends the pause. */
    private static void line(Recorded event, Instant origin, Set<SeatNumber> paused, StringBuilder lines) {
        String type = TOLD.get(EventJson.type(event.event()));
        if (type == null) {
            return;
        }
        if (event.event() instanceof ClassEvent.SeatPaused pause) {
            paused.add(pause.seat());
        } else if (event.event() instanceof ClassEvent.SeatResumed resume) {
            paused.remove(resume.seat());
        } else if (event.event() instanceof ClassEvent.StepFinished done && paused.remove(done.seat())) {
            lines.append(Json.text(at(event.at(), origin).put("type", "resume").put("seat", done.seat().value())))
                    .append('\n');
        }
        ObjectNode line = at(event.at(), origin).put("type", type);
        EventJson.fields(event.event()).properties().forEach(f -> line.set(f.getKey(), f.getValue()));
        lines.append(Json.text(line)).append('\n');
    }
}
