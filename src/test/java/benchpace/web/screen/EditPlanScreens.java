package benchpace.web.screen;

import benchpace.board.prep.Odds;
import benchpace.cure.room.MinuteRange;
import benchpace.cure.room.TrajectoryCache;
import benchpace.files.plan.PlanFile;
import benchpace.plan.Plan;
import benchpace.prep.evening.Evenings;
import benchpace.prep.evening.Setting;
import benchpace.units.UnitChoice;
import benchpace.web.screen.plans.EditChance;
import benchpace.web.screen.plans.EditPage;
import benchpace.web.screen.plans.EditPreview;
import benchpace.web.screen.plans.EditSections;
import benchpace.web.screen.shell.Shell;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/** A plan that is being written, drawn for tests and the gallery. */
final class EditPlanScreens {
    private static final String WAITING = "<p class=\"calm\">It is being worked out.</p>";

    private EditPlanScreens() { }

    private static Plan plan() {
        try {
            return PlanFile.read(Path.of("src/test/resources/benchpace/web/plans/kit.json")).ifSound().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String page(Screens screens, EditPage.Standing standing, UnitChoice units) {
        Plan plan = plan();
        Shell shell = new Shell(plan.name() + ", plan", "plan-edit", List.of("lines"), "", "", "UTC", "instructor", "");
        return screens.plan(new EditPage(shell, plan.id().value(), plan.name(), 3, 4, standing, units,
                new EditSections(plan, units).all(), "{}"))
                .replace(WAITING, preview(screens, plan));
    }

    private static String preview(Screens screens, Plan plan) {
        TrajectoryCache candles = new TrajectoryCache();
        Evenings evenings = Evenings.of(Setting.of(plan, plan.usualSeats()), 1, 101, candles,
                Evenings.Progress.UNTOLD);
        return screens.planChance(EditChance.of(new Odds.UnderWay(500, 2000), evenings::timetable, plan))
                + screens.planPreview(plan, () -> List.of(EditPreview.CandleLine.of("Soy in an amber glass",
                        new MinuteRange(25, 40, 61))), () -> evenings.typical(candles));
    }

    /** The page with its steps folded away and its first candle unfolded. */
    static String atTheCandles(String page) {
        int steps = page.indexOf("<details", page.indexOf("id=\"steps\""));
        int candle = page.indexOf("<details", page.indexOf("data-list=\"/candles\""));
        return page.substring(0, steps) + page.substring(steps, candle).replaceFirst(" open>", ">")
                + "<details open" + page.substring(candle + "<details".length());
    }
}
