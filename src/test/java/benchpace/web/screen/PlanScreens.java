package benchpace.web.screen;

import benchpace.files.roster.Demo;
import benchpace.plan.Candle;
import benchpace.plan.Picture;
import benchpace.plan.Plan;
import benchpace.web.screen.drawing.Drawing;
import benchpace.web.screen.plans.PlanRow;
import benchpace.web.screen.plans.PlansPage;
import benchpace.web.screen.plans.VersionPage;
import benchpace.web.screen.plans.VersionsPage;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.PlanWords;
import benchpace.words.Times;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The screens of an organiser's plans: one of her own with three versions, and one that she deleted. */
final class PlanScreens {
    private static final Instant NOW = Evening.at(0);
    private static final Instant LAST = Evening.at(-60 * 24 * 7);
    private static final Times TIMES = new Times(Evening.ZONE);

    private PlanScreens() { }

    private static Plan own() {
        Plan starter = Demo.plans().get(1);
        return starter.as(starter.id(), "Thursday tea lights");
    }

    private static String saved(int version) {
        return PlanWords.saved(version, Evening.at(-60 * version), version == 1 ? "from the data folder"
                : "on Counter tablet", TIMES, NOW);
    }

    private static PlanRow row(Plan plan, String saved) {
        return new PlanRow(plan.id().value(), plan.name(), "\"3\"", plan.about(), PlanWords.what(plan),
                PlanWords.used(Optional.of(LAST), Optional.of(Evening.at(300)), TIMES, NOW), saved,
                Drawing.of(Picture.SETTING, plan));
    }

    static PlansPage list(Viewer viewer) {
        return new PlansPage(viewer, List.of(row(own(), saved(3))),
                Demo.plans().stream().map(plan -> row(plan, "")).toList(), List.of(row(own(), saved(2))),
                List.of("Plan \"tins\" is saved, but its file plans/tins.json could not be written; it is tried again "
                        + "with the next change and at the next start."), candles());
    }

    static PlansPage none(Viewer viewer) {
        return new PlansPage(viewer, List.of(), Demo.plans().stream().map(plan -> row(plan, "")).toList(), List.of(),
                List.of(), candles());
    }

    private static List<String> candles() {
        return Demo.eveningPlan().candles().stream().map(Candle::name).toList();
    }

    static VersionsPage versions(Viewer viewer) {
        return new VersionsPage(viewer, "tea-lights", own().name(), "\"3\"", List.of(
                new VersionsPage.Row(3, saved(3), own().name(), "", true, true),
                new VersionsPage.Row(2, saved(2), "", "", false, false),
                new VersionsPage.Row(1, saved(1), "Tea lights", PlanWords.ran(List.of(LAST, NOW), TIMES), true,
                        false)));
    }

    static VersionPage version(Viewer viewer) {
        return VersionPage.of(viewer, own(), Demo.eveningPlan(), 1, "\"3\"", saved(1), false);
    }
}
