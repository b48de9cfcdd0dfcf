package benchpace.breaks.search;

import benchpace.breaks.Presence;
import benchpace.breaks.ReadyRange;
import benchpace.breaks.SeatWait;
import benchpace.breaks.SetJudgement;
import benchpace.breaks.WaitPlan;
import benchpace.breaks.WaitProblem;
import benchpace.plan.Activity;
import benchpace.plan.Activity.Audience;
import benchpace.plan.Activity.Need;
import benchpace.plan.ActivityId;
import benchpace.plan.ActivityKind;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Invented classes for the tests. The lengths of activities (label 10 to 15 min, short craft 10 to 20, long craft 30
 * to 45, about an hour for a candle to set) are common practice, no source.
 */
public final class Evenings {
    public static final Instant SEVEN = Instant.parse("2027-03-04T19:00:00Z");

    private Evenings() { }

    public static Instant at(int minutesPastSeven) {
        return SEVEN.plusSeconds(60L * minutesPastSeven);
    }

    public static SeatNumber seat(int n) {
        return new SeatNumber(n);
    }

    public static ActivityId id(String name) {
        return new ActivityId(name);
    }

    public static Activity activity(String id, ActivityKind kind, Audience audience, int typical, int longest,
                                    int places, boolean interruptible, Need... needs) {
        return new Activity(id(id), id, kind, audience, Duration.ofMinutes(typical), Duration.ofMinutes(longest),
                places, Set.of(needs), interruptible, "at the back", "", "", "");
    }

    public static Activity labels(int places) {
        return activity("labels", ActivityKind.LABELS, Audience.OWN_PACE, 12, 15, places, false, Need.HANDS_FREE);
    }

    public static Activity shortCraft(int places) {
        return activity("short-craft", ActivityKind.SHORT_CRAFT, Audience.OWN_PACE, 15, 20, places, false);
    }

    public static Activity longCraft(int places) {
        return activity("long-craft", ActivityKind.LONG_CRAFT, Audience.OWN_PACE, 35, 45, places, false,
                Need.HANDS_FREE, Need.TABLE_CLEAR);
    }

    public static Activity cleanUp(int places) {
        return activity("clean-up", ActivityKind.CLEAN_UP, Audience.OWN_PACE, 5, 8, places, false);
    }

    public static Activity refreshments(int places) {
        return activity("refreshments", ActivityKind.REFRESHMENTS, Audience.OWN_PACE, 15, 20, places, true);
    }

    public static Activity browsing(int places) {
        return activity("browsing", ActivityKind.BROWSING, Audience.OWN_PACE, 10, 20, places, true);
    }

    public static Activity wrapping(int places) {
        return activity("wrapping", ActivityKind.WRAPPING, Audience.OWN_PACE, 5, 8, places, false);
    }

    public static Activity together(int typical, int longest, int places) {
        return activity("toast", ActivityKind.REFRESHMENTS, Audience.WHOLE_CLASS, typical, longest, places, false);
    }

    public static SeatWait seat(int n, int freeAt, int p10, int p50, int p90) {
        return SeatWait.of(seat(n), at(freeAt), new ReadyRange(at(p10), at(p50), at(p90)));
    }

    /** A usual evening: pours spread over half an hour, an hour to set, places for about a quarter of the seats. */
    public static WaitProblem usual(int seats, boolean withClassBreak) {
        return usual(seats, withClassBreak, 19 + seats);
    }

    /** The same with other pours. */
    public static WaitProblem usual(int seats, boolean withClassBreak, long seed) {
        List<Activity> activities = new ArrayList<>(List.of(cleanUp(Math.max(2, seats / 4)),
                labels(Math.max(2, seats / 4)), shortCraft(Math.max(2, seats / 5)),
                longCraft(Math.max(2, seats / 4)), refreshments(Math.max(3, seats / 5)),
                browsing(Math.max(2, seats / 8)), wrapping(Math.max(2, seats / 6))));
        if (withClassBreak) {
            activities.add(together(10, 12, SeatNumber.MOST));
        }
        Random random = new Random(seed);
        List<SeatWait> waits = new ArrayList<>();
        for (int n = 1; n <= seats; n++) {
            int free = random.nextInt(25);
            int p50 = free + 55 + random.nextInt(12);
            waits.add(seat(n, free, p50 - 8, p50, p50 + 11));
        }
        return WaitProblem.first(SEVEN, activities, waits, at(110));
    }

