package benchpace.web.screen;

import benchpace.board.prep.Occasion;
import benchpace.board.prep.Odds;
import benchpace.board.prep.Ticked;
import benchpace.cure.room.TrajectoryCache;
import benchpace.plan.Plan;
import benchpace.plan.TestPlans;
import benchpace.prep.card.LabelRegion;
import benchpace.prep.evening.Evenings;
import benchpace.prep.evening.Setting;
import benchpace.prep.evening.WhatWouldHelp;
import benchpace.prep.sheet.PrepSheet;
import benchpace.web.prep.LaidTable;
import benchpace.web.screen.prep.PrepGiven;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The prep page in many situations. */
final class PrepSituations {
    private static final Viewer LEAD = new Viewer(Role.INSTRUCTOR, "");
    private static final Times TIMES = new Times(Evening.ZONE);

    private PrepSituations() { }

    static Map<String, PrepGiven> all() {
        Map<String, PrepGiven> all = new LinkedHashMap<>();
        Evenings evenings = Evenings.of(Setting.of(LaidTable.plan(), LaidTable.SEATS), 1, 200, new TrajectoryCache(),
                Evenings.Progress.UNTOLD);
        Odds told = new Odds.Told(evenings.timetable(), Optional.of(WhatWouldHelp.of(evenings, new TrajectoryCache(),
                Evenings.Progress.UNTOLD)));
        Instant before = Evening.START.minus(Duration.ofHours(3));
        all.put("class", given(LaidTable.plan(), told, true, before, LEAD));
        all.put("class-late", given(LaidTable.plan(), new Odds.UnderWay(800, 2000), true,
                Evening.START.minus(Duration.ofMinutes(20)), LEAD));
        all.put("class-helper", given(LaidTable.plan(), new Odds.Missing(), true, before,
                new Viewer(Role.HELPER, "MO")));
        all.put("class-empty", given(TestPlans.evening(), told, true, before, LEAD));
        all.put("plan", given(LaidTable.plan(), told, false, before, LEAD));
        all.put("failing", new PrepGiven("evening", "Evening pour", Occasion.of(LaidTable.plan(), 6, Map.of()),
                PrepSituations::failing, () -> {
                    throw new IllegalStateException("a broken model");
                }, Optional.of(new PrepGiven.OfClass(Evening.START, true)), Ticked.NOTHING,
                "{\"revision\":0,\"ticks\":{}}", LabelRegion.EUROPEAN_UNION, Optional.empty(), "", before, TIMES,
                LEAD));
        return all;
    }

    private static PrepSheet failing() {
        throw new IllegalStateException("a broken model");
    }

    private static PrepGiven given(Plan plan, Odds odds, boolean ofClass, Instant now, Viewer viewer) {
        Occasion occasion = Occasion.of(plan, LaidTable.SEATS, Map.of(TestPlans.CANDLE, 2));
        return new PrepGiven("evening", "Evening pour", occasion,
                () -> PrepSheet.of(plan, occasion.seats(), occasion.candles()), () -> odds,
                ofClass ? Optional.of(new PrepGiven.OfClass(Evening.START, true)) : Optional.empty(), Ticked.NOTHING,
                "{\"revision\":1,\"ticks\":{\"place:wick\":{\"by\":\"MO\",\"at\":\"2027-03-04T16:12:00Z\"}}}",
                LabelRegion.of(plan.kit()).get(0), Optional.of(new PrepGiven.Book("evening-pour", false)), "", now,
                TIMES, viewer);
    }
}
