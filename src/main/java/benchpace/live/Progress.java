package benchpace.live;

import benchpace.plan.Plan;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
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

    /**
     * Whether any seat may be at this step: led ones once opened, free ones once the led step before them is. A led
     * step whose opening was taken back while a later one stayed open counts as open, so that nobody is locked out.
     */
    public boolean isOpen(Step step) {
        if (step.led()) {
            boolean passedOver = step.needsTap() && plan.indexOf(step.id()) < furthestOpened;
            return passedOver || live.openedAt(step.id()).isPresent();
        }
        return firstClosedLedBefore(step.id()).isEmpty();
    }

    /** The led step, not opened nor passed over, that keeps this one closed. */
    Optional<StepId> firstClosedLedBefore(StepId step) {
        int index = plan.indexOf(step);
        for (int i = furthestOpened + 1; i < index; i++) {
            if (plan.steps().get(i).led()) {
                return Optional.of(plan.steps().get(i).id());
            }
        }
        return Optional.empty();
    }

    /** Position of the furthest step the seat has finished; -1 if none. */
    int furthestFinished(Seat seat) {
        return seat.finishes().keySet().stream().mapToInt(plan::indexOf).max().orElse(-1);
    }

    /**
     * When the first step after the cure was tapped for the wax now in the vessel: nobody trims liquid wax, so it is
     * set. A tap from before it was poured again was for the candle before.
     */
    public Optional<Instant> finishedAfterCure(Seat seat) {
        int cure = plan.cure().map(c -> plan.indexOf(c.id())).orElse(Integer.MAX_VALUE);
        return seat.finishes().entrySet().stream().filter(f -> plan.indexOf(f.getKey()) > cure)
                .map(f -> f.getValue().at()).filter(at -> ofThisWax(seat, at)).min(Comparator.naturalOrder());
    }

    /** Whether what was told at that instant can be of the wax now in the vessel, as far as pouring again goes. */
    public static boolean ofThisWax(Seat seat, Instant at) {
        return seat.pouredAgainAt().filter(at::isBefore).isEmpty();
    }

    /** When a hand decided on the seat's candle: the hand test, else the first tap after the cure. */
    public Optional<Instant> settledAt(Seat seat) {
        return seat.judgedSetAt().or(() -> finishedAfterCure(seat));
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
        return seat.pouredAgainAt().or(() -> firstPour(plan, seat.finishes()));
    }

    static Optional<Instant> firstPour(Plan plan, Map<StepId, Seat.Finish> finishes) {
        int pour = finishes.isEmpty() ? -1 : plan.pour().map(step -> plan.indexOf(step.id())).orElse(-1);
        for (int i = pour; i >= 0 && i < plan.steps().size(); i++) {
            Seat.Finish finish = finishes.get(plan.steps().get(i).id());
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
        Standing standing = ahead(seat);
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

    private Standing ahead(Seat seat) {
        int done = furthestFinished(seat);
        Instant since = freeSince(seat, done);
        for (int i = done + 1; i < plan.steps().size(); i++) {
            Step step = plan.steps().get(i);
            if (step.kind() == StepKind.TALK) {
                if (!talkIsOver(i)) {
                    return atTalk(step, since);
                }
            } else if (step.kind() == StepKind.CURE) {
                if (seat.judgedSetAt().isEmpty()) {
                    return new Standing(Standing.Phase.CURING, Optional.of(step), pouredAt(seat).orElse(since));
                }
                since = later(since, seat.judgedSetAt().orElse(since));
            } else if (isOpen(step)) {
                return new Standing(Standing.Phase.WORKING, Optional.of(step), later(since, openFrom(i, done)));
            } else {
                return new Standing(Standing.Phase.WAITING, Optional.of(step), since);
            }
        }
        return new Standing(Standing.Phase.DONE, Optional.empty(), since);
    }

    private Standing atTalk(Step talk, Instant since) {
        return live.openedAt(talk.id())
                .map(opened -> new Standing(Standing.Phase.LISTENING, Optional.of(talk), later(since, opened)))
                .orElseGet(() -> new Standing(Standing.Phase.WAITING, Optional.of(talk), since));
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

    /**
     * When a step became open to a seat that has finished step {@code done}: with the nearest led step up to it. Behind
     * a talk the seat heard, at the end of the time box, or when the instructor went on if that was sooner.
     */
    private Instant openFrom(int index, int done) {
        int led = index;
        while (led >= 0 && !plan.steps().get(led).led()) {
            led--;
        }
        if (led < 0) {
            return Instant.MIN;
        }
        Step opener = plan.steps().get(led);
        Optional<Instant> next = firstOpeningAfter(led);
        Instant opened = live.openedAt(opener.id()).or(() -> next).orElse(Instant.MIN);
        boolean heard = opener.kind() == StepKind.TALK && led > done && live.openedAt(opener.id()).isPresent();
        if (!heard) {
            return opened;
        }
        Instant boxEnds = opened.plus(opener.planned());
        return next.filter(boxEnds::isAfter).orElse(boxEnds);
    }

    private Optional<Instant> firstOpeningAfter(int index) {
        return plan.steps().stream()
                .skip(index + 1L)
                .flatMap(step -> live.openedAt(step.id()).stream())
                .min(Comparator.naturalOrder());
    }

    /** When the seat was free for what follows step {@code done}, as far as that depends on the seat itself. */
    private Instant freeSince(Seat seat, int done) {
        if (done >= 0) {
            return later(seat.finishes().get(plan.steps().get(done).id()).at(), seat.presenceSince());
        }
        Instant meant = later(live.createdAt(), live.startsAt());
        Instant begun = firstOpeningAfter(-1).filter(meant::isAfter).orElse(meant);
        return later(begun, seat.presenceSince());
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
