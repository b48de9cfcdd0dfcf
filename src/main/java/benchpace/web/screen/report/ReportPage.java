package benchpace.web.screen.report;

import benchpace.board.attempt.Model;
import benchpace.board.pacing.PaceLines;
import benchpace.board.view.ClassReport;
import benchpace.board.view.ClassView;
import benchpace.plan.StepKind;
import benchpace.report.FlagSpan;
import benchpace.report.Part;
import benchpace.report.WhatHeld;
import benchpace.web.screen.instructor.LinesChart;
import benchpace.web.screen.learned.LessonPanel;
import benchpace.web.screen.shell.NoteLine;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.MissingWords;
import benchpace.words.Times;
import benchpace.words.report.CureBackWords;
import benchpace.words.report.FlagBackWords;
import benchpace.words.report.HeldWords;
import benchpace.words.report.OutcomeWords;
import benchpace.words.report.ShelfBackWords;
import benchpace.words.report.WaitedWords;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A class looked back on, on one sheet of paper.
 *
 * @param when    the evening in words
 * @param outcome when the last candle was ready, against the plan, and when the class ended, a sentence each
 * @param causes  what held the class, by steps, by seats and by waiting; groups in which nothing did are left out
 * @param smooth  what is said if no step and no wait held it; empty if one did
 * @param way     what the last candle waited for, in order
 * @param candles when each was poured and ready, and how much later it could have been
 * @param steps   what each step took
 * @param lesson  what past classes taught about the steps
 * @param flags   who was flagged, in order of time
 * @param flagged how the flags were answered, whether they were right and what was missed, a sentence each
 * @param waited  what seats had to do in their wait
 * @param cured   what was said of candles at their pour, against the hand tests
 * @param shelf   the candles that were put on the pickup shelf
 * @param missing what of this cannot be computed just now, in a sentence; empty if all can
 * @param judged  whether it is known who was flagged
 */
