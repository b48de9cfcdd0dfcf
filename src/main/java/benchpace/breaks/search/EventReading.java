package benchpace.breaks.search;

import benchpace.breaks.Assignment;
import benchpace.breaks.SeatStrip;
import benchpace.breaks.SeatWait;
import benchpace.breaks.SetJudgement;
import benchpace.breaks.WaitEvent;
import benchpace.plan.Activity;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** What to call out and count down to, read from the strips. */
final class EventReading {
    private final Timeline line;
    private final Schedule schedule;
    private final BreakTimes times;
    private final List<SeatStrip> strips;

    EventReading(Timeline line, Schedule schedule, BreakTimes times, List<SeatStrip> strips) {
        this.line = line;
        this.schedule = schedule;
        this.times = times;
        this.strips = strips;
    }

    List<WaitEvent> events() {
        List<WaitEvent> events = new ArrayList<>();
        for (Task task : line.tasks) {
            Activity a = task.activity();
            waves(a).forEach((at, seats) -> events.add(
                    new WaitEvent.Opens(at, a.id(), a.name(), a.where(), List.copyOf(seats))));
        }
        classBreaks(events);
        firstReady(events);
        wrapping(events);
        events.sort(Comparator.comparing(WaitEvent::at));
        return events;
    }

    private TreeMap<Instant, TreeSet<SeatNumber>> waves(Activity activity) {
        TreeMap<Instant, TreeSet<SeatNumber>> waves = new TreeMap<>();
        for (SeatStrip strip : strips) {
            for (Assignment part : strip.planned()) {
                if (part.activity().equals(activity.id())) {
                    waves.computeIfAbsent(part.from(), at -> new TreeSet<>()).add(strip.seat());
                }
            }
        }
        return waves;
    }

    private void classBreaks(List<WaitEvent> events) {
        for (int b = 0; b < line.classBreaks.size(); b++) {
            int start = schedule.breakStarts().get(b);
            if (start == BreakTimes.NONE) {
                continue;
            }
            Task task = line.classBreaks.get(b);
            List<SeatWindow> taking = times.takingPart(task, start);
            Activity activity = task.activity();
            events.add(new WaitEvent.ClassBreak(line.instant(start), line.instant(start + task.length()),
                    activity.id(), activity.name(), activity.where(), taking.stream().map(SeatWindow::seat).toList(),
                    line.windows.stream().filter(w -> w.waits() && !taking.contains(w)).map(SeatWindow::seat)
                            .toList()));
        }
    }

    /** The first candle not yet past its expected moment, with those expected within the same minute or two. */
    private void firstReady(List<WaitEvent> events) {
        List<SeatWait> waiting = line.problem.seats().stream().filter(Timeline::isHere)
                .filter(s -> s.ready().p50().isAfter(line.problem.now()))
                .sorted(Comparator.comparing((SeatWait s) -> s.ready().p50()).thenComparing(SeatWait::seat)).toList();
        boolean anyReady = line.problem.seats().stream().filter(Timeline::isHere)
                .anyMatch(s -> !s.ready().p50().isAfter(line.problem.now()));
        if (waiting.isEmpty() || anyReady) {
            return;
        }
        Instant first = waiting.get(0).ready().p50();
        List<SeatWait> together = waiting.stream()
                .filter(s -> !s.ready().p50().isAfter(first.plusSeconds(120))).toList();
        events.add(new WaitEvent.FirstReady(first,
                together.stream().map(s -> s.ready().p10()).min(Comparator.naturalOrder()).orElseThrow(),
                together.stream().map(s -> s.ready().p90()).max(Comparator.naturalOrder()).orElseThrow(),
                together.stream().map(SeatWait::seat).sorted().toList()));
    }

    /** The turns of those who may be called; while there are none, about when it begins. */
    private void wrapping(List<WaitEvent> events) {
        if (!line.wrapping.exists()) {
            return;
        }
        Activity wrap = line.wrapping.task().activity();
        waves(wrap).forEach((at, seats) -> events.add(
                new WaitEvent.Wrapping(at, wrap.id(), wrap.name(), wrap.where(), List.copyOf(seats))));
        boolean begun = line.windows.stream().anyMatch(SeatWindow::called)
                || line.problem.seats().stream().filter(Timeline::isHere).anyMatch(line.wrapping::alreadyWrapped);
        line.windows.stream().filter(l -> l.wrapFrom() >= 0).mapToInt(SeatWindow::wrapFrom).min().ifPresent(first -> {
            if (!begun) {
                boolean due = line.problem.seats().stream().filter(Timeline::isHere)
                        .anyMatch(s -> !s.ready().p50().isAfter(line.problem.now()));
                events.add(new WaitEvent.WrappingFrom(line.instant(first), wrap.id(), wrap.name(), wrap.where(), due));
            }
        });
        boxes(wrap, events);
    }

    private void boxes(Activity wrap, List<WaitEvent> events) {
        TreeSet<SeatNumber> folding = new TreeSet<>(line.wrapping.foldingBoxes());
        TreeSet<Instant> since = new TreeSet<>();
        for (SeatWait seat : line.problem.seats()) {
            if (!(seat.handTest() instanceof SetJudgement.Awaited)) {
                continue;
            }
            Optional<Assignment> there = line.histories.getOrDefault(seat.seat(), List.of()).stream()
                    .filter(p -> p.status() == Assignment.Status.UNDER_WAY && p.activity().equals(wrap.id()))
                    .findFirst();
            there.ifPresent(p -> folding.add(seat.seat()));
            there.map(Assignment::from).ifPresent(since::add);
            if (there.isEmpty() && folding.contains(seat.seat())) {
                Instant ready = seat.ready().p50();
                since.add(ready.isAfter(line.problem.now()) ? line.problem.now() : ready);
            }
        }
        if (!folding.isEmpty()) {
            events.add(new WaitEvent.Boxes(since.first(), wrap.id(), wrap.where(), List.copyOf(folding)));
        }
    }
}
