package benchpace.web.screen.wall;

import benchpace.board.view.ClassView;
import benchpace.live.ClassEvent;
import benchpace.plan.Activity;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import benchpace.web.screen.Evening;
import benchpace.web.screen.Evenings;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Candles that set, at tables of every size, in every state, under the longest words. */
final class CandleSituations {
    private CandleSituations() { }

    static Map<String, ClassView> all() {
        Map<String, ClassView> all = new LinkedHashMap<>();
        for (int seats : new int[] {1, 2, 4, 6, 8, 9, 12, 13, 24, 40}) {
            all.put("at-once-" + seats, poured(seats, 0).computed(50));
            all.put("spread-" + seats, poured(seats, 20.0 / seats).computed(70));
        }
        all.put("spread-8-later", some().computed(100));
        all.put("spread-8-try-it", some().computed(112));
        all.put("two-kinds", Evenings.computed().computed(62));
        all.put("moved", Evenings.read().computed(55));
        all.put("tried", Evenings.read().event(85, new ClassEvent.JudgedSet(seat(4))).computed(125));
        all.put("tried-12", judged(poured(12, 0), 3, 7).computed(130));
        all.put("tried-24", judged(poured(24, 0), 3, 7).computed(130));
        all.put("tried-40", judged(poured(40, 0), 3, 7).computed(130));
        all.put("one-not-poured", Evenings.apart().get("slow"));
        all.put("poured-again", poured(8, 0).event(40, new ClassEvent.PouredAgain(seat(2))).computed(50));
        all.put("one-left", poured(8, 0).event(40, new ClassEvent.SeatLeft(seat(5))).computed(50));
        all.put("by-figure", poured(8, 1).view(60));
        all.put("by-figure-24", poured(24, 0.5).view(60));
        all.put("one-behind", Evenings.cure().event(44, new ClassEvent.SeatArrived(seat(3), "")).computed(50));
        for (double minute : new double[] {45, 52, 60, 75, 95}) {
            all.put("german-" + (int) minute, poured(german(), 8, 1).computed(minute));
            all.put("german-at-once-" + (int) minute, poured(german(), 8, 0).computed(minute));
        }
        all.put("finishing", judged(poured(8, 2), 1, 2, 3).open(106, "trim").done(107, "trim", 1, 2).computed(108));
        all.put("finishing-12", judged(poured(12, 1), 1, 2, 3).open(96, "trim").done(97, "trim", 1, 2).computed(98));
        all.put("finishing-24", judged(poured(24, 1), 1, 2, 3).open(96, "trim").done(97, "trim", 1, 2).computed(98));
        all.put("finishing-40", judged(poured(40, 0.5), 1, 2, 3).open(96, "trim").done(97, "trim", 1, 2).computed(98));
        return all;
    }

    /** Two were tried, the first is past its range, the last is not. */
    private static Evening some() {
        return judged(poured(8, 4), 1, 2);
    }

    private static Evening judged(Evening evening, int... seats) {
        for (int seat : seats) {
            evening.event(95 + seat * 0.01, new ClassEvent.JudgedSet(seat(seat)));
        }
        return evening;
    }

    private static Evening poured(int seats, double apart) {
        return poured(Evening.plan("big-table"), seats, apart);
    }

    private static Evening poured(Plan plan, int seats, double apart) {
        int[] all = Evening.seats(1, seats);
        Evening evening = Evening.of(plan, seats, List.of("")).open(0, "welcome").open(5, "vessel")
                .done(6, "vessel", all).open(10, "wicks").done(12, "wicks", all).open(15, "fragrance")
                .done(16, "fragrance", all).open(20, "mix").done(22, "mix", all).open(30, "pour");
        for (int seat : all) {
            double at = 32 + seat * 0.02 + (seat - 1) * apart;
            evening.event(at, new ClassEvent.StepFinished(seat(seat), new StepId("pour")));
        }
        return evening;
    }

    /** Activities and places as long as German makes them, and as long as a plan may have them. */
    private static Plan german() {
        Plan plan = Evening.plan("big-table");
        List<String> names = List.of("Duft\u00f6lmischungen und Dochtbefestigungen genau kennenlernen",
                "Verpackungsschachteln falten und Geschenkb\u00e4nder zuschneiden");
        List<Activity> activities = plan.activities().stream().map(a -> a.isWrapping() ? a : new Activity(a.id(),
                names.get(plan.activities().indexOf(a) % 2), a.kind(), a.audience(), a.typical(), a.longest(),
                a.places(), a.needs(), a.interruptible(),
                "im Ausstellungsraum neben der Eingangst\u00fcr, links am Fenster", a.ledBy(), a.cue(), a.caution()))
                .toList();
        return new Plan(plan.id(), plan.name(), plan.about(), plan.place(), plan.usualSeats(), plan.table(),
                plan.steps(), activities, plan.candles());
    }

    private static SeatNumber seat(int number) {
        return new SeatNumber(number);
    }
}
