package benchpace.web.screen.wall;

import benchpace.board.view.ClassView;
import benchpace.live.ClassEvent;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import benchpace.plan.Studio;
import benchpace.web.screen.Evening;
import benchpace.web.screen.Evenings;
import benchpace.web.screen.Screens;
import benchpace.web.screen.between.BetweenPage;
import benchpace.web.screen.shell.Following;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** What a wall is looked at in: every state of a class, tables of all sizes, the longest words that a plan may have. */
public final class WallSituations {
    public static final Studio STUDIO = new Studio("The Tallow Loft", "Quay Lane, Marrowby", Optional.empty());
    /** As long as a studio's name may be. */
    private static final Studio LONG_STUDIO = new Studio("The Old Granary Candle School and Dipping Rooms on the Quay",
            "", Optional.empty());

    private static final String HANDLE = "Hold the jug by its handle, stir from the bottom up for two whole minutes "
            + "without beating air into the wax, then put the spoon back on its own saucer and wait until the jug "
            + "comes round to your place.";

    private WallSituations() { }

    /** Name of the situation to the page. */
    public static Map<String, String> all() {
        Map<String, String> pages = new LinkedHashMap<>();
        views().forEach((name, view) -> pages.put(name, page(view, STUDIO)));
        cures().forEach((name, view) -> pages.put(name, page(view, STUDIO)));
        pages.put("long-studio", page(pouring(longest()).view(8), LONG_STUDIO));
        pages.put("no-studio", page(Evenings.wicks().view(19.5), Studio.NONE));
        Following wall = Following.NOTHING;
        Screens screens = new Screens(() -> STUDIO);
        BetweenPage.Told next = new BetweenPage.Told("Evening pour", Evening.START, false);
        BetweenPage.Told over = new BetweenPage.Told("Table of six", Evening.START.minusSeconds(86_400),
                true);
        pages.put("between", screens.between(BetweenPage.of(ScreenKind.WALL, Viewer.GUEST, wall, Optional.of(next),
                Optional.empty(), Evening.START.minusSeconds(4_000), Evening.ZONE)));
        pages.put("between-over", screens.between(BetweenPage.of(ScreenKind.WALL, Viewer.GUEST, wall, Optional.of(next),
                Optional.of(over), Evening.START.minusSeconds(80_000), Evening.ZONE)));
        return pages;
    }

    static String page(ClassView view, Studio studio) {
        return new Screens(() -> studio).page(ScreenKind.WALL, view, Viewer.GUEST);
    }

    public static Map<String, ClassView> views() {
        Map<String, ClassView> all = new LinkedHashMap<>();
        all.put("before", Evening.of("evening-pour", 8).view(-12));
        all.put("talk", Evening.of("evening-pour", 8).open(0, "welcome").view(3));
        all.put("talk-caution", talk().view(25));
        all.put("wicks", Evenings.wicks().view(19.5));
        all.put("six", six(6));
        all.put("twenty-four", wicks(24));
        all.put("forty", wicks(40));
        all.put("stir", talk().open(26, "mix").done(29, "mix", 1, 2).view(30));
        all.put("pour", Evenings.turns().view(42));
        all.put("finish", finish().view(112));
        all.put("finish-all", Evenings.trimOpens().view(101));
        all.put("closed", finish().event(120, new ClassEvent.ClassClosed()).view(121));
        all.put("long", pouring(longest()).view(8));
        all.put("german", pouring(german()).view(8));
        all.put("german-next", Evening.of(german(), 8, List.of("")).open(0, "welcome").view(2));
        all.put("thirty", thirty());
        all.put("one-long-caution", pouring(cautioned(HANDLE)).view(8));
        all.put("one-long-caution-alone", pouring(cautioned("")).view(8));
        return all;
    }

    /** While candles set, at tables of every size. */
    public static Map<String, ClassView> cures() {
        Map<String, ClassView> all = new LinkedHashMap<>();
        all.put("cure", Evenings.computed().computed(62));
        all.put("cure-early", Evenings.computed().computed(46));
        all.put("cure-measured", Evenings.computed().event(46, new ClassEvent.RoomRead(27)).computed(47));
        all.put("try", Evenings.read().event(85, new ClassEvent.JudgedSet(new SeatNumber(4))).computed(125));
        for (int seats : new int[] {6, 12, 24, 40}) {
            all.put("cure-" + seats, poured(seats).computed(62));
        }
        return all;
    }

    private static Evening talk() {
        int[] all = Evening.seats(1, 8);
        return Evening.of("evening-pour", 8).open(0, "welcome").done(8, "vessel", all).open(9, "wicks")
                .done(13, "wicks", all).open(16, "fragrance").done(21, "fragrance", all).open(24, "before-wax");
    }