public record ReportPage(Shell shell, String name, String place, String when, String classId, List<String> outcome,
                         List<Group> causes, String smooth, List<WayRow> way, List<CandleRow> candles,
                         List<StepRow> steps, LinesChart lines, LessonPanel lesson,
                         List<FlagRow> flags, List<String> flagged, Waited waited, Cured cured, List<ShelfRow> shelf,
                         List<NoteLine> notes, boolean over, String missing, boolean judged) {
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

    public record FlagRow(String at, String seat, String step, String level, String lasted, String answered,
                          String lookedBack) { }

    /** @param words in a sentence; empty if nobody waited with something to do */
    public record Waited(String words, List<WaitRow> rows) { }

    public record WaitRow(String seat, String length, String tapped, String assumed, String idle) { }

    /** @param words in a sentence; empty without a hand test */
    public record Cured(String words, List<CureRow> rows) { }

    public record CureRow(String seat, String poured, String said, String judged, String against, String within) { }

    /** @param left when it was put there @param ready from when on it may be fetched */
    public record ShelfRow(String seat, String place, String left, String ready, String stands) { }

    public static ReportPage of(ClassReport report, LessonPanel lesson, Viewer viewer, Times times) {
        ClassView view = report.view();
        Shell shell = new Shell(view.name() + ", looked back on", "report",
                List.of("lines", "learned", "what-if"), "", "",
                times.zone().getId(), viewer.role().token(), viewer.initials());
        Reading reading = new Reading(report, times, new HeldWords(report), new OutcomeWords(report, times));
        List<Group> causes = report.held().map(reading::causes).orElse(List.of());
        return new ReportPage(shell, view.name(), view.place(), times.day(view.startsAt()), view.id(),
                reading.outcome.sentences(), causes,
                report.held().map(what -> reading.smooth(what, causes)).orElse(""),
                report.held().map(reading::way).orElse(List.of()),
                report.held().map(reading::candles).orElse(List.of()), reading.steps(),
                LinesChart.of(view, WIDTH, HEIGHT, report.held().map(reading::path).orElse(List.of()), times),
                lesson, reading.flags(), reading.flagged(), reading.waited(), reading.cured(), reading.shelf(),
                NoteLine.latest(view.notes(), Integer.MAX_VALUE, times),
                view.stage() == ClassView.Stage.CLOSED, MissingWords.fact(report.missing()),
                !report.missing().has(Model.FLAGS));
    }

    /** What stands on it, in its order. */
    public List<Section> sections() {
        return Section.of(this);
    }

    /** More than one cause is told, so that their minutes are partly the same. */
    public boolean overlap() {
        return causes.stream().mapToInt(g -> g.causes().size()).sum() > 1;
    }

    private record Charge(String what, double minutes) { }

    /** Arranges figures and words. */
    private record Reading(ClassReport report, Times times, HeldWords held, OutcomeWords outcome) {
        private static final String SEATS = "Seats, at all steps";
        private static final double LEAST_MINUTES = 0.5;
        private static final double LEAST_ROW_MINUTES = 0.75;

        List<Group> causes(WhatHeld what) {
            List<Charge> steps = new ArrayList<>();
            what.bySteps().forEach((k, m) -> steps.add(new Charge(report.steps().get(k), m)));
            List<Charge> seats = new ArrayList<>();
            what.bySeats().forEach((s, m) -> seats.add(new Charge(held.seat(s), m)));
            List<Charge> others = new ArrayList<>();
            what.byKinds().forEach((kind, m) -> others.add(new Charge(HeldWords.kind(kind), m)));
            others.add(new Charge(HeldWords.away(), what.awayMinutes()));
            return Stream.of(group("Steps, at all seats", steps), group(SEATS, seats),
                    group("Waiting and setting", others)).filter(g -> !g.causes().isEmpty()).toList();
        }

        String smooth(WhatHeld what, List<Group> causes) {
            return causes.stream().allMatch(g -> g.heading().equals(SEATS)) ? held.smooth(what, !causes.isEmpty())
                    : "";
        }

        private static Group group(String heading, List<Charge> charges) {
            return new Group(heading, charges.stream().filter(c -> c.minutes() >= LEAST_MINUTES)
                    .sorted(Comparator.comparingDouble(c -> -c.minutes()))
                    .map(c -> new Cause(c.what(), minutes(c.minutes()))).toList());
        }

        List<WayRow> way(WhatHeld what) {
            return what.links().stream().filter(l -> l.minutes() >= LEAST_ROW_MINUTES).map(l -> {
                boolean guessed = l.part().kind() == Part.Kind.CURE && report.forecast(l.part().seat()).isPresent();
                Instant to = report.at(l.toMinutes());
                return new WayRow(clock(l.fromMinutes()), guessed ? "about " + times.roughly(to) : times.clock(to),
                        held.link(l), minutes(l.minutes()), l.plannedMinutes() > 0 ? minutes(l.plannedMinutes()) : "",
                        l.isOver());
            }).toList();
        }

        List<CandleRow> candles(WhatHeld what) {
            return report.candles().entrySet().stream().map(e -> {
                int seat = e.getKey();
                return new CandleRow(String.valueOf(seat), clock(e.getValue().pouredMinutes()),
                        outcome.candle(seat, report.at(e.getValue().readyMinutes())),
                        seat == what.lastSeat() ? "the last" : minutes(what.spareMinutes().get(seat)));
            }).toList();
        }

        List<StepRow> steps() {
            return report.took().stream().map(s -> new StepRow(report.steps().get(s.step()),
                    minutes(s.plannedMinutes()), minutes(s.medianMinutes()), HeldWords.range(s),
                    String.valueOf(s.seats()), s.isOver())).toList();
        }

        /** The way to the last candle, as a line on the chart: up when a step is done, flat while waiting. */
        List<PaceLines.Point> path(WhatHeld what) {
            List<PaceLines.Point> points = new ArrayList<>();
            int level = 0;
            for (WhatHeld.Link link : what.links()) {
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
            List<FlagRow> rows = new ArrayList<>();
            for (int i = 0; i < report.flags().size(); i++) {
                FlagSpan flag = report.flags().get(i);
                int at = i;
                rows.add(new FlagRow(clock(flag.fromMinutes()), String.valueOf(flag.seat()),
                        report.steps().get(flag.step()), FlagBackWords.level(flag.level()),
                        minutes(flag.toMinutes() - flag.fromMinutes()), FlagBackWords.answered(flag),
                        report.hindsight().map(h -> FlagBackWords.reason(h.flags().get(at))).orElse("not known")));
            }
            return rows;
        }

        List<String> flagged() {
            List<String> sentences = new ArrayList<>(List.of(FlagBackWords.all(report.flags(), report.hindsight())));
            report.hindsight().ifPresent(hindsight -> {
                sentences.add(FlagBackWords.verdicts(hindsight));
                hindsight.missed().forEach(m -> sentences.add(FlagBackWords.missed(m, report.steps())));
            });
            return sentences.stream().filter(s -> !s.isEmpty()).toList();
        }

        Waited waited() {
            return new Waited(WaitedWords.all(report.idle()), report.idle().stream().map(i -> new WaitRow(
                    String.valueOf(i.seat()), minutes(i.waitMinutes()), minutes(i.tappedMinutes()),
                    minutes(i.assumedMinutes()), minutes(i.idleMinutes()))).toList());
        }

        Cured cured() {
            return new Cured(CureBackWords.all(report.cures()), report.cures().stream().map(c -> new CureRow(
                    String.valueOf(c.seat()), clock(c.pouredMinutes()),
                    clock(c.fromMinutes()) + " to " + clock(c.untilMinutes()), clock(c.judgedMinutes()),
                    CureBackWords.against(c), CureBackWords.within(c))).toList());
        }

        List<ShelfRow> shelf() {
            Instant now = report.view().now();
            return report.shelf().stream().map(e -> new ShelfRow(
                    e.seat().toString(), e.place().toString(), times.clock(e.leftAt()),
                    times.roughly(e.readyFrom()), ShelfBackWords.stands(e, now, times))).toList();
        }

        private String clock(double minutes) {
            return times.clock(report.at(minutes));
        }

        private static String minutes(double minutes) {
            return HeldWords.minutes(minutes);
        }
    }
}
