package benchpace.words.report;

import benchpace.board.attempt.Model;
import benchpace.board.view.ClassReport;
import benchpace.board.view.FiguresMaker;
import benchpace.history.ClassFigures.ReadyBy;
import benchpace.report.WhatHeld;
import benchpace.words.FiguresWords;
import benchpace.words.Phrases;
import benchpace.words.Times;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How a class came out: when the last candle was ready, and when the class ended. */
public record OutcomeWords(ClassReport report, Times times) {
    /** One to four sentences; none if that is not known. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        if (report.missing().has(Model.HELD)) {
            return sentences;
        }
        report.held().ifPresentOrElse(held -> sentences.addAll(ready(held)), () -> sentences.add(nothing()));
        report.endedAt().ifPresent(at -> sentences.add(FiguresWords.ended(at, report.view().home().promised(),
                times)));
        if (report.held().isPresent() && !report.waitedFor().isEmpty()) {
            sentences.add("No pour was tapped at " + Phrases.seatRanges(report.waitedFor()) + ".");
        }
        return sentences;
    }

    private String nothing() {
        return report.endedAt().isPresent() ? FiguresWords.nonePoured()
                : report.waitedFor().isEmpty() ? "This class has no candle to look back on."
                : "No candle has been poured, so there is nothing to look back on yet.";
    }

    /** "judged set 20:38", "set by 20:44", "likely ready about 20:45 to 21:05". */
    public String candle(int seat, Instant at) {
        return switch (report.readyBy(seat)) {
            case JUDGED -> "judged set ";
            case SETTLED -> "set by ";
            case LIKELY -> "likely ready about ";
        } + when(seat, at);
    }

    private List<String> ready(WhatHeld held) {
        int seat = held.lastSeat();
        Instant at = report.at(held.readyMinutes());
        ReadyBy by = FiguresMaker.readyBy(report.readyBy(seat));
        boolean soFar = !report.waitedFor().isEmpty() && report.endedAt().isEmpty();
        if (by != ReadyBy.NOBODY) {
            return List.of(soFar ? FiguresWords.readySoFar(by, at, report.plannedReady(), times)
                    : FiguresWords.ready(by, at, report.plannedReady(), report.endedAt(), times),
                    "It was seat " + seat + "'s.");
        }
        return report.endedAt().map(ended -> List.of(
                FiguresWords.ready(by, at, report.plannedReady(), Optional.of(ended), times),
                "At seat " + seat + " it was " + (at.isAfter(ended) ? "still setting when the class ended, " : "")
                        + "likely ready about " + when(seat, at) + "."))
                .orElseGet(() -> List.of((soFar ? "Of the candles poured so far the last" : "The last candle")
                        + ", at seat " + seat + ", is likely ready about " + when(seat, at) + ", planned for "
                        + times.clock(report.plannedReady()) + "."));
    }

    /** A time that a hand decided on; else what every screen says of the candle. */
    private String when(int seat, Instant at) {
        return report.forecast(seat).map(times::said).orElseGet(() -> times.clock(at));
    }
}
