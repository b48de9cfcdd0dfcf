package benchpace.words.report;

import benchpace.board.attempt.Model;
import benchpace.board.view.ClassReport;
import benchpace.report.WhatHeld;
import benchpace.words.Phrases;
import benchpace.words.Times;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How a class came out: when the last candle was ready, and when the class ended. */
public record OutcomeWords(ClassReport report, Times times) {
    /** One to three sentences; none if that is not known. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        if (report.missing().has(Model.HELD)) {
            return sentences;
        }
        if (report.held().isEmpty()) {
            sentences.add(report.waitedFor().isEmpty() ? "This class has no candle to look back on."
                    : "No candle has been poured, so there is nothing to look back on yet.");
            return sentences;
        }
        WhatHeld held = report.held().get();
        String which = report.waitedFor().isEmpty() ? "The last candle, at seat " + held.lastSeat() + ", "
                : "Of the candles poured so far the last, at seat " + held.lastSeat() + ", ";
        sentences.add(which + ready(held) + ".");
        report.endedAt().ifPresent(at -> sentences.add("The class ended at " + times.clock(at) + ", "
                + times.against(at, report.view().home().promised(), "the promised ") + "."));
        if (!report.waitedFor().isEmpty()) {
            sentences.add("No pour was tapped at " + Phrases.seatRanges(report.waitedFor()) + ".");
        }
        return sentences;
    }

    /** "judged set 20:38", "set by 20:44", "likely ready about 20:45 to 21:05". */
    public String candle(int seat, Instant at) {
        return switch (report.readyBy(seat)) {
            case JUDGED -> "judged set ";
            case SETTLED -> "set by ";
            case LIKELY -> "likely ready about ";
        } + when(seat, at);
    }

    /** What is only likely has a range of its own, so no minutes of a likely middle are told beside it. */
    private String ready(WhatHeld held) {
        int seat = held.lastSeat();
        Instant at = report.at(held.readyMinutes());
        return ready(seat, at) + when(seat, at) + (report.forecast(seat).isPresent()
                ? ", planned for " + times.clock(report.plannedReady())
                : ", " + times.against(at, report.plannedReady(), "the planned "));
    }

    /** What a hand did is known; of a candle that nobody took in hand only what was likely can be told. */
    private String ready(int seat, Instant at) {
        Optional<Instant> ended = report.endedAt();
        return switch (report.readyBy(seat)) {
            case JUDGED -> "was judged set at ";
            case SETTLED -> "was set by ";
            case LIKELY -> ended.filter(at::isAfter).isPresent()
                    ? "was still setting when the class ended, likely ready about "
                    : ended.isPresent() ? "was likely ready about " : "is likely ready about ";
        };
    }

    /** A time that a hand decided on; else what every screen says of the candle. */
    private String when(int seat, Instant at) {
        return report.forecast(seat).map(times::said).orElseGet(() -> times.clock(at));
    }
}
