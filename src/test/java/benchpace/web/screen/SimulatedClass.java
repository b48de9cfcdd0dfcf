package benchpace.web.screen;

import benchpace.board.cooling.CureClock;
import benchpace.board.cooling.PlanCureClock;
import benchpace.board.cooling.RoomCureClock;
import benchpace.board.pacing.ForecastOnly;
import benchpace.board.view.ClassView;
import benchpace.board.view.ViewMaker;
import benchpace.cure.room.RoomFit;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.List;
import java.util.Random;

/**
 * An invented class somewhere between its first pour and its last trim: jug by jug, with stragglers, two kinds of
 * candle, guests who leave, share or go away for a moment, readings, hand tests before and after their time, and finish
 * steps opened early. The same number, the same class.
 *
 * @param computed whether the cure is computed, else the plan's figure
 */
record SimulatedClass(long number, boolean computed, LiveClass live, Instant now) {
    private static final CureClock ROOM = new RoomCureClock((id, room) -> RoomFit.untaught());
    private static final CureClock FIGURE = new PlanCureClock();
    private static final int[] SIZES = {6, 8, 8, 12, 24, 40};
    private static final Plan WAITING = Evening.plan("big-table");
    private static final Plan PLAIN = new Plan(WAITING.id(), WAITING.name(), WAITING.about(), WAITING.place(),
            WAITING.usualSeats(), WAITING.table(), WAITING.steps(), List.of(), WAITING.candles());

    static SimulatedClass of(long number) {
        Random random = new Random(number * 7919);
        boolean computed = number % 2 == 0;
        boolean waits = number % 25 == 0;
        int seats = waits ? 8 : SIZES[random.nextInt(SIZES.length)];
        Evening evening = Evening.of(waits ? WAITING : PLAIN, seats, List.of(""))
                .event(-3, new ClassEvent.GuestsMayTell(true));
        if (random.nextInt(5) == 0) {
            evening.event(-2, new ClassEvent.SeatPaired(new SeatNumber(2), new SeatNumber(1)));
        }
        evening.open(0, "welcome").open(5, "vessel").open(10, "wicks").open(18, "fragrance").open(24, "mix")
                .open(29, "pour");
        double[] poured = new double[seats + 1];
        double jug = 30;
        for (int seat = 1; seat <= seats; seat++) {
            jug += seat % 6 == 0 ? 2 + random.nextDouble() * 4 : 0;
            poured[seat] = jug + random.nextDouble() * 2.5 + (random.nextInt(12) == 0 ? 5 + random.nextInt(20) : 0);
        }
        double last = java.util.Arrays.stream(poured).max().orElseThrow();
        double now = minute(random, last);
        boolean seen = !computed || random.nextInt(4) == 0;
        double opened = random.nextInt(3) == 0 ? last + 20 + random.nextInt(60) : Double.MAX_VALUE;
        for (int seat = 1; seat <= seats; seat++) {
            if (poured[seat] <= now) {
                candle(evening, random, seat, poured[seat], now, seen, opened);
            }
        }
        if (opened <= now) {
            evening.open(opened, "trim");
            for (int seat = 1; seat <= seats; seat++) {
                double at = opened + 2 + random.nextInt(20);
                if (poured[seat] + 50 < at && at <= now && random.nextInt(3) == 0) {
                    evening.done(at, "trim", seat);
                }
            }
        }
        return new SimulatedClass(number, computed, evening.live(), Evening.at(now));
    }

    private static void candle(Evening evening, Random random, int seat, double poured, double now, boolean seen,
                               double opened) {
        SeatNumber number = new SeatNumber(seat);
        if (random.nextInt(5) == 0) {
            evening.event(20, new ClassEvent.CandleChosen(number,
                    WAITING.candles().get(random.nextInt(WAITING.candles().size())).id()));
        }
        evening.done(poured, "pour", seat);
        if (random.nextInt(10) > 0 && poured + 2 <= now) {
            evening.done(poured + 2, "centre", seat);
        }
        double judged = poured + 45 + random.nextInt(45);
        int fate = random.nextInt(20);
        if (fate == 0 && poured + 10 < now) {
            evening.event(poured + 10, new ClassEvent.SeatPaused(number));
        } else if (fate == 1 && poured + 15 < now) {
            evening.event(poured + 15, new ClassEvent.SeatLeft(number));
        } else if (fate == 2 && poured + 5 < now) {
            evening.event(poured + 5, new ClassEvent.PouredAgain(number));
        } else if (seen && fate > 12 && judged <= now && judged < opened) {
            evening.event(judged, new ClassEvent.JudgedSet(number));
        }
    }

    /** Anywhere in the wait, and often within seconds of a full five minutes, where what is said changes. */
    private static double minute(Random random, double lastPour) {
        double any = 33 + random.nextDouble() * (lastPour + 75 - 33);
        return switch (random.nextInt(4)) {
            case 0 -> Math.rint(any / 5) * 5;
            case 1 -> Math.rint(any / 5) * 5 + (random.nextBoolean() ? 0.5 : -0.25);
            default -> any;
        };
    }

    ClassView view() {
        return new ViewMaker(computed ? ROOM : FIGURE, new ForecastOnly(), Evening.ZONE).view("simulated", live, now);
    }
}
