package benchpace.pace;

import java.util.List;

/**
 * Everything recorded about one seat so far, in minutes from the class's start. Times that have not happened are
 * {@link Double#POSITIVE_INFINITY}.
 *
 * @param seat its number, from 1
 * @param party which party sits there; seats sharing a candle share a party
 * @param sharesCandle whether the candle is shared with the party's other sharing seats
 * @param arrivedMinutes when the guest sat down, 0 for those there at the start
 * @param leftMinutes when the guest left for good
 * @param pauses when the guest was away for a moment
 * @param taps finished and skipped steps, in order of time, undone ones left out
 * @param stillAtIt the instructor's answers "still at it"
 * @param hints the guests' own "we are done"
 * @param claims when a helper was on the way to this seat or there
 * @param setMinutes when its candle was judged set by hand
 * @param ready what the cure model says of its candle
 */
public record SeatTrack(int seat, int party, boolean sharesCandle, double arrivedMinutes, double leftMinutes,
                        List<Span> pauses, List<Tap> taps, List<Mark> stillAtIt, List<Mark> hints,
                        List<Span> claims, double setMinutes, ReadyOutlook ready) {
    /** Not yet. */
    public static final double NOT_YET = Double.POSITIVE_INFINITY;

    public SeatTrack {
        if (seat < 1) {
            throw new IllegalArgumentException("seat " + seat);
        }
        pauses = List.copyOf(pauses);
        taps = List.copyOf(taps);
        stillAtIt = List.copyOf(stillAtIt);
        hints = List.copyOf(hints);
        claims = List.copyOf(claims);
    }

    /** A seat whose guest is there from the start and of whom nothing else is known. */
    public static SeatTrack present(int seat) {
        return new SeatTrack(seat, seat, false, 0, NOT_YET, List.of(), List.of(), List.of(), List.of(), List.of(),
                NOT_YET, ReadyOutlook.UNKNOWN);
    }

    /** Whether both have the same candle. */
    public boolean sharesCandleWith(SeatTrack other) {
        return sharesCandle && other.sharesCandle && party == other.party;
    }

    /** The same seat with another outlook for its candle. */
    SeatTrack withReady(ReadyOutlook outlook) {
        return new SeatTrack(seat, party, sharesCandle, arrivedMinutes, leftMinutes, pauses, taps, stillAtIt, hints,
                claims, setMinutes, outlook);
    }

    public boolean isHere(double now) {
        return arrivedMinutes <= now && now < leftMinutes;
    }

    boolean isPaused(double now) {
        return pauses.stream().anyMatch(p -> p.covers(now));
    }

    /** Whether a helper said "I've got it" after {@code since} and is not through with it. */
    public boolean isClaimed(double since, double now) {
        return claims.stream().anyMatch(c -> c.fromMinutes() >= since && c.covers(now));
    }

    /** When a helper who came after {@code since} last said "sorted", or minus infinity. */
    public double lastSorted(double since, double now) {
        return claims.stream().filter(c -> c.fromMinutes() >= since && c.toMinutes() <= now)
                .mapToDouble(Span::toMinutes).max().orElse(Double.NEGATIVE_INFINITY);
    }

    public double pausedWithin(double from, double to) {
        double sum = 0;
        for (Span pause : pauses) {
            sum += pause.overlap(from, to);
        }
        return sum;
    }

    /** The latest "still at it" about this step, or minus infinity. */
    public double lastStillAtIt(int step) {
        return latest(stillAtIt, step);
    }

    /** The latest "we are done" about this step, or minus infinity. */
    public double lastHint(int step) {
        return latest(hints, step);
    }

    private static double latest(List<Mark> marks, int step) {
        return marks.stream().filter(m -> m.step() == step).mapToDouble(Mark::atMinutes).max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    /** What was known of this seat at {@code minutes}: nothing recorded later. */
    SeatTrack asOf(double minutes) {
        return new SeatTrack(seat, party, sharesCandle, until(arrivedMinutes, minutes), until(leftMinutes, minutes),
                spansAsOf(pauses, minutes), taps.stream().filter(t -> t.atMinutes() <= minutes).toList(),
                stillAtIt.stream().filter(m -> m.atMinutes() <= minutes).toList(),
                hints.stream().filter(m -> m.atMinutes() <= minutes).toList(),
                spansAsOf(claims, minutes), until(setMinutes, minutes), ready);
    }

    private static double until(double happened, double minutes) {
        return happened <= minutes ? happened : NOT_YET;
    }

    private static List<Span> spansAsOf(List<Span> spans, double minutes) {
        return spans.stream().filter(s -> s.fromMinutes() <= minutes)
                .map(s -> new Span(s.fromMinutes(), until(s.toMinutes(), minutes))).toList();
    }
}
