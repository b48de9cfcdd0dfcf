package benchpace.web.screen.wait;

import benchpace.board.view.ClassView;
import benchpace.board.waiting.WaitView.ActivityView;
import benchpace.files.Words;
import benchpace.web.screen.drawing.Drawing;
import benchpace.words.Phrases;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One activity on the wait's page, with what the instructor may do to it.
 *
 * @param drawing what is done at it
 * @param lines   how it stands, in words
 * @param canEnd  the command that ends it: {@code close-activity}, {@code skip-activity}; empty if there is nothing
 * @param earlier where a tap on "5 min earlier" moves it, RFC 3339; empty if it cannot be
 * @param later   the same for "5 min later"
 * @param longer  whether somebody is at it, so that it may be lengthened
 */
public record WaitCard(String id, String name, String kind, Drawing drawing, String who, String where,
                       String caution, String cue, List<String> lines, boolean open, boolean skipped,
                       boolean canStart, String canEnd, String earlier, String later, boolean longer,
                       boolean canSkip) {
    private static final Duration STEP = Duration.ofMinutes(5);

    static List<WaitCard> all(ClassView view, Times times) {
        boolean closed = view.stage() == ClassView.Stage.CLOSED;
        return view.waiting().activities().stream().map(a -> of(a, view, closed, times)).toList();
    }

    private static WaitCard of(ActivityView a, ClassView view, boolean closed, Times times) {
        Instant now = view.now();
        boolean underWay = !a.now().isEmpty();
        Optional<Instant> begins = a.next().map(w -> w.at()).or(a::expected);
        boolean movable = !closed && !a.open() && begins.isPresent();
        Instant next = begins.orElse(now);
        String end = closed ? "" : a.open() ? "close-activity" : underWay && !a.skipped() ? "skip-activity" : "";
        return new WaitCard(a.id(), a.name(), Words.of(a.kind()), Drawing.of(a.kind(), view),
                a.wholeClass() ? "whole class" : a.places() == 1 ? "1 place" : a.places() + " places", a.where(),
                a.caution(), a.cue(), lines(a, times), a.open(), a.skipped(), !closed && !a.open(), end,
                movable && !next.minus(STEP).isBefore(now) ? next.minus(STEP).toString() : "",
                movable ? next.plus(STEP).toString() : "", !closed && (a.open() || underWay),
                !closed && !a.open() && !a.skipped() && !underWay);
    }

    private static List<String> lines(ActivityView a, Times times) {
        List<String> lines = new java.util.ArrayList<>();
        if (a.skipped()) {
            lines.add("Not tonight.");
        }
        a.openedAt().ifPresent(at -> lines.add("Open since " + times.clock(at) + "."));
        if (!a.now().isEmpty()) {
            lines.add("Now: " + Phrases.seats(a.now(), 12)
                    + a.nowUntil().map(t -> ", until " + times.clock(t)).orElse("") + ".");
        }
        a.next().ifPresent(w -> lines.add("Next at " + times.clock(w.at()) + ": " + Phrases.seats(w.seats(), 12)
                + "."));
        if (a.afterTest()) {
            lines.add(a.expected().map(at -> "From about " + times.roughly(at) + ", each").orElse("Each")
                    + " candle once it is judged set and trimmed.");
        }
        if (a.extraMinutes() > 0) {
            lines.add(a.extraMinutes() + " min longer than planned.");
        }
        if (lines.isEmpty()) {
            lines.add("Nothing planned from here on.");
        }
        return lines;
    }
}
