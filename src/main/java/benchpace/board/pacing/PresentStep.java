package benchpace.board.pacing;

import benchpace.live.ClassReach;
import benchpace.live.LiveClass;
import benchpace.live.OpenStep;
import benchpace.plan.Plan;
import benchpace.plan.Step;
import benchpace.plan.StepKind;
import java.time.Instant;
import java.util.Optional;

/**
 * The step under which the class stands on every screen: its heading, its script, its caution. It is the step the class
 * has open, whoever is slow or late. Whatever shows a class by itself has to say the same:
 * <ol>
 * <li>Take the furthest led step that is open. Steps after the cure count as open here once a candle was judged set or
 * is past the cure, or while one may be firm by its clock: until then the class waits, and the cure is the
 * heading.</li>
 * <li>Of the free steps after it (up to the next led one, talks left out) take the furthest that more than half of the
 * seats making a candle have reached. A seat has reached a step when nothing between its furthest finished step and
 * that step wants a tap or, being the cure, a hand test.</li>
 * <li>A led talk is the heading until its time box ends or one seat is done with something after it; then it is the
 * free step after the talk, if there is one.</li>
 * <li>What was the heading once, by the same rule after an earlier event, is never gone back behind
 * ({@link ClassReach}): from a heading that is known, the next is the further of it and of what the rule says after the
 * next tap.</li>
 * </ol>
 * So it goes back only with an undo, a correction, or a reading that lets no candle be firm yet after all while none
 * has been tried: nothing soft is trimmed for the sake of a heading. Pure.
 *
 * @param step  empty while nothing is open
 * @param index its position in the plan; -1 while nothing is open
 * @param since since when the class has been at it
 */
public record PresentStep(Optional<Step> step, int index, Instant since) {

    /** @param mayBeFirm whether by its clock some candle may be firm now */
    public static PresentStep of(LiveClass live, boolean mayBeFirm, Instant now) {
        ClassReach reach = live.reach();
        OpenStep open = reach.firm() || mayBeFirm ? reach.whole() : reach.upToCure();
        if (open.index() < 0) {
            return new PresentStep(Optional.empty(), -1, open.since());
        }
        OpenStep at = afterTalk(live, open, now).orElse(open);
        return new PresentStep(Optional.of(live.plan().steps().get(at.index())), at.index(), since(live, at));
    }

    /** Whether the class has gone on from its candles: it is past the cure and past every step that finishes them. */
    public boolean isPastTheCandles(Plan plan) {
        return plan.steps().stream().filter(s -> s.kind() == StepKind.CURE || s.kind() == StepKind.FINISH)
                .reduce((first, last) -> last).filter(last -> plan.indexOf(last.id()) < index).isPresent();
    }

    /** A class whose guests began before it was meant to has been at its first step since they did. */
    private static Instant since(LiveClass live, OpenStep at) {
        boolean meant = at.since().equals(live.startsAt()) || at.since().equals(live.createdAt());
        return meant && ClassTracks.origin(live).isBefore(at.since()) ? ClassTracks.origin(live) : at.since();
    }

    /** The free step after a talk whose time box is over, if the class has come no further without it. */
    private static Optional<OpenStep> afterTalk(LiveClass live, OpenStep open, Instant now) {
        Plan plan = live.plan();
        Optional<Step> led = plan.steps().subList(0, open.index() + 1).stream()
                .filter(step -> live.openedAt(step.id()).isPresent()).reduce((first, second) -> second)
                .filter(step -> step.kind() == StepKind.TALK);
        Optional<Instant> boxEnds = led.flatMap(talk -> live.openedAt(talk.id()).map(at -> at.plus(talk.planned())));
        Optional<Integer> next = led.flatMap(talk -> plan.freeAfter(plan.indexOf(talk.id())).stream().findFirst())
                .filter(step -> step > open.index() || step == open.index() && open.since().isAfter(boxEnds.get()));
        return boxEnds.filter(end -> !now.isBefore(end)).flatMap(end -> next.map(step -> new OpenStep(step, end)));
    }
}
