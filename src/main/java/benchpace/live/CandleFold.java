package benchpace.live;

import benchpace.plan.StepId;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** A candle in the making, and all that was told about it, while the fold writes on it. A pair hands it over whole. */
final class CandleFold {
    final Map<StepId, Seat.Finish> finishes = new LinkedHashMap<>();
    /** Position of the furthest step it has finished; -1 if none. */
    int furthest = -1;
    final List<Seat.Answer> stillAt = new ArrayList<>();
    Optional<Seat.Answer> hint = Optional.empty();
    Optional<Seat.Claim> claim = Optional.empty();
    Optional<String> chosen = Optional.empty();
    Optional<Instant> pouredAgainAt = Optional.empty();
    final List<Seat.Reading> readings = new ArrayList<>();
    Optional<Instant> skinSeenAt = Optional.empty();
    Optional<Instant> judgedSetAt = Optional.empty();
    private final List<Seat.Pause> pauses = new ArrayList<>();

    /** A tap that only fills a gap says nothing about the present. @param index the position of the step */
    void finish(StepId step, int index, Instant at, long seq) {
        finishes.put(step, new Seat.Finish(at, seq));
        hint = hint.filter(h -> !h.step().equals(step));
        if (index > furthest) {
            furthest = index;
            claim = Optional.empty();
            if (pauses.isEmpty() || !at.isBefore(pauses.get(pauses.size() - 1).from())) {
                endPause(at);
            }
        }
    }

    void pause(Instant at) {
        endPause(at);
        pauses.add(new Seat.Pause(at, Optional.empty()));
    }

    void endPause(Instant at) {
        int last = pauses.size() - 1;
        if (last >= 0 && pauses.get(last).until().isEmpty()) {
            Instant from = pauses.get(last).from();
            pauses.set(last, new Seat.Pause(from, Optional.of(at.isBefore(from) ? from : at)));
        }
    }

    /** The spans away from the table in order, those that touch made one: corrected taps may make them overlap. */
    List<Seat.Pause> away() {
        List<Seat.Pause> merged = new ArrayList<>();
        List<Seat.Pause> byStart = new ArrayList<>(pauses);
        byStart.sort(Comparator.comparing(Seat.Pause::from));
        for (Seat.Pause next : byStart) {
            int last = merged.size() - 1;
            if (last >= 0 && merged.get(last).reaches(next.from())) {
                merged.set(last, merged.get(last).with(next));
            } else {
                merged.add(next);
            }
        }
        return merged;
    }

    /** A new candle: what was observed of the old one no longer counts. */
    void pourAgain(Instant at) {
        pouredAgainAt = Optional.of(at);
        keep(observed -> observed.isAfter(at));
    }

    /**
     * The same without what cannot be about the wax now in the vessel: all of it if nothing was poured, else what is
     * older than the pour. Taps that are undone, corrected or sent late leave such things behind, and a pour that is
     * told late makes some of them count after all.
     */
    CandleFold settled(Optional<Instant> firstPour) {
        CandleFold copy = new CandleFold();
        copy.finishes.putAll(finishes);
        copy.furthest = furthest;
        copy.stillAt.addAll(stillAt);
        copy.hint = hint;
        copy.claim = claim;
        copy.chosen = chosen;
        copy.pouredAgainAt = pouredAgainAt;
        copy.readings.addAll(readings);
        copy.skinSeenAt = skinSeenAt;
        copy.judgedSetAt = judgedSetAt;
        copy.pauses.addAll(pauses);
        copy.settle(firstPour);
        return copy;
    }

    private void settle(Optional<Instant> firstPour) {
        pouredAgainAt = pouredAgainAt.filter(again -> firstPour.filter(first -> !first.isAfter(again)).isPresent());
        Optional<Instant> poured = pouredAgainAt.or(() -> firstPour);
        keep(observed -> poured.filter(at -> !at.isAfter(observed)).isPresent());
    }

    /** The hand test of the wax now in the vessel, as {@link #settled} has it. */
    Optional<Instant> judgedSince(Optional<Instant> firstPour) {
        Optional<Instant> poured = pouredAgainAt.filter(again -> firstPour.filter(at -> !at.isAfter(again)).isPresent())
                .or(() -> firstPour);
        return judgedSetAt.filter(judged -> poured.filter(at -> !at.isAfter(judged)).isPresent());
    }

    private void keep(Predicate<Instant> observed) {
        readings.removeIf(reading -> !observed.test(reading.at()));
        skinSeenAt = skinSeenAt.filter(observed);
        judgedSetAt = judgedSetAt.filter(observed);
    }
}
