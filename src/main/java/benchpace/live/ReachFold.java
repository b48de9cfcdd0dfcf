package benchpace.live;

import benchpace.plan.Plan;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;

/** The {@link ClassReach} while the fold writes on it, event by event. */
final class ReachFold {
    private final Plan plan;
    private final int cure;
    private final Instant begins;
    private OpenStep upToCure;
    private OpenStep whole;
    private boolean firm;

    ReachFold(Plan plan, Instant begins) {
        this.plan = plan;
        this.begins = begins;
        this.cure = plan.cure().map(c -> plan.indexOf(c.id())).orElse(plan.steps().size());
        this.upToCure = new OpenStep(-1, begins);
        this.whole = upToCure;
    }

    /** The class stands as it does after an event that was made at that instant. */
    void see(Map<StepId, Instant> opened, Collection<SeatFold> seats, Instant at) {
        List<CandleFold> makers = makers(seats);
        firm = firm || makers.stream().anyMatch(candle -> candle.furthest > cure || judgedSet(candle));
        int led = furthest(opened, plan.steps().size());
        int ledUpToCure = furthest(opened, cure);
        whole = whole.orFurther(led < 0 ? unled(makers, at) : led(led, makers, opened, at));
        upToCure = upToCure.orFurther(ledUpToCure < 0 ? unled(makers, at) : led(ledUpToCure, makers, opened, at));
    }

    private static List<CandleFold> makers(Collection<SeatFold> seats) {
        List<CandleFold> makers = new ArrayList<>(seats.size());
        for (SeatFold seat : seats) {
            if (seat.present() && seat.sharesWith.isEmpty()) {
                makers.add(seat.candle);
            }
        }
        return makers;
    }

    private int furthest(Map<StepId, Instant> opened, int upTo) {
        for (int i = Math.min(upTo, plan.steps().size() - 1); i >= 0; i--) {
            if (opened.containsKey(plan.steps().get(i).id())) {
                return i;
            }
        }
        return -1;
    }

    /** Before the first led step: the class begins with what is free. */
    private OpenStep unled(List<CandleFold> makers, Instant at) {
        if (plan.steps().get(0).led()) {
            return new OpenStep(-1, begins);
        }
        List<Integer> free = plan.freeAfter(-1);
        int first = free.isEmpty() ? 0 : free.get(0);
        int most = most(free, makers, first);
        return new OpenStep(most, most == first ? begins : at);
    }

    private OpenStep led(int led, List<CandleFold> makers, Map<StepId, Instant> opened, Instant at) {
        Step step = plan.steps().get(led);
        OpenStep there = new OpenStep(led, opened.get(step.id()));
        List<Integer> free = plan.freeAfter(led);
        if (step.kind() != StepKind.TALK) {
            return there.orFurther(new OpenStep(most(free, makers, led), at));
        }
        boolean heard = free.isEmpty() || makers.stream().allMatch(candle -> candle.furthest <= led);
        return heard ? there : new OpenStep(most(free, makers, free.get(0)), at);
    }

    /** The furthest of the free steps that most have reached; the other one if they have reached none. */
    private int most(List<Integer> free, List<CandleFold> makers, int otherwise) {
        int[] positions = makers.stream().mapToInt(this::position).sorted().toArray();
        int half = positions.length == 0 ? -1 : positions[(positions.length - 1) / 2]; // more than half are there
        int furthest = otherwise;
        for (int step : free) {
            furthest = step <= half ? step : furthest;
        }
        return furthest;
    }

    /** The first step after the furthest finished one that still wants something of the seat. */
    private int position(CandleFold candle) {
        for (int i = candle.furthest + 1; i < plan.steps().size(); i++) {
            Step step = plan.steps().get(i);
            if (step.needsTap() || step.kind() == StepKind.CURE && !judgedSet(candle)) {
                return i;
            }
        }
        return plan.steps().size();
    }

    private boolean judgedSet(CandleFold candle) {
        return candle.judgedSetAt.isPresent()
                && candle.judgedSince(Progress.firstPour(plan, candle.finishes)).isPresent();
    }

    ClassReach freeze() {
        return new ClassReach(upToCure, whole, firm);
    }
}
