package benchpace.web.screen;

import benchpace.board.attempt.Faults;
import benchpace.board.cooling.CutAway;
import benchpace.board.pacing.StepLessons;
import benchpace.board.view.ClassReport;
import benchpace.board.view.ClassView;
import benchpace.board.view.ClassWhatIf;
import benchpace.files.StudioJson;
import benchpace.plan.Plan;
import benchpace.plan.Studio;
import benchpace.prep.evening.TypicalEvening;
import benchpace.web.screen.between.BetweenPage;
import benchpace.web.screen.cure.CurePage;
import benchpace.web.screen.data.DataPage;
import benchpace.web.screen.data.ProblemPage;
import benchpace.web.screen.devices.DevicesPage;
import benchpace.web.screen.guest.CodeSheet;
import benchpace.web.screen.guest.GuestPage;
import benchpace.web.screen.helper.HelperPage;
import benchpace.web.screen.history.HistoryPage;
import benchpace.web.screen.instructor.GuessLine;
import benchpace.web.screen.instructor.InstructorPage;
import benchpace.web.screen.instructor.SeatSheet;
import benchpace.web.screen.learned.LearnedPage;
import benchpace.web.screen.learned.LessonPanel;
import benchpace.web.screen.plans.EditChance;
import benchpace.web.screen.plans.EditPage;
import benchpace.web.screen.plans.EditPreview;
import benchpace.web.screen.plans.PlansPage;
import benchpace.web.screen.plans.VersionPage;
import benchpace.web.screen.plans.VersionsPage;
import benchpace.web.screen.playback.PlaybackBand;
import benchpace.web.screen.prep.PrepGiven;
import benchpace.web.screen.prep.PrepPage;
import benchpace.web.screen.prep.PrepParts;
import benchpace.web.screen.report.GuestsPart;
import benchpace.web.screen.report.ReportPage;
import benchpace.web.screen.report.WhatIfPanel;
import benchpace.web.screen.setup.CardsPage;
import benchpace.web.screen.setup.SeatsPage;
import benchpace.web.screen.setup.SetupPage;
import benchpace.web.screen.shelf.LeaveSheet;
import benchpace.web.screen.shelf.ShelfPage;
import benchpace.web.screen.shelf.TagsPage;
import benchpace.web.screen.shell.Following;
import benchpace.web.screen.shell.Message;
import benchpace.web.screen.shell.Parts;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.screen.start.ClockLine;
import benchpace.web.screen.start.StartView;
import benchpace.web.screen.studio.StudioPage;
import benchpace.web.screen.style.StyleGiven;
import benchpace.web.screen.wait.WaitPage;
import benchpace.web.screen.wall.WallPage;
import benchpace.words.ShelfTag;
import benchpace.words.Times;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Renders what people look at. The parts of a page that change while a class runs come from the same templates as the
 * page itself: {@link #fragments} names them as the page's {@code sse-swap} attributes do.
 */
public final class Screens {
    private static final Logger LOG = System.getLogger(Screens.class.getName());

    private final Templates templates;
    /** By the id of the class or the playback. */
    private final Function<String, Studio> rooms;
    /** Of what is of no class. */
    private final Supplier<Studio> studio;
    private final LiveParts live;
    private final Faults faults = new Faults();

    public Screens() {
        this(id -> Studio.NONE);
    }

    /** @param studio whose room it is now, whatever the class */
    public Screens(Supplier<Studio> studio) {
        this(id -> studio.get());
    }

    /** @param rooms whose room it is now, by the class's id; empty for what is of no class */
    public Screens(Function<String, Studio> rooms) {
        this(TemplateEngine.createPrecompiled(ContentType.Html), rooms);
    }

    public Screens(TemplateEngine engine, Function<String, Studio> rooms) {
        this.templates = new Templates(engine);
        this.live = new LiveParts(templates, faults);
        this.rooms = rooms;
        this.studio = () -> rooms.apply("");
    }

    /** The whole page with its first content. */
    public String page(ScreenKind kind, ClassView view, Viewer viewer) {
        return page(kind, view, viewer, Following.NOTHING);
    }

    /** The same at an address that follows one class after the other. */
    public String page(ScreenKind kind, ClassView view, Viewer viewer, Following following) {
        return page(kind, view, viewer, shell(kind, view, viewer, following));
    }

    /** The same, plainly marked where it is an evening that is played back. @param band empty for a class */
    public String page(ScreenKind kind, ClassView view, Viewer viewer, Optional<PlaybackBand> band) {
        return page(kind, view, viewer, shell(kind, view, viewer, Following.NOTHING).with(band));
    }

    private String page(ScreenKind kind, ClassView view, Viewer viewer, Shell shell) {
        Parts parts = live.of(kind, view, viewer);
        return switch (kind) {
            case INSTRUCTOR -> render("instructor/page.jte", InstructorPage.of(shell, studioOf(view.id()), view, viewer,
                    new Times(view.zone()), parts));
            case HELPER -> render("helper/page.jte", HelperPage.of(shell, view, viewer, parts));
            case WALL -> render("wall/page.jte", new WallPage(shell, parts));
            case WAIT -> render("wait/page.jte", WaitPage.of(shell, view, viewer, new Times(view.zone()), parts));
        };
    }

    /** The live parts: name of the event to the HTML that replaces the inside of the part, in the page's order. */
    public Map<String, String> fragments(ScreenKind kind, ClassView view, Viewer viewer) {
        return live.of(kind, view, viewer).html();
    }

    /** The same parts by whom and when they are shown. */
    public LiveParts live() {
        return live;
    }

    /** What strangers guessed at: of the board, not of a class. The instructor's page gets it by its stream. */
    public String clocks(ClockLine line) {
        return render("instructor/clocks.jte", line);
    }

    public String guesses(GuessLine line) {
        return render("instructor/guesses.jte", line);
    }

    /** The inside of the seat sheet. @param seat one of the view's */
    public String sheet(ClassView view, int seat, Viewer viewer) {
        return sheet(view, seat, viewer, Optional.empty());
    }

    /** The same with its candle cut open. */
    public String sheet(ClassView view, int seat, Viewer viewer, Optional<CutAway> cut) {
        return render("instructor/sheet.jte", SeatSheet.of(view, view.seat(seat), viewer, cut));
    }

    /** The inside of the dialogue with which a seat leaves early. */
    public String leave(LeaveSheet sheet) {
        return render("instructor/leave.jte", sheet);
    }

    /** @param typed what is searched for; empty to see all */
    public String shelf(ShelfPage.Given given, String typed, Viewer viewer, ZoneId zone) {
        return paper("shelf/page.jte", ShelfPage.of(given, typed, viewer, new Times(zone)));
    }

    /** @param single one tag a page */
    public String tags(List<ShelfTag> tags, String ids, boolean single, Viewer viewer) {
        return render("shelf/tags.jte", TagsPage.of(tags, ids, single, studio.get(), viewer));
    }

    /** A class looked back on. @param lesson what past classes of its plan taught, where that is kept */
    public String report(ClassReport report, Optional<StepLessons.Lesson> lesson, Plan plan, Viewer viewer,
                         GuestsPart guests) {
        Times times = new Times(report.view().zone());
        LessonPanel taught = LessonPanel.of(lesson, plan, times);
        try {
            return templates.renderParts("report/page.jte", Map.of("page", ReportPage.of(report, taught, viewer, times),
                    "guests", guests, "studio", headed(report.view())));
        } catch (RuntimeException | StackOverflowError e) { // figures that cannot be told leave the record
            if (faults.isNew(report.view().id() + " report", e)) {
                LOG.log(Level.ERROR, "class " + report.view().id() + " cannot be looked back on as a whole", e);
            }
            return templates.renderParts("report/page.jte", Map.of("page", ReportPage.of(report.bare(), taught, viewer,
                    times), "guests", guests, "studio", headed(report.view())));
        }
    }

    /** What would have saved a class time. @param copies plans in which that is changed already, by the change's key */
    public String whatIf(ClassWhatIf whatIf, Map<String, Plan> copies) {
        return render("report/what-if-answers.jte", WhatIfPanel.of(whatIf, copies));
    }

    /** The day before, of a class or a plan. */
    public String prep(PrepGiven given) {
        return paper("prep/page.jte", PrepPage.of(given, partsOf(given)), given.ofClass()
                .map(it -> headed(given.id(), given.occasion().plan().place())).orElseGet(studio));
    }

    /** Its live parts: name of the event to the HTML that replaces the inside of the part. */
    public Map<String, String> prepParts(PrepGiven given) {
        return partsOf(given).html();
    }

    private Parts partsOf(PrepGiven given) {
        Parts parts = new Parts(given.id(), faults);
        PrepParts.add(parts, given, this::render);
        return parts;
    }

    /** Past classes side by side. */
    public String history(HistoryPage page) {
        return paper("history/page.jte", page);
    }

    public String start(StartView view) {
        return templates.renderParts("start/page.jte", Map.of("view", view, "studio", studio.get()));
    }

    /** Where it is said whose room it is. */
    public String studio(StudioPage page) {
        return render("studio/page.jte", page);
    }

    /** Whose room a class is in, with the room's own place. @param classId empty for what is of no class */
    public Studio studioOf(String classId) {
        return rooms.apply(classId);
    }

    /** What a page of a class is headed with: whose room it is, and the class's own place. */
    public Studio headed(String classId, String place) {
        return studioOf(classId).heldAt(place);
    }

    private Studio headed(ClassView view) {
        return headed(view.id(), view.place());
    }

    /** All plans. */
    public String plans(PlansPage page) {
        return render("plans/page.jte", page);
    }

    /** Every version of a plan. */
    public String versions(VersionsPage page) {
        return render("plans/versions.jte", page);
    }

    /** A plan as it was. */
    public String version(VersionPage page) {
        return render("plans/version.jte", page);
    }

    /** Who has been let in. */
    public String devices(DevicesPage page) {
        return render("devices/page.jte", page);
    }

    /** What is kept. */
    public String data(DataPage page) {
        return render("data/page.jte", page);
    }

    /** Candles tried out side by side. */
    public String cure(CurePage page) {
        return paper("cure/page.jte", page);
    }

    /** What would be in the file that helps those who help. */
    public String problem(ProblemPage page) {
        return render("data/problem.jte", page);
    }

    /** All that past classes taught. */
    public String learned(LearnedPage page) {
        return render("learned/page.jte", page);
    }

    /** A plan to be written, or only looked at. */
    public String plan(EditPage page) {
        return render("plans/edit.jte", page);
    }

    /** What a plan that is being written comes to: what cannot be worked out of it takes nothing else along. */
    public String planPreview(Plan plan, Supplier<List<EditPreview.CandleLine>> candles,
                              Supplier<TypicalEvening> typical) {
        return render("plans/edit-preview.jte", EditPreview.of(plan, tried("the candles", plan, candles),
                tried("an evening", plan, typical)));
    }

    private <T> Optional<T> tried(String what, Plan plan, Supplier<T> worked) {
        try {
            return Optional.of(worked.get());
        } catch (RuntimeException | StackOverflowError e) {
            if (faults.isNew(what + " of a plan", e)) {
                LOG.log(Level.ERROR, what + " of plan " + plan.id() + " cannot be worked out", e);
            }
            return Optional.empty();
        }
    }

    public String planChance(EditChance chance) {
        return render("plans/edit-chance.jte", chance);
    }

    /** The page behind the code at a seat, whatever the class. */
    public String guest(GuestPage page) {
        return templates.renderParts("guest/page.jte", Map.of("page", page, "studio", studio.get()));
    }

    /** The same of a class. */
    public String guest(GuestPage page, ClassView of) {
        return templates.renderParts("guest/page.jte", Map.of("page", page, "studio", headed(of)));
    }

    /** How a class is set up. */
    public String setup(SetupPage page) {
        return render("setup/page.jte", page);
    }

    /** The seats of a class that has begun, to be corrected. */
    public String seats(SeatsPage page) {
        return render("setup/seats.jte", page);
    }

    /** Place cards, to be printed. */
    public String cards(CardsPage page) {
        return render("setup/cards.jte", page);
    }

    /** The codes of all seats, to be printed. */
    public String codes(CodeSheet sheet) {
        return templates.renderParts("guest/codes.jte", Map.of("sheet", sheet, "studio", studio.get()));
    }

    /** The same of a class. @param place where it is held */
    public String codes(CodeSheet sheet, String place) {
        return templates.renderParts("guest/codes.jte", Map.of("sheet", sheet, "studio",
                headed(sheet.classId(), place)));
    }

    /** What is shown at an address that follows the running class while there is none. */
    public String between(BetweenPage page) {
        return render("between/page.jte", page.at(studio.get()));
    }

    /** A plain page that says one thing: not found, no right, gone. */
    public String message(Message message) {
        return templates.renderParts("start/message.jte", Map.of("message", message, "studio", studio.get()));
    }

    /** The look itself. */
    public String style(StyleGiven given, Viewer viewer) {
        return render("style/page.jte", new StyleScreens(this).of(given, viewer));
    }

    /** A wall at a class's own address follows no other class, but it shows itself anew once the studio is another. */
    private Following orStudio(ScreenKind kind, Following following) {
        return kind == ScreenKind.WALL && following.equals(Following.NOTHING)
                ? new Following("", StudioJson.tag(studio.get())) : following;
    }

    private Shell shell(ScreenKind kind, ClassView view, Viewer viewer, Following following) {
        String title = switch (kind) {
            case INSTRUCTOR -> view.name() + ", the table";
            case HELPER -> view.name() + ", helper";
            case WALL -> view.name();
            case WAIT -> view.name() + ", the wait";
        };
        List<String> sheets = switch (kind) {
            case INSTRUCTOR -> List.of("seating", "tiles", "sheet", "cut", "lines", "leave", "offline");
            case HELPER, WAIT -> List.of();
            case WALL -> List.of("wall-wait");
        };
        return new Shell(title, kind.token(), sheets, view.id(), view.now().toString(), view.zone().getId(),
                viewer.role().token(), viewer.initials(), orStudio(kind, following), headed(view), Optional.empty());
    }

    /** A page that is printed, too: paper says whose it is. */
    private String paper(String template, Object page) {
        return paper(template, page, studio.get());
    }

    private String paper(String template, Object page, Studio room) {
        return templates.renderParts(template, Map.of("page", page, "studio", room));
    }

    private String render(String template, Object of) {
        return templates.render(template, of);
    }
}
