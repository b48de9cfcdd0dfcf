package benchpace.board;

import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.live.Decision;
import benchpace.live.LiveClass;
import benchpace.live.Nameless;
import benchpace.live.Plausibility;
import benchpace.live.Recorded;
import benchpace.live.Refusal;
import benchpace.live.Rules;
import benchpace.store.EventLog;
import benchpace.store.Forgotten;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Whether the guests of a class are forgotten, and what follows from it for what is wished of the class later. Its
 * board calls it under the class's lock.
 */
final class Guests {
    private final String classId;
    private final EventLog log;
    private volatile Optional<Forgotten> forgotten;

    Guests(String classId, EventLog log, Optional<Forgotten> forgotten) {
        this.classId = classId;
        this.log = log;
        this.forgotten = forgotten;
    }

    Optional<Forgotten> forgotten() {
        return forgotten;
    }

    /**
     * The first answer to a command whose id is known, if it wishes for the same, whenever it now says it was tapped;
     * the refusal of another. Where the guests are forgotten nobody knows any more which name a command brought.
     */
    Optional<Answer> known(LiveClass live, Command made) {
        OptionalLong seq = live.seqOf(made.id());
        if (seq.isEmpty()) {
            return Optional.empty();
        }
        boolean same = live.wishOf(made.id()).filter(kept -> same(kept, made.wish())).isPresent();
        return Optional.of(same ? new Answer.Recorded(seq.getAsLong(), true)
                : new Answer.Refused(new Refusal.IdTaken(seq.getAsLong())));
    }

    private boolean same(ClassEvent kept, ClassEvent wished) {
        return kept.equals(wished) || forgotten.isPresent() && kept.equals(nameless(wished));
    }

    /** As the rules decide; but what brings words of guests is refused once they are forgotten. */
    Decision decide(LiveClass live, Command wished, Instant now, Plausibility plausibility) {
        return forgotten.isPresent() && !nameless(wished.wish()).equals(wished.wish())
                ? new Decision.Refused(new Refusal.GuestsForgotten())
                : Rules.decide(live, wished, now, plausibility);
    }

    private static ClassEvent nameless(ClassEvent event) {
        return event.match(Nameless.ofGuests());
    }

    /** The class without its guests' words, which stand in the log no more; if this throws they stand there still. */
    LiveClass forget(LiveClass live, Instant now, boolean byAge) {
        List<Recorded> nameless = Nameless.ofGuests().all(live.log());
        LiveClass next = LiveClass.of(nameless);
        Forgotten how = forgotten.orElseGet(() -> new Forgotten(now.truncatedTo(ChronoUnit.MILLIS), byAge));
        log.forgetGuests(classId, how, nameless);
        forgotten = Optional.of(how);
        return next;
    }

    /**
     * Since when a class is over: closed, or left open and then since it was last heard of.
     *
     * @param now the class's time
     */
    static Optional<Instant> overSince(LiveClass live, Instant now) {
        return live.closedAt().or(() -> Optional.of(live.lastRecordedAt()).filter(at -> live.isLeftOpen(now))
                .map(at -> live.startsAt().isAfter(at) ? live.startsAt() : at));
    }
}
