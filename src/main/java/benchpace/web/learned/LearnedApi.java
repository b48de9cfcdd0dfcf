package benchpace.web.learned;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.cooling.RoomLessons;
import benchpace.board.cooling.TaughtRoom;
import benchpace.board.pacing.StepLessons;
import benchpace.files.Json;
import benchpace.live.LiveClass;
import benchpace.store.RoomLesson;
import benchpace.web.pairing.Access;
import benchpace.web.request.Bodies;
import benchpace.web.request.IfMatch;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What was taught, accepted and taken back. Each change says in If-Match what its page had shown, so that of two
 * devices the second takes over nothing that it has not seen.
 */
final class LearnedApi {
    private final Boards boards;
    private final Access access;

    LearnedApi(Boards boards, Access access) {
        this.boards = boards;
        this.access = access;
    }

    void routes(RoutesConfig routes) {
        boards.lessons().ifPresent(rooms -> {
            Reads.route(routes, "/api/learned/rooms", ctx -> list(ctx, rooms));
            routes.post("/api/learned/rooms", ctx -> acceptRoom(ctx, rooms));
            routes.post("/api/learned/classes/{id}", ctx -> decide(ctx, rooms, true));
            routes.delete("/api/learned/classes/{id}", ctx -> decide(ctx, rooms, false));
        });
        boards.stepLessons().ifPresent(steps -> {
            Reads.route(routes, "/api/learned/plans/{id}", ctx -> read(ctx, steps));
            routes.post("/api/learned/plans/{id}", ctx -> accept(ctx, steps));
            routes.delete("/api/learned/plans/{id}", ctx -> forget(ctx, steps));
        });
    }

    // ---- rooms

    /** GET: every room and each class's part in it, with the tag that a change of it has to bear. */
    private void list(Context ctx, RoomLessons rooms) {
        access.instructor(ctx);
        ArrayNode list = Json.mapper().createArrayNode();
        rooms.rooms().forEach(room -> write(room, list.addObject()));
        Bodies.send(ctx, 200, list);
    }

    private static void write(TaughtRoom room, ObjectNode into) {
        into.put("room", room.room()).put("tag", room.tag());
        room.latest().ifPresent(latest -> into.put("lossMedian", latest.fit().lossMedian())
                .put("lossP10", latest.fit().lossP10()).put("lossP90", latest.fit().lossP90())
                .put("readyFraction", latest.fit().readyMean()).put("observations", latest.fit().observations()));
        ArrayNode classes = into.putArray("classes");
        room.lessons().forEach(row -> {
            RoomLesson lesson = row.lesson();
            ObjectNode one = classes.addObject().put("classId", lesson.classId())
                    .put("state", lesson.state().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                    .put("learnedAt", lesson.learnedAt().toString());
            row.change().ifPresent(change -> one.put("lossTimes", change.lossTimes())
                    .put("observations", change.observations()));
        });
    }

    /** POST {@code ?room=}: all of it that nobody has looked at yet. */
    private void acceptRoom(Context ctx, RoomLessons rooms) {
        access.instructor(ctx);
        IfMatch looked = IfMatch.required(ctx);
        answer(ctx, rooms.accept(asked(ctx, "room"), looked::matches));
    }

    /** POST: what a class taught its room counts; DELETE: it is taken back. */
    private void decide(Context ctx, RoomLessons rooms, boolean counts) {
        access.instructor(ctx);
        IfMatch looked = IfMatch.required(ctx);
        answer(ctx, rooms.decide(ctx.pathParam("id"), counts, looked::matches,
                id -> boards.find(id).map(ClassBoard::live)));
    }

    private static void answer(Context ctx, RoomLessons.Decided decided) {
        switch (decided) {
            case DONE -> Bodies.send(ctx, 200, Json.object());
            case STALE -> throw stale();
            case UNREADABLE -> throw new Refused(new Problem(409, "unreadable", "The class cannot be read",
                    "The record of that class cannot be read just now, so it cannot count again."));
            default -> throw new Refused(Problem.notFound("This taught nothing, so nothing was changed."));
        }
    }

    // ---- steps

    /** GET {@code ?place=}: what each step is planned, learned and expected to take, and the tag to change it with. */
    private void read(Context ctx, StepLessons steps) {
        access.instructor(ctx);
        StepLessons.Taught of = taught(ctx);
        StepLessons.Lesson lesson = steps.lesson(of.planId(), of.place(), classes());
        ObjectNode answer = Json.object().put("plan", of.planId()).put("place", of.place())
                .put("classes", lesson.classes()).put("tag", lesson.tag());
        ArrayNode list = answer.putArray("steps");
        classes().stream().map(LiveClass::plan).filter(plan -> StepLessons.Taught.of(plan).equals(of)).findFirst()
                .map(lesson::figures).orElse(List.of()).forEach(figure -> list.addObject().put("step", figure.id())
                        .put("plannedMinutes", figure.plannedMinutes()).put("learnedMinutes", figure.learnedMinutes())
                        .put("expectedMinutes", figure.expectedMinutes()).put("accepted", figure.accepted()));
        Bodies.send(ctx, 200, answer);
    }

    /** POST {@code ?place=&step=}: that step, or all, from the next class on as past classes taught. */
    private void accept(Context ctx, StepLessons steps) {
        access.instructor(ctx);
        IfMatch looked = IfMatch.required(ctx);
        answer(ctx, steps.accept(taught(ctx), step(ctx), looked::matches, classes()),
                "No class of this plan has been closed there, so none has taught that yet.");
    }

    /** DELETE {@code ?place=&step=}: that step, or all, by the plan again. */
    private void forget(Context ctx, StepLessons steps) {
        access.instructor(ctx);
        IfMatch looked = IfMatch.required(ctx);
        answer(ctx, steps.forget(taught(ctx), step(ctx), looked::matches, classes()),
                "The plan's own figures are in force already.");
    }

    private static void answer(Context ctx, StepLessons.Decided decided, String nothing) {
        switch (decided) {
            case DONE -> Bodies.send(ctx, 200, Json.object());
            case STALE -> throw stale();
            default -> throw new Refused(Problem.notFound(nothing));
        }
    }

    private static StepLessons.Taught taught(Context ctx) {
        return new StepLessons.Taught(ctx.pathParam("id"), asked(ctx, "place"));
    }

    private static Optional<String> step(Context ctx) {
        return Optional.of(asked(ctx, "step")).filter(step -> !step.isEmpty());
    }

    private List<LiveClass> classes() {
        return boards.all().stream().map(ClassBoard::live).toList();
    }

    private static String asked(Context ctx, String name) {
        String value = ctx.queryParam(name);
        return value == null ? "" : value;
    }

    private static Refused stale() {
        return new Refused(new Problem(412, "changed-meanwhile", "It was changed meanwhile",
                "What was taught here has changed meanwhile: another device decided something, or a class was closed. "
                        + "Nothing was changed now. Load the page again, and it shows what stands."));
    }
}