    /** A class in which anything may be the case, the same for the same seed. */
    public static WaitProblem random(int seats, long seed) {
        Random r = new Random(seed);
        List<Activity> activities = new ArrayList<>(List.of(cleanUp(1 + r.nextInt(8)),
                labels(2 + r.nextInt(6)), shortCraft(2 + r.nextInt(6)),
                longCraft(2 + r.nextInt(6)), refreshments(2 + r.nextInt(8)),
                browsing(2 + r.nextInt(4))));
        if (r.nextBoolean()) {
            activities.add(together(5 + r.nextInt(10), 15 + r.nextInt(4), r.nextInt(60) + 1));
        }
        if (r.nextInt(4) > 0) {
            activities.add(wrapping(1 + r.nextInt(6)));
        }
        SetJudgement ahead = new SetJudgement.Awaited(Duration.ofMinutes(2 * r.nextInt(4)));
        List<SeatWait> waits = new ArrayList<>();
        for (int n = 1; n <= seats; n++) {
            int free = r.nextInt(30);
            int p50 = free + 20 + r.nextInt(60);
            SeatWait seat = seat(n, free, p50 - r.nextInt(10), p50, p50 + r.nextInt(15)).with(ahead);
            waits.add(switch (r.nextInt(12)) {
                case 0 -> seat.with(new Presence.Paused());
                case 1 -> seat.with(new Presence.LeavingAt(at(free + r.nextInt(70))));
                case 2 -> new SeatWait(seat.seat(), seat.freeFrom(), seat.ready(), seat.presence(), List.of(),
                        at(free + 10 + r.nextInt(40)));
                case 3 -> SeatWait.of(seat.seat(), at(-70), ReadyRange.exactly(at(-2)))
                        .with(new SetJudgement.Given(at(-2), r.nextBoolean() ? Optional.empty()
                                : Optional.of(at(r.nextInt(6))), Duration.ofMinutes(4)));
                case 4 -> n == 1 ? seat : seat.sharing(seat(n - 1));
                default -> seat;
            });
        }
        return WaitProblem.first(SEVEN, activities, waits, at(80 + r.nextInt(60)));
    }

    /** A small class with lengths of a few minutes, so that every plan can be tried. */
    public static WaitProblem tiny(long seed, int seats, int mostMinutes) {
        Random r = new Random(seed);
        List<Activity> activities = new ArrayList<>();
        ActivityKind[] kinds = {ActivityKind.LABELS, ActivityKind.REFRESHMENTS, ActivityKind.CLEAN_UP,
                ActivityKind.LONG_CRAFT, ActivityKind.BROWSING};
        int count = 2 + r.nextInt(2);
        for (int k = 0; k < count; k++) {
            int typical = 1 + r.nextInt(4);
            Set<Need> needs = r.nextInt(3) == 0 ? EnumSet.of(Need.TABLE_CLEAR) : Set.of();
            activities.add(activity("a" + k, kinds[r.nextInt(kinds.length)], Audience.OWN_PACE, typical,
                    typical + r.nextInt(3), 1 + r.nextInt(2), r.nextBoolean(), needs.toArray(new Need[0])));
        }
        if (r.nextInt(3) == 0) {
            int typical = 1 + r.nextInt(2);
            activities.add(together(typical, typical + r.nextInt(2), SeatNumber.MOST));
        }
        if (r.nextBoolean()) {
            activities.add(wrapping(1 + r.nextInt(2)));
        }
        List<SeatWait> waits = new ArrayList<>();
        for (int n = 1; n <= seats; n++) {
            int free = 1 + r.nextInt(3);
            int p50 = free + mostMinutes - r.nextInt(4);
            waits.add(seat(n, free, p50 - r.nextInt(3), p50, p50 + r.nextInt(3)));
        }
        return WaitProblem.first(SEVEN, activities, waits, at(40));
    }

    /** Seats without a label or a clean-up that the class offers. */
    public static int missed(WaitProblem problem, WaitPlan plan) {
        int missed = 0;
        for (Activity a : problem.activities()) {
            if (a.kind() == ActivityKind.LABELS || a.kind() == ActivityKind.CLEAN_UP) {
                missed += (int) plan.strips().stream()
                        .filter(s -> s.parts().stream().noneMatch(p -> p.activity().equals(a.id()))).count();
            }
        }
        return missed;
    }
}
