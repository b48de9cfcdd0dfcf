package benchpace.web.screen;

import benchpace.live.ClassEvent;
import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Made-up classes that are over: with stragglers, a second pour, activities, and candles that are tried or not. */
public final class PastEvenings {
    private PastEvenings() { }

    /** The same seed gives the same evening, closed long before its minute 200. */
    public static Evening of(long seed) {
        Random random = new Random(seed);
        int seats = 3 + random.nextInt(6);
        Evening evening = Evening.of("evening-pour", seats).open(0, "welcome");
        double at = 4;
        for (String step : List.of("vessel", "wicks", "fragrance", "mix", "pour")) {
            double opened = step.equals("vessel") ? 4 : at + random.nextInt(3);
            if (!step.equals("vessel")) {
                if (step.equals("mix")) {
                    evening.open(opened, "before-wax");
                }
                evening.open(opened + 0.1, step);
            }
            double last = opened;
            double[] done = new double[seats + 1];
            for (int seat = 1; seat <= seats; seat++) {
                done[seat] = opened + 1.5 + 3 * random.nextDouble() + (random.nextInt(8) == 0 ? 4 + 9
                        * random.nextDouble() : 0);
                last = Math.max(last, done[seat]);
            }
            for (int seat : byTime(done)) {
                evening.done(done[seat], step, seat);
            }
            at = last + 0.5;
        }
        waited(evening, random, seats, at);
        return evening;
    }

    private static List<Integer> byTime(double[] at) {
        List<Integer> seats = new ArrayList<>();
        for (int seat = 1; seat < at.length; seat++) {
            seats.add(seat);
        }
        seats.sort((a, b) -> Double.compare(at[a], at[b]));
        return seats;
    }

    private static void waited(Evening evening, Random random, int seats, double poured) {
        for (int seat = 1; seat <= seats; seat++) {
            double at = poured + 0.3 * seat;
            SeatNumber number = new SeatNumber(seat);
            switch (random.nextInt(4)) {
                case 0 -> evening.event(at, new ClassEvent.PouredAgain(number));
                case 1 -> evening.event(at, new ClassEvent.ActivityJoined(number, new ActivityId("labels")));
                case 2 -> evening.event(at, new ClassEvent.SeatNoted(number, "note, \"" + seat + "\""));
                default -> evening.event(at, new ClassEvent.SeatPaused(number));
            }
        }
        for (int seat = 1; seat <= seats; seat++) {
            if (random.nextInt(3) > 0) {
                evening.event(poured + 50 + 2 * seat + random.nextInt(2), new ClassEvent.JudgedSet(
                        new SeatNumber(seat)));
            }
        }
        evening.open(poured + 75, "trim").event(poured + 90, new ClassEvent.ClassClosed());
    }
}
