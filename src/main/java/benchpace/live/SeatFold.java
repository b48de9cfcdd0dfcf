package benchpace.live;

import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** A seat while the fold writes on it. */
final class SeatFold {
    final SeatNumber number;
    String name;
    Seat.Presence presence = Seat.Presence.PRESENT;
    Optional<SeatNumber> sharesWith = Optional.empty();
    CandleFold candle = new CandleFold();
    final List<Seat.Note> notes = new ArrayList<>();
    private Instant presenceSince;
    private final List<Stint> stints = new ArrayList<>();
    private String party = "";
    private String mind = "";

    SeatFold(SeatNumber number, Instant since) {
        this.number = number;
        this.name = "";
        this.presenceSince = since;
    }

    SeatFold describe(ClassEvent.Place place) {
        correct(place.name(), place.party(), place.note());
        candle.chosen = place.candle();
        return this;
    }

    void correct(String correctName, String correctParty, String correctMind) {
        name = correctName;
        party = correctParty;
        mind = correctMind;
    }

    boolean present() {
        return presence == Seat.Presence.PRESENT;
    }

    void presence(Seat.Presence now, Instant at) {
        presence = now;
        presenceSince = at;
        candle.endPause(at);
    }

    /** Nobody sits there from now on: nobody to help, and nobody to take part. */
    void goAway(Seat.Presence now, Instant at) {
        presence(now, at);
        candle.claim = Optional.empty();
        quit(at);
    }

    /** From now on the guest shares the candle of {@code host}. */
    void share(SeatNumber host, Instant at) {
        sharesWith = Optional.of(host);
        candle.claim = Optional.empty();
        candle.hint = Optional.empty();
        restart(at);
    }

    /** From now on the guest makes a candle of their own, and has had no time for it yet. */
    void standAlone(Instant at) {
        sharesWith = Optional.empty();
        restart(at);
    }

    private void restart(Instant at) {
        if (present()) {
            presence(presence, at);
        }
    }

    /** Goes on with the candle that {@code host} made for both; should the host come back, the host shares it. */
    void takeOver(SeatFold host, Instant at) {
        if (host.present()) {
            presenceSince = host.presenceSince;
        }
        host.candle.endPause(at);
        candle = host.candle;
        host.candle = new CandleFold();
        sharesWith = Optional.empty();
        host.sharesWith = Optional.of(number);
    }

    boolean isAt(ActivityId activity) {
        return !stints.isEmpty() && last().open() && last().activity().equals(activity);
    }

    void join(ActivityId wanted, Instant at) {
        quit(at);
        Instant free = stints.isEmpty() ? at : last().until();
        stints.add(Stint.since(wanted, at.isAfter(free) ? at : free));
    }

    /** Leaves the activity it is at, if it is at one. */
    void quit(Instant at) {
        if (!stints.isEmpty() && last().open()) {
            stints.set(stints.size() - 1, last().leftAt(at));
        }
    }

    /** What the plan has no more was never joined. */
    void keepStints(Predicate<ActivityId> of) {
        stints.removeIf(stint -> !of.test(stint.activity()));
    }

    private Stint last() {
        return stints.get(stints.size() - 1);
    }

    /** As it stands now; the fold goes on from the same. @param firstPour of the candle, if it was poured */
    Seat freeze(Optional<Instant> firstPour) {
        CandleFold settled = candle.settled(firstPour);
        return new Seat(number, name, presence, presenceSince, settled.finishes, settled.away(), sharesWith,
                settled.pouredAgainAt, settled.readings, settled.skinSeenAt, settled.judgedSetAt, settled.claim,
                settled.stillAt, settled.hint, stints, settled.chosen, notes, party, mind);
    }
}
