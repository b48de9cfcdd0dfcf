package benchpace.words.report;

import benchpace.board.view.ClassReport;
import benchpace.history.Cause;
import benchpace.report.Part;
import benchpace.report.StepSummary;
import benchpace.report.WhatHeld;
import benchpace.words.FiguresWords;
import benchpace.words.Phrases;

/** What held a class, in words. */
public record HeldWords(ClassReport report) {
    /** Less than half a minute is no pause that anybody remembers. */
    private static final double LEAST_AWAY_MINUTES = 0.5;

    /** "Seat 4, Noor". */
    public String seat(int seat) {
        String name = report.view().seat(seat).name();
        return "Seat " + seat + (name.isEmpty() ? "" : ", " + name);
    }

    /** What else than steps and seats held it: "Openings after all were done". */
    public static String kind(Part.Kind kind) {
        return what(Cause.of(kind));
    }

    /** "Guests away from the table". */
    public static String away() {
        return what(Cause.AWAY);
    }

    private static String what(Cause cause) {
        return Phrases.sentence(FiguresWords.what(cause));
    }

    /** What is said where no step and no wait alone held the class. @param seats whether seats did */
    public String smooth(WhatHeld held, boolean seats) {
        return FiguresWords.nothingHeld() + (seats ? "" : held.links().stream().anyMatch(WhatHeld.Link::isOver)
                ? " Where it took longer, several were slow at once." : " It went by its plan.");
    }

    /** "Seat 4 at Set the wick, away for 3 min". */
    public String link(WhatHeld.Link link) {
        return Phrases.sentence(part(link.part())) + (link.awayMinutes() >= LEAST_AWAY_MINUTES
                ? ", away for " + minutes(link.awayMinutes()) : "");
    }

    private String part(Part part) {
        String step = report.steps().get(part.step());
        return switch (part.kind()) {
            case BEGINNING -> "until seat " + part.seat() + " could begin";
            case START, OPENING -> "until " + step + " was opened";
            case OVERTIME -> "the talk goes on, until " + step + " was opened";
            case TALK -> step;
            case STEP -> "seat " + part.seat() + " at " + step;
            case POURED_AGAIN -> "until seat " + part.seat() + " poured again";
            case CURE -> "the candle of seat " + part.seat() + ", from the pour to being ready";
        };
    }

    /** "3 to 14 min, seat 4"; empty where all took as long. */
    public static String range(StepSummary took) {
        boolean alike = Math.round(took.leastMinutes()) == Math.round(took.mostMinutes());
        return alike ? "" : Math.round(took.leastMinutes()) + " to " + minutes(took.mostMinutes()) + ", seat "
                + took.mostSeat();
    }

    /** Whole minutes, as the look back tells all of them. */
    public static String minutes(double minutes) {
        return Phrases.count((int) Math.round(minutes));
    }
}