    private static ClassView six(int seats) {
        return Evening.of("table-of-six", seats).open(0, "hello").done(7, "tin", Evening.seats(1, seats))
                .open(8, "wicks").done(12, "wicks", 1, 3, 6).view(13);
    }

    private static ClassView wicks(int seats) {
        return Evening.of("big-table", seats).open(0, "welcome").open(6, "vessel")
                .done(8, "vessel", Evening.seats(1, seats)).open(10, "wicks")
                .done(14, "wicks", Evening.seats(1, seats - 9)).view(19);
    }

    private static Evening poured(int seats) {
        int[] all = Evening.seats(1, seats);
        return Evening.of("big-table", seats).open(0, "welcome").open(5, "vessel").done(6, "vessel", all)
                .open(15, "wicks").open(20, "fragrance").open(25, "mix").open(30, "pour").done(34, "pour", all)
                .done(43, "centre", all).event(60, new ClassEvent.JudgedSet(new SeatNumber(3)));
    }

    private static Evening finish() {
        Evening evening = Evenings.cure();
        for (int seat : new int[] {1, 2, 5, 4, 6, 7}) {
            evening.event(98 + seat * 0.1, new ClassEvent.JudgedSet(new SeatNumber(seat)));
        }
        return evening.open(106, "trim").done(110, "trim", 1, 2, 4);
    }

    private static Evening pouring(Plan plan) {
        return Evening.of(plan, 8, List.of("")).open(0, "welcome").open(5, "vessel").done(7, "vessel", 1, 2, 3);
    }

    /** Everything as long as a plan may have it. */
    private static Plan longest() {
        return renamed(step -> step.kind() != StepKind.HANDS_ON ? step : worded(step,
                "Blend, weigh and slowly stir the fragrance into the warm wax",
                HANDLE,
                "Melted wax burns at once and keeps burning while it sticks to the skin. Sleeves back, no leaning over "
                + "a neighbour's jug; cool running water for any splash, and tell us. Fragrance oil can irritate skin "
                + "and eyes: wear gloves, keep it off the table edge, and follow the maker's safety sheet. An open "
                + "flame can set fire to a room: nothing burns on this table until every jug is back on its shelf."));
    }

    /** A caution of some 400 letters that is one sentence, below a heading as long as a plan may have it. */
    private static Plan cautioned(String wall) {
        return renamed(step -> step.kind() != StepKind.HANDS_ON ? step : worded(step,
                "Blend, weigh and slowly stir the fragrance into the warm wax", wall,
                "Melted wax burns at once and keeps burning while it sticks to the skin, so keep your sleeves "
                + "back, do not lean over a neighbour's jug, hold any splash under cool running water and tell "
                + "us, and as the oil of a fragrance can irritate skin and eyes, wear gloves, keep it off the "
                + "edge of the table, follow the maker's safety sheet and let nothing at all burn here until "
                + "each jug is back on its own shelf"));
    }

    /** Words as long as German makes them. */
    private static Plan german() {
        return renamed(step -> step.kind() != StepKind.HANDS_ON ? step : worded(step,
                "Duft\u00f6lmischungen abwiegen und einr\u00fchren",
                "Die Duft\u00f6lmischung langsam in das Sojawachs einr\u00fchren, "
                + "Sicherheitsdatenblattsangaben "
                + "beachten.",
                "Heisses Kerzenwachs verursacht Verbrennungen. Schutzhandschuhe und Sicherheitsbrillen tragen."));
    }

    private static Plan renamed(UnaryOperator<Step> step) {
        Plan plan = Evening.plan("evening-pour");
        return new Plan(plan.id(), plan.name(), plan.about(), plan.place(), plan.usualSeats(), plan.table(),
                plan.steps().stream().map(step).toList(), plan.activities(), plan.candles());
    }

    private static Step worded(Step step, String name, String wall, String caution) {
        return new Step(step.id(), name, step.kind(), step.opening(), step.planned(), step.allowance(), step.say(),
                caution, wall, step.picture(), step.stations());
    }

    /** As many steps as a plan may have. */
    private static ClassView thirty() {
        Plan plan = Evening.plan("evening-pour");
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < 18; i++) {
            Step step = plan.steps().get(1);
            steps.add(new Step(new StepId("more-" + i), "Choose and wipe the glass once more", step.kind(),
                    step.opening(), step.planned(), step.allowance(), "", "", step.wall(), step.picture(),
                    step.stations()));
        }
        steps.addAll(plan.steps());
        Plan longer = new Plan(plan.id(), plan.name(), plan.about(), plan.place(), plan.usualSeats(), plan.table(),
                steps, plan.activities(), plan.candles());
        Evening evening = Evening.of(longer, 8, List.of(""));
        for (int i = 0; i < 15; i++) {
            evening.open(i, "more-" + i).done(i + 0.5, "more-" + i, Evening.seats(1, 8));
        }
        return evening.view(17);
    }
}
