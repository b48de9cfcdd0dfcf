package benchpace.web.screen.report;

import benchpace.board.attempt.Model;
import benchpace.board.pacing.PaceLines;
import benchpace.board.view.ClassReport;
import benchpace.board.view.ClassView;
import benchpace.pace.Level;
import benchpace.plan.StepKind;
import benchpace.report.FlagSpan;
import benchpace.report.Part;
import benchpace.report.StepSummary;
import benchpace.report.WhatHeld;
import benchpace.web.screen.instructor.LinesChart;
import benchpace.web.screen.learned.LessonPanel;
import benchpace.web.screen.shell.NoteLine;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.MissingWords;
import benchpace.words.Phrases;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A class looked back on, on one sheet of paper.
 *
 * @param when    the evening in words
 * @param outcome when the last candle was ready, against the plan, in one or two sentences
 * @param causes  what held the class, by steps, by seats and by waiting; groups in which nothing did are left out
 * @param smooth  what is said instead of causes; empty if there are some
 * @param way     what the last candle waited for, in order
 * @param candles when each was poured and ready, and how much later it could have been
 * @param steps   what each step took
 * @param lesson  what past classes taught about the steps
 * @param flags   who was flagged, in order of time
 * @param answers how the flags were answered, in a sentence; empty without any
 * @param missing what of this cannot be computed just now, in a sentence; empty if all can
 * @param judged  whether it is known who was flagged
 */
