package benchpace.breaks.search;

import benchpace.breaks.Assignment;
import benchpace.breaks.IdleMinutes;
import benchpace.breaks.Presence;
import benchpace.breaks.SeatStrip;
import benchpace.breaks.SeatWait;
import benchpace.breaks.Unplaced;
import benchpace.breaks.WaitPlan;
import benchpace.plan.Activity;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns a schedule in slots into the plan people see. */
final class PlanAssembly {
    private final Timeline line;
    private final Schedule schedule;
    private final BreakTimes times;

    PlanAssembly(Timeline line, Schedule schedule) {
        this.line = line;
        this.schedule = schedule;
        this.times = new BreakTimes(line);
    }

    WaitPlan plan() {
        List<SeatStrip> strips = strips();
        AnnouncementCheck check = new AnnouncementCheck(line, strips);
        return new WaitPlan(line.problem.now(), strips, new EventReading(line, schedule, times, strips).events(),
                new LeisureReading(line, strips).leisure(),
                line.problem.announced().stream().map(check::of).flatMap(Optional::stream).toList(),
                unplaced(), pastPromisedEnd());
    }

    private List<SeatStrip> strips() {
        boolean[][] blocked = times.blocked(schedule.breakStarts());
        Map<SeatNumber, SeatStrip> strips = new HashMap<>();
        for (int i = 0; i < line.windows.size(); i++) {
            SeatWindow window = line.windows.get(i);
            List<Assignment> parts = new ArrayList<>(window.history());
            boolean[] covered = blocked[i].clone();
            for (Booking b : schedule.strips().get(i).bookings()) {
                parts.add(planned(line.tasks.get(b.task()).activity(), b.from(), b.until()));
                Arrays.fill(covered, b.from(), b.until(), true);
            }
            for (int b = 0; b < line.classBreaks.size(); b++) {
                Task task = line.classBreaks.get(b);
                int start = schedule.breakStarts().get(b);
                if (start != BreakTimes.NONE && times.takingPart(task, start).contains(window)) {
                    parts.add(planned(task.activity(), start, start + task.length()));
                }
            }
            if (window.wrapFrom() >= 0) {
                Task wrap = line.wrapping.task();
                parts.add(new Assignment(wrap.activity().id(), line.instant(window.wrapFrom()),
                        line.instant(window.wrapFrom() + wrap.length()),
                        window.called() ? Assignment.Status.PLANNED : Assignment.Status.EXPECTED));
            }
            parts.sort(Comparator.comparing(Assignment::from));
            int idle = 0;
            for (int t = window.from(); t < window.until(); t++) {
                idle += covered[t] ? 0 : 1;
            }
            strips.put(window.seat(), new SeatStrip(window.seat(), parts, line.instant(window.from()),
                    line.instant(window.until()), idle, idleSoFar(seat(window.seat()))));
        }
        for (SeatNumber seat : line.histories.keySet()) {
            strips.computeIfAbsent(seat, s -> new SeatStrip(s, line.histories.get(s), line.instant(0),
                    line.instant(0), 0, idleSoFar(seat(s))));
        }
        return strips.values().stream().sorted(Comparator.comparing(SeatStrip::seat)).toList();
    }

    private Assignment planned(Activity activity, int from, int until) {
        return new Assignment(activity.id(), line.instant(from), line.instant(until), Assignment.Status.PLANNED);
    }

    private SeatWait seat(SeatNumber number) {
        return line.problem.seats().stream().filter(s -> s.seat().equals(number)).findFirst().orElseThrow();
    }

    /** Whole minutes between the pour and now (or the candle, if that was ready before) without any part. */
    private int idleSoFar(SeatWait seat) {
        Instant end = seat.ready().p50().isBefore(line.problem.now()) ? seat.ready().p50() : line.problem.now();
        return IdleMinutes.between(seat.freeFrom(), end, line.histories.get(seat.seat()));
    }

    private List<Unplaced> unplaced() {
        List<Unplaced> unplaced = new ArrayList<>();
        for (int b = 0; b < line.classBreaks.size(); b++) {
            if (schedule.breakStarts().get(b) == BreakTimes.NONE) {
                Task task = line.classBreaks.get(b);
                unplaced.add(new Unplaced(task.activity().id(), times.tooFewPlaces(task)
                        ? Unplaced.Reason.TOO_FEW_PLACES : Unplaced.Reason.NO_COMMON_TIME));
            }
        }
        return unplaced;
    }

    private List<SeatNumber> pastPromisedEnd() {
        int wrapLength = line.wrapping.exists() ? line.wrapping.task().length() : 0;
        return line.windows.stream().filter(l -> l.waits() || l.wrapFrom() >= 0)
                .filter(l -> !line.wrapping.alreadyWrapped(seat(l.seat())))
                .filter(l -> !(seat(l.seat()).presence() instanceof Presence.LeavingAt))
                .filter(l -> Math.max(l.until(), l.wrapFrom() + wrapLength) > line.promisedEnd)
                .map(SeatWindow::seat).toList();
    }
}
