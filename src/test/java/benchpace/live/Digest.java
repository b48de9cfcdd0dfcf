package benchpace.live;

import benchpace.plan.Step;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * All that can be seen of a class, as values that compare: two classes with equal digests cannot be told apart on any
 * screen. The log itself is left out, because an undone event stays in it.
 */
public record Digest(Object frame, Map<String, Instant> opened, List<Seat> seats, List<Standing> standings,
                     List<Optional<Instant>> poured, List<List<Step>> gaps, List<ActivityRun> activities,
                     List<Seat.Note> notes, List<LiveClass.Temperature> temperatures, Optional<Instant> closedAt,
                     int furthestOpened) {

    public static Digest of(LiveClass live) {
        Progress progress = live.progress();
        Map<String, Instant> opened = new TreeMap<>();
        live.plan().steps().forEach(s -> live.openedAt(s.id()).ifPresent(at -> opened.put(s.id().value(), at)));
        List<Seat> seats = List.copyOf(live.seats());
        return new Digest(List.of(live.setup(), live.createdAt(), live.promisedEnd(), live.places(),
                live.candlesToMake(), live.guestsMayTell()), opened, seats,
                seats.stream().map(progress::standing).toList(),
                seats.stream().map(progress::pouredAt).toList(),
                seats.stream().map(progress::gaps).toList(),
                live.plan().activities().stream().map(a -> live.activity(a.id())).toList(),
                live.notes(), Stream.concat(live.roomReadings().stream(), live.pourReadings().stream()).toList(),
                live.closedAt(), live.furthestOpened());
    }
}
