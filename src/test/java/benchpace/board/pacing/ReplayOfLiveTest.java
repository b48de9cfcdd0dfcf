package benchpace.board.pacing;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.Stories;
import benchpace.board.view.Watched;
import benchpace.files.log.ClassLog;
import benchpace.files.log.LogEvent;
import benchpace.files.log.TrackFold;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.TestClass;
import benchpace.pace.ClassTrack;
import benchpace.pace.Level;
import benchpace.pace.PaceStep;
import benchpace.pace.WorkKind;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.engine.PaceEngine;
import benchpace.pace.engine.PaceMemory;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The live board and a replay of the class's log are two ways to one judgement. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ReplayOfLiveTest {
    private static final double END = 30;

    @Test void the_live_board_says_what_a_replay_of_the_same_class_says() {
        assertThat(saidAlike(eventful())).contains(SeatFlag.Level.BEHIND);
        assertThat(saidAlike(Stories.stuckAtWicks(6))).contains(SeatFlag.Level.SLIPPING, SeatFlag.Level.BEHIND);
    }

    /** Compares both every half minute. @return the levels that came up */
    private static List<SeatFlag.Level> saidAlike(TestClass c) {
        Watched board = new Watched(c);
        PaceEngine engine = new PaceEngine(PacePriors.standard());
        List<SeatFlag.Level> said = new ArrayList<>();
        PaceMemory memory = PaceMemory.EMPTY;
        ClassTrack before = track(c, 0);
        for (double minute = 0; minute <= END; minute += 0.5) {
            ClassTrack track = track(c, minute);
            memory = engine.follow(before, memory, track, minute);
            before = track;
            Map<Integer, SeatFlag.Level> live = Watched.levels(board.at(minute));
            assertThat(live).as("minute %s", minute).isEqualTo(levels(engine.levels(track, minute, memory)));
            said.addAll(live.values());
        }
        return said;
    }

    /** Two seats stuck, one of them helped; an undo, a pause, a late guest, one who leaves, an answer and a hint. */
    private static TestClass eventful() {
        TestClass c = TestClass.of(Stories.plan(), 8).expect(8);
        Stories.othersTap(c, 2, 0, "vessel").minute(3).open("wicks").minute(5).arrive(8);
        for (int seat : new int[] {1, 2, 3, 5, 6}) {
            c.minute(6 + seat * 0.15).finish(seat, "wicks");
        }
        c.minute(7.1).finish(7, "wicks").minute(7.4).undoLast().minute(8).pause(7).minute(9.5).finish(8, "vessel");
        c.minute(11).wish(new ClassEvent.StillWorking(new SeatNumber(4), new StepId("wicks")));
        c.minute(12.3).resume(7).minute(13).finish(8, "wicks").minute(13.2).claim(4, "MO");
        c.minute(13.6).wish(new ClassEvent.DoneHinted(new SeatNumber(7), new StepId("wicks")));
        c.minute(14).open("mix").minute(16).sorted(4, "MO").minute(18.2).leave(6);
        for (int seat : new int[] {1, 2, 3, 5}) {
            c.minute(19 + seat * 0.15).finish(seat, "mix");
        }
        return c;
    }

    /** The class's log until that minute, as the replay would read it, folded. */
    private static ClassTrack track(TestClass c, double minute) {
        LiveClass live = Watched.until(c, minute);
        TrackFold fold = new TrackFold(log(live));
        log(live).events().forEach(fold::apply);
        return fold.track();
    }

    private static ClassLog log(LiveClass live) {
        Plan plan = live.plan();
        List<PaceStep> steps = plan.steps().stream().map(s -> new PaceStep(s.id().value(), s.planned().toMinutes(),
                s.led(), s.kind() == StepKind.CURE ? WorkKind.WAIT : WorkKind.valueOf(s.kind().name())))
                .toList();
        List<LogEvent> events = new ArrayList<>();
        for (Recorded recorded : live.corrected()) {
            if (!live.isUndone(recorded.seq())) {
                event(plan, recorded, events);
            }
        }
        List<ClassLog.Place> places = live.seats().stream().map(s -> new ClassLog.Place(s.number().value(),
                s.number().value(), false, s.number().value() != 8)).toList();
        return new ClassLog("test", steps, 60, places, events);
    }

    private static void event(Plan plan, Recorded recorded, List<LogEvent> events) {
        double seconds = 60 * Watched.minuteOf(recorded.at());
        ClassEvent what = recorded.event();
        int seat = what instanceof ClassEvent.AtSeat at ? at.seat().value() : 0;
        int line = events.size() + 2;
        if (what instanceof ClassEvent.StepOpened opened) {
            events.add(new LogEvent(line, seconds, LogEvent.Type.OPEN_STEP, 0, plan.indexOf(opened.step()), ""));
        } else if (what instanceof ClassEvent.StepFinished done) {
            events.add(new LogEvent(line, seconds, LogEvent.Type.FINISH_STEP, seat, plan.indexOf(done.step()), ""));
        } else if (what instanceof ClassEvent.StillWorking at) {
            events.add(new LogEvent(line, seconds, LogEvent.Type.STILL_AT_IT, seat, plan.indexOf(at.step()), ""));
        } else if (what instanceof ClassEvent.DoneHinted hint) {
            events.add(new LogEvent(line, seconds, LogEvent.Type.SAYS_DONE, seat, plan.indexOf(hint.step()), ""));
        } else {
            LogEvent.Type type = Map.of("SeatPaused", LogEvent.Type.PAUSE, "SeatResumed", LogEvent.Type.RESUME,
                    "SeatArrived", LogEvent.Type.ARRIVE, "SeatLeft", LogEvent.Type.LEAVE,
                    "HelpClaimed", LogEvent.Type.CLAIM, "HelpSorted", LogEvent.Type.SORTED)
                    .get(what.getClass().getSimpleName());
            if (type != null) {
                events.add(new LogEvent(line, seconds, type, seat, -1, ""));
            }
        }
    }

    private static Map<Integer, SeatFlag.Level> levels(Map<Integer, Level> levels) {
        Map<Integer, SeatFlag.Level> flagged = new TreeMap<>();
        levels.forEach((seat, level) -> {
            if (level != Level.NONE) {
                flagged.put(seat, SeatFlag.Level.valueOf(level.name().toUpperCase(Locale.ROOT)));
            }
        });
        return flagged;
    }
}
