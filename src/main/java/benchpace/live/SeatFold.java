package benchpace.live;

import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A seat while the fold writes on it. */
final class SeatFold {
    final SeatNumber number;
    String name;
    Seat.Presence presence = Seat.Presence.PRESENT;
    Optional<SeatNumber> sharesWith = Optional.empty();
    CandleFold candle = new CandleFold();
    Optional<Seat.Joined> activity = Optional.empty();
    final List<Seat.Note> notes = new ArrayList<>();
    private Instant presenceSince;
    private final Set<ActivityId> activitiesDone = new LinkedHashSet<>();

    SeatFold(SeatNumber number, String name, Instant since) {
        this.number = number;
        this.name = name;
        this.presenceSince = since;
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
        quit();
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

    void join(ActivityId wanted, Instant at) {
        quit();
        activity = Optional.of(new Seat.Joined(wanted, at));
    }

    void quit() {
        activity.ifPresent(a -> activitiesDone.add(a.activity()));
        activity = Optional.empty();
    }

    Seat freeze() {
        return new Seat(number, name, presence, presenceSince, candle.finishes, candle.away(), sharesWith,
                candle.pouredAgainAt, candle.readings, candle.skinSeenAt, candle.judgedSetAt, candle.claim,
                candle.stillAt, candle.hint, activity, activitiesDone, candle.chosen, notes);
    }
}
