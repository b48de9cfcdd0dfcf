package benchpace.live;

import benchpace.plan.Plan;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where the seats of a class stand in its plan. A seat stands behind the furthest step it has finished; a step below
 * that without a tap is a gap it jumped over.
 */
public final class Progress {
    private final LiveClass live;
    private final Plan plan;
    private final int furthestOpened;

    Progress(LiveClass live) {
        this.live = live;
        this.plan = live.plan();
        this.furthestOpened = live.furthestOpened();
    }

    /** Whether any seat may be at this step: led ones once opened, free ones once the led step before them is. */
    public boolean isOpen(Step step) {
        if (step.led()) {
            return live.openedAt(step.id()).isPresent();
        }
        return firstClosedLedBefore(step.id()).isEmpty();
    }

    /** The led step, not opened nor passed over, that keeps this one closed. */
    public Optional<StepId> firstClosedLedBefore(StepId step) {
        int index = plan.indexOf(step);
        for (int i = furthestOpened + 1; i < index; i++) {
            if (plan.steps().get(i).led()) {
                return Optional.of(plan.steps().get(i).id());
            }
        }
        return Optional.empty();
    }

    /** Position of the furthest step the seat has finished; -1 if none. */
    public int furthestFinished(Seat seat) {
        return seat.finishes().keySet().stream().mapToInt(plan::indexOf).max().orElse(-1);
    }

    /** The steps that the seat jumped over without a tap, in order. */
    public List<Step> gaps(Seat seat) {
        List<Step> gaps = new ArrayList<>();
        for (Step step : plan.steps().subList(0, furthestFinished(seat) + 1)) {
            if (step.needsTap() && !seat.finished(step.id())) {
                gaps.add(step);
            }
        }
        return gaps;
    }

    /**
     * When the seat's candle was poured: the second pour if there was one, else the tap; for a seat that jumped over
     * its pour, the first tap after it.
     */
    public Optional<Instant> pouredAt(Seat seat) {
        if (seat.pouredAgainAt().isPresent()) {
            return seat.pouredAgainAt();
        }
        Optional<Step> pour = plan.pour();
        if (pour.isEmpty()) {
            return Optional.empty();
        }
        int from = plan.indexOf(pour.get().id());
        for (Step step : plan.steps().subList(from, plan.steps().size())) {
            Seat.Finish finish = seat.finishes().get(step.id());
            if (finish != null) {
                return Optional.of(finish.at());
            }
        }
        return Optional.empty();
    }

    /** Where the seat stands. */
    public Standing standing(Seat seat) {
        Optional<Standing> apart = apart(seat);
        if (apart.isPresent()) {
            return apart.get();
        }
        int done = furthestFinished(seat);
        Instant free = freeSince(seat, done);
        Standing standing = ahead(seat, done, free);
        return seat.pausedSince()
                .map(since -> new Standing(Standing.Phase.PAUSED, standing.step(), since))
                .orElse(standing);
    }

    private Optional<Standing> apart(Seat seat) {
        Standing.Phase phase = switch (seat.presence()) {
            case EXPECTED -> Standing.Phase.EXPECTED;
            case LEFT -> Standing.Phase.LEFT;
            case PRESENT -> seat.sharesWith().isPresent() ? Standing.Phase.SHARING : null;
        };
        return Optional.ofNullable(phase).map(p -> new Standing(p, Optional.empty(), seat.presenceSince()));
    }

    private Standing ahead(Seat seat, int done, Instant free) {
        Instant since = free;
        for (int i = done + 1; i < plan.steps().size(); i++) {
            Step step = plan.steps().get(i);
            if (step.kind() == StepKind.TALK) {
                if (talkIsOver(i)) {
                    since = later(since, endOfTalkBox(step));
                    continue;
                }
                return step.led() && live.openedAt(step.id()).isPresent()
                        ? new Standing(Standing.Phase.LISTENING, Optional.of(step), live.openedAt(step.id()).get())
                        : new Standing(Standing.Phase.WAITING, Optional.of(step), since);
            }
            if (step.kind() == StepKind.CURE) {
                if (seat.judgedSetAt().isEmpty() && !ledOpenedAfter(i)) {
                    return new Standing(Standing.Phase.CURING, Optional.of(step), pouredAt(seat).orElse(since));
                }
                since = seat.judgedSetAt().map(t -> later(free, t)).orElse(since);
                continue;
            }
            if (!isOpen(step)) {
                return new Standing(Standing.Phase.WAITING, Optional.of(step), since);
            }
            Instant from = live.openedAt(step.id()).filter(t -> step.led()).orElse(since);
            return new Standing(Standing.Phase.WORKING, Optional.of(step), later(since, from));
        }
        return new Standing(Standing.Phase.DONE, Optional.empty(), since);
    }

    /** A led talk lasts until something after it is open; a free one never holds anybody. */
    private boolean talkIsOver(int index) {
        Step talk = plan.steps().get(index);
        if (!talk.led() || ledOpenedAfter(index)) {
            return true;
        }
        boolean nextIsFree = index + 1 < plan.steps().size() && !plan.steps().get(index + 1).led();
        return nextIsFree && live.openedAt(talk.id()).isPresent();
    }

    private boolean ledOpenedAfter(int index) {
        return furthestOpened > index;
    }

    /** A free step behind a talk counts from the end of the talk's time box. */
    private Instant endOfTalkBox(Step talk) {
        int next = plan.indexOf(talk.id()) + 1;
        boolean nextIsFree = next < plan.steps().size() && !plan.steps().get(next).led();
        return live.openedAt(talk.id()).filter(t -> nextIsFree).map(t -> t.plus(talk.planned())).orElse(Instant.MIN);
    }

    private Instant freeSince(Seat seat, int done) {
        Instant begun = later(live.createdAt(), live.startsAt());
        if (done < 0) {
            Instant opened = live.plan().steps().get(0).led()
                    ? live.openedAt(plan.steps().get(0).id()).orElse(begun) : begun;
            boolean cameLate = seat.presenceSince().isAfter(opened);
            return cameLate ? seat.presenceSince() : opened;
        }
        Seat.Finish finish = seat.finishes().get(plan.steps().get(done).id());
        return later(finish.at(), seat.presenceSince());
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }

    /** How long the seat has been as it stands, time away from the table taken out. Never negative. */
    public Duration timeIn(Seat seat, Standing standing, Instant now) {
        if (!now.isAfter(standing.since())) {
            return Duration.ZERO;
        }
        Duration all = Duration.between(standing.since(), now);
        return standing.phase() == Standing.Phase.PAUSED
                ? all : all.minus(seat.pausedWithin(standing.since(), now));
    }
}