public record ReportPage(Shell shell, String name, String place, String when, String classId, List<String> outcome,
                         List<Group> causes, String smooth, List<WayRow> way, List<CandleRow> candles,
                         List<StepRow> steps, LinesChart lines, LessonPanel lesson,
                         List<FlagRow> flags, String answers, List<NoteLine> notes, boolean over,
                         String missing, boolean judged) {
    private static final int WIDTH = 1100;
    private static final int HEIGHT = 300;

    /** Causes of one kind, the most first. */
    public record Group(String heading, List<Cause> causes) { }

    /** @param what in words @param minutes by how much earlier the last candle would have been ready */
    public record Cause(String what, String minutes) { }

    /** @param planned empty where the plan gives none @param over whether it took longer than that */
    public record WayRow(String from, String to, String what, String minutes, String planned, boolean over) { }

    public record CandleRow(String seat, String poured, String ready, String spare) { }

    public record StepRow(String step, String planned, String median, String range, String seats, boolean over) { }

    public record FlagRow(String at, String seat, String step, String level, String lasted, String answered) { }

    public static ReportPage of(ClassReport report, LessonPanel lesson, Viewer viewer, Times times) {
        ClassView view = report.view();
        Shell shell = new Shell(view.name() + ", looked back on", "report", List.of("lines", "learned"), "", "",
                times.zone().getId(), viewer.role().token(), viewer.initials());
        Reading reading = new Reading(report, times);
        List<Group> causes = report.held().map(reading::causes).orElse(List.of());
        return new ReportPage(shell, view.name(), view.place(), times.day(view.startsAt()), view.id(),
                reading.outcome(), causes, causes.isEmpty() ? report.held().map(reading::smooth).orElse("") : "",
                report.held().map(reading::way).orElse(List.of()),
                report.held().map(reading::candles).orElse(List.of()), reading.steps(),
                LinesChart.of(view, WIDTH, HEIGHT, report.held().map(reading::path).orElse(List.of()), times),
                lesson, reading.flags(), reading.answers(), NoteLine.latest(view.notes(), Integer.MAX_VALUE, times),
                view.stage() == ClassView.Stage.CLOSED, MissingWords.fact(report.missing()),
                !report.missing().has(Model.FLAGS));
    }

    /** More than one cause is told, so that their minutes are partly the same. */
    public boolean overlap() {
        return causes.stream().mapToInt(g -> g.causes().size()).sum() > 1;
    }

    private record Charge(String what, double minutes) { }

    /** Turns figures into words. */
    private record Reading(ClassReport report, Times times) {
        private static final double LEAST_MINUTES = 0.5;
        private static final double LEAST_ROW_MINUTES = 0.75;

        List<String> outcome() {
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
            report.view().home().ended().ifPresent(at -> sentences.add("The class ended at " + times.clock(at) + ", "
                    + against(at, report.view().home().promised(), "the promised ") + "."));
            if (!report.waitedFor().isEmpty()) {
                sentences.add("No pour was tapped at " + Phrases.seatRanges(report.waitedFor()) + ".");
            }
            return sentences;
        }

        /** What is only likely has a range of its own, so no minutes of a likely middle are told beside it. */
        private String ready(WhatHeld held) {
            int seat = held.lastSeat();
            Instant at = report.at(held.readyMinutes());
            return ready(seat, at) + when(seat, at) + (report.forecast(seat).isPresent()
                    ? ", planned for " + times.clock(report.plannedReady())
                    : ", " + against(at, report.plannedReady(), "the planned "));
        }

        /** What a hand did is known; of a candle that nobody took in hand only what was likely can be told. */
        private String ready(int seat, Instant at) {
            if (judged(seat)) {
                return "was judged set at ";
            }
            if (settled(seat)) {
                return "was set by ";
            }
            Optional<Instant> ended = report.view().home().ended();
            return ended.filter(at::isAfter).isPresent() ? "was still setting when the class ended, likely ready about "
                    : ended.isPresent() ? "was likely ready about " : "is likely ready about ";
        }

        /** A time that a hand decided on; else what every screen says of the candle. */
        private String when(int seat, Instant at) {
            return report.forecast(seat).map(times::said).orElseGet(() -> times.clock(at));
        }

        private String against(Instant at, Instant meant, String word) {
            Duration late = Times.apart(meant, at);
            return late.isZero() ? "just at " + word + times.clock(meant)
                    : Phrases.length(late.abs()) + (late.isNegative() ? " before " : " after ") + word
                    + times.clock(meant);
        }

        List<Group> causes(WhatHeld held) {
            List<Charge> steps = new ArrayList<>();
            held.bySteps().forEach((k, m) -> steps.add(new Charge(report.steps().get(k), m)));
            List<Charge> seats = new ArrayList<>();
            held.bySeats().forEach((s, m) -> seats.add(new Charge("Seat " + s + name(s), m)));
            List<Charge> others = new ArrayList<>();
            held.byKinds().forEach((kind, m) -> others.add(new Charge(kind(kind, held.lastSeat()), m)));
            others.add(new Charge("Away from the table", held.awayMinutes()));
            return Stream.of(group("Steps, at all seats", steps), group("Seats, at all steps", seats),
                    group("Waiting and setting", others)).filter(g -> !g.causes().isEmpty()).toList();
        }

        private boolean judged(int seat) {
            return report.readyBy(seat) == ClassReport.ReadyBy.JUDGED;
        }

        private boolean settled(int seat) {
            return report.readyBy(seat) != ClassReport.ReadyBy.LIKELY;
        }

        private String kind(Part.Kind kind, int seat) {
            return switch (kind) {
                case BEGINNING -> "Guests who began late";
                case START -> "The class begun late";
                case OPENING -> "Openings, after all were done";
                case OVERTIME -> "Talks beyond their time";
                case TALK, STEP -> "Talks";
                case POURED_AGAIN -> "Poured again";
                case CURE -> judged(seat) ? "From the pour to the hand test"
                        : settled(seat) ? "From the pour until it was taken in hand"
                        : "Candles slower to set than planned";
            };
        }

        private static Group group(String heading, List<Charge> charges) {
            return new Group(heading, charges.stream().filter(c -> c.minutes() >= LEAST_MINUTES)
                    .sorted(Comparator.comparingDouble(c -> -c.minutes()))
                    .map(c -> new Cause(c.what(), minutes(c.minutes()))).toList());
        }

        private String name(int seat) {
            String name = report.view().seat(seat).name();
            return name.isEmpty() ? "" : ", " + name;
        }

        /** What is said where no step, seat or wait alone held the class. */
        String smooth(WhatHeld held) {
            boolean over = held.links().stream().anyMatch(WhatHeld.Link::isOver);
            return over ? "Nothing alone held the class: where it took longer, several were slow at once."
                    : "Nothing held the class: it went by its plan.";
        }

        List<WayRow> way(WhatHeld held) {
            return held.links().stream().filter(l -> l.minutes() >= LEAST_ROW_MINUTES).map(l -> {
                String planned = l.plannedMinutes() > 0 ? minutes(l.plannedMinutes()) : "";
                String away = l.awayMinutes() >= LEAST_MINUTES ? ", away for " + minutes(l.awayMinutes()) : "";
                boolean guessed = l.part().kind() == Part.Kind.CURE && report.forecast(l.part().seat()).isPresent();
                Instant to = report.at(l.toMinutes());
                return new WayRow(times.clock(report.at(l.fromMinutes())),
                        guessed ? "about " + times.roughly(to) : times.clock(to),
                        Phrases.sentence(words(l.part())) + away, minutes(l.minutes()), planned,
                        l.isOver());
            }).toList();
        }

        List<CandleRow> candles(WhatHeld held) {
            return report.candles().entrySet().stream().map(e -> {
                int seat = e.getKey();
                Instant ready = report.at(e.getValue().readyMinutes());
                double spare = held.spareMinutes().get(seat);
                return new CandleRow(String.valueOf(seat), times.clock(report.at(e.getValue().pouredMinutes())),
                        (judged(seat) ? "judged set " : settled(seat) ? "set by " : "likely ready about ")
                                + when(seat, ready),
                        seat == held.lastSeat() ? "the last" : minutes(spare));
            }).toList();
        }

        private String words(Part part) {
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

        List<StepRow> steps() {
            return report.took().stream().map(s -> new StepRow(report.steps().get(s.step()),
                    minutes(s.plannedMinutes()), minutes(s.medianMinutes()), range(s), String.valueOf(s.seats()),
                    s.isOver())).toList();
        }

        private static String range(StepSummary took) {
            boolean alike = Math.round(took.leastMinutes()) == Math.round(took.mostMinutes());
            return alike ? "" : Math.round(took.leastMinutes()) + " to " + minutes(took.mostMinutes()) + ", seat "
                    + took.mostSeat();
        }

        /** The way to the last candle, as a line on the chart: up when a step is done, flat while waiting. */
        List<PaceLines.Point> path(WhatHeld held) {
            List<PaceLines.Point> points = new ArrayList<>();
            int level = 0;
            for (WhatHeld.Link link : held.links()) {
                if (points.isEmpty()) {
                    points.add(new PaceLines.Point(report.at(link.fromMinutes()), level));
                }
                boolean done = link.part().kind() == Part.Kind.STEP;
                level = done ? levelOf(link.part().step()) : level;
                points.add(new PaceLines.Point(report.at(link.toMinutes()), level));
            }
            return points;
        }

        /** How many of the chart's steps are done with this one. */
        private int levelOf(int step) {
            return (int) IntStream.rangeClosed(0, step).mapToObj(report.view().steps()::get)
                    .filter(s -> s.kind() != StepKind.TALK && s.kind() != StepKind.CURE).count();
        }

        List<FlagRow> flags() {
            return report.flags().stream().map(f -> new FlagRow(times.clock(report.at(f.fromMinutes())),
                    String.valueOf(f.seat()), report.steps().get(f.step()),
                    f.level() == Level.BEHIND ? "behind" : "slipping", minutes(f.toMinutes() - f.fromMinutes()),
                    f.answered() ? "after " + minutes(f.answeredMinutes() - f.fromMinutes()) : "not answered"))
                    .toList();
        }

        String answers() {
            List<FlagSpan> flags = report.flags();
            if (flags.isEmpty()) {
                return "";
            }
            double[] after = flags.stream().filter(FlagSpan::answered)
                    .mapToDouble(f -> f.answeredMinutes() - f.fromMinutes()).sorted().toArray();
            String count = flags.size() == 1 ? "One flag" : flags.size() + " flags";
            if (after.length == 0) {
                return count + ", none answered.";
            }
            double middle = 0.5 * (after[(after.length - 1) / 2] + after[after.length / 2]);
            return count + ", " + (after.length == flags.size() ? flags.size() == 1 ? "answered" : "all answered"
                    : after.length + " answered") + ", " + (after.length == 1 ? "after " : "half of them within ")
                    + minutes(middle) + ".";
        }

        private static String minutes(double minutes) {
            return Phrases.count((int) Math.round(minutes));
        }
    }

}
