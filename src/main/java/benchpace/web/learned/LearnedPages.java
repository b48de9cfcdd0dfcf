package benchpace.web.learned;

import static java.util.stream.Collectors.toMap;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.cooling.RoomLessons;
import benchpace.board.cooling.TaughtRoom;
import benchpace.board.pacing.StepLessons;
import benchpace.board.plans.BookPlan;
import benchpace.board.plans.PlanBook;
import benchpace.live.LiveClass;
import benchpace.plan.Plan;
import benchpace.web.classes.Pages;
import benchpace.web.pairing.Access;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.Screens;
import benchpace.web.screen.learned.LearnedPage;
import benchpace.web.screen.learned.LessonPanel;
import benchpace.web.screen.learned.RoomPanel;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.Times;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The page on which all that past classes taught is shown and decided. For the instructor: it says who was slow. */
public final class LearnedPages {
    private final Boards boards;
    private final PlanBook plans;
    private final Access access;
    private final Screens screens;
    private final ZoneId zone;

    public LearnedPages(Boards boards, PlanBook plans, Access access, Screens screens, ZoneId zone) {
        this.boards = boards;
        this.plans = plans;
        this.access = access;
        this.screens = screens;
        this.zone = zone;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/history/learned", this::page);
        new LearnedApi(boards, access).routes(routes);
    }

    private void page(Context ctx) {
        Viewer viewer = access.paired(ctx);
        if (!viewer.instructor()) {
            throw new Refused(Problem.forbidden("What past classes taught is the instructor's; it needs the "
                    + "instructor's PIN or link."));
        }
        Times times = new Times(zone);
        Shell shell = new Shell("What past classes taught", "learned", List.of("report"), "", "", zone.getId(),
                viewer.role().token(), viewer.initials());
        Pages.html(ctx, screens.learned(new LearnedPage(shell, rooms(times), lessons(times))));
    }

    private List<RoomPanel> rooms(Times times) {
        Map<String, RoomPanel.Called> classes = boards.all().stream().collect(toMap(ClassBoard::id,
                board -> new RoomPanel.Called(board.live().name(), board.live().startsAt())));
        List<TaughtRoom> rooms = boards.lessons().map(RoomLessons::rooms).orElse(List.of());
        return rooms.stream().map(room -> RoomPanel.of(room, classes, times)).toList();
    }

    private List<LearnedPage.PlanLesson> lessons(Times times) {
        return boards.stepLessons().map(steps -> lessons(steps, times)).orElse(List.of());
    }

    /** By plan and place: the latest class of each says what it is called. */
    private List<LearnedPage.PlanLesson> lessons(StepLessons steps, Times times) {
        Collection<ClassBoard> all = boards.all();
        List<LiveClass> lives = all.stream().map(ClassBoard::live).toList();
        Map<StepLessons.Taught, ClassBoard> latest = new LinkedHashMap<>();
        all.stream().filter(board -> board.live().closedAt().isPresent())
                .sorted(Comparator.comparing((ClassBoard board) -> board.live().startsAt()).reversed())
                .forEach(board -> latest.putIfAbsent(StepLessons.Taught.of(board.live().plan()), board));
        Map<StepLessons.Taught, LearnedPage.PlanLesson> told = new LinkedHashMap<>();
        latest.forEach((key, board) -> {
            Plan plan = board.live().plan();
            told.put(key, lesson(plan, board.lesson(steps, lives), times));
        });
        steps.accepted().stream().filter(key -> !told.containsKey(key)).forEach(key ->
                planOf(key).ifPresent(plan -> told.put(key, lesson(plan,
                        Optional.of(steps.lesson(key.planId(), key.place(), lives)), times))));
        return told.values().stream().filter(l -> l.panel().told() || !l.missing().isEmpty()).toList();
    }

    /** A plan whose classes are no more, as it is now. */
    private Optional<Plan> planOf(StepLessons.Taught key) {
        return plans.find(key.planId()).map(BookPlan::plan).map(plan -> plan.heldAt(key.place(), plan.table()));
    }

    private static LearnedPage.PlanLesson lesson(Plan plan, Optional<StepLessons.Lesson> lesson, Times times) {
        return new LearnedPage.PlanLesson(plan.name(), plan.place(), LessonPanel.of(lesson, plan, times),
                lesson.isPresent() ? "" : "What its classes taught cannot be worked out just now.");
    }
}
