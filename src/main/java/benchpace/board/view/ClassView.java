package benchpace.board.view;

import benchpace.board.attempt.Missing;
import benchpace.board.cooling.RoomView;
import benchpace.board.cooling.SaidRange;
import benchpace.board.pacing.HomeTime;
import benchpace.board.pacing.PaceLines;
import benchpace.board.pacing.SeatFlag;
import benchpace.board.pacing.TurnsAt;
import benchpace.board.waiting.WaitView;
import benchpace.live.ClassEvent;
import benchpace.plan.Opening;
import benchpace.plan.Picture;
import benchpace.plan.Plan;
import benchpace.plan.SeatingChart;
import benchpace.plan.StepKind;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * All that any screen may show of a class at one instant. Pages and JSON only render it.
 *
 * @param id    the class's id in addresses
 * @param plan  by which it goes, for what things are called
 * @param zone  in which clock times are printed
 * @param seq   the number of the last event it rests on
 * @param now   the board's time it holds for
 * @param help  the seats that need somebody, most costly first
 * @param room  what is known of the cooling here
 * @param lines the chart of the class
 * @param waiting the plan of the wait
 * @param longest who has been longest at a step; empty while that is several
 * @param turns whose turn it is where a step serves only some seats at once
 * @param undo  the latest thing each device said itself and may take back, the newest first
 * @param guestsMayTell whether guests may say with their own phones that they are done
 * @param known what a screen needs to go on by itself
 * @param missing what cannot be computed just now, and is left out here or stands as the plan has it
 */
public record ClassView(String id, String name, Plan plan, ZoneId zone, long seq, Instant now, Instant startsAt,
                        Stage stage, List<StepView> steps, NowView present, Optional<NextView> next,
                        SeatingChart chart, List<SeatView> seats, CureView cure, HomeTime home, List<HelpView> help,
                        Optional<LongestView> longest, Optional<Duration> silence, List<TurnsAt> turns,
                        List<UndoView> undo, List<NoteView> notes, RoomView room, PaceLines lines, WaitView waiting,
                        boolean guestsMayTell, KnownClass known, Missing missing, Optional<Instant> nextChange) {

    /** How far the class is as a whole. */
    public enum Stage { BEFORE, RUNNING, SETTING, FINISHING, CLOSED }

    /** @param finished how many candle-making seats have finished it */
    public record StepView(String id, String name, StepKind kind, Picture picture, Opening opening, boolean open,
                           Optional<Instant> openedAt, Duration planned, int finished) { }

    /**
     * What the class is doing. Every candle-making seat is in one place here: done with the step, not done, at an
     * earlier step, or with a candle that still sets.
     *
     * @param step     empty before the first and after the last
     * @param since    since when, if it has begun
     * @param done     how many of {@code of} candle-making seats are done with it
     * @param notDone  the seats at the step that are not, by number
     * @param earlier  the seats at steps before it, in the plan's order
     * @param setting  the seats that come to the step once their candles are set, by number
     */
    public record NowView(Optional<StepView> step, Optional<Instant> since, String say, String caution, String wall,
                          int done, int of, List<Integer> notDone,
                          List<EarlierView> earlier, List<Integer> setting) {
        public NowView {
            notDone = List.copyOf(notDone);
            earlier = List.copyOf(earlier);
            setting = List.copyOf(setting);
        }
    }

    /**
     * Seats at a step before the one the class is at.
     *
     * @param starts they came when the class had begun, and have done nothing yet
     */
    public record EarlierView(String step, String name, String say, String caution, boolean starts,
                              List<Integer> seats) {
        public EarlierView {
            seats = List.copyOf(seats);
        }
    }

    /**
     * The led step to open next.
     *
     * @param leavesBehind the seats that are not done with what is open
     * @param rows         one for each seat left behind
     */
    public record NextView(StepView step, List<Integer> leavesBehind, List<LeftRow> rows) {
        public NextView {
            leavesBehind = List.copyOf(leavesBehind);
            rows = List.copyOf(rows);
        }
    }

    /**
     * A seat that the next led step leaves behind.
     *
     * @param finishStep       the step whose tick brings the seat up to the others; empty if none can be ticked
     * @param atStep           its present step; empty if it has none
     * @param paused           it is away for a moment
     * @param answered         somebody said that it is still at its step, so that it may stay behind
     * @param doneProbability  that it is done and was not ticked
     * @param remainingMinutes what it still needs on average
     * @param leaveMinutes     how much later everyone leaves because of it, if the step is opened now
     * @param judged           whether the three figures are known: they are not while it is away
     */
    public record LeftRow(int seat, String finishStep, String atStep, boolean paused, boolean answered,
                          double doneProbability, int remainingMinutes, int leaveMinutes, boolean judged) { }

    /** The latest event of a device that can be taken back. @param device the device's mark */
    public record UndoView(long seq, ClassEvent event, Instant at, String device) { }

    /** A remark; {@code seat} is empty if it is about the class. */
    public record NoteView(Optional<Integer> seat, Instant at, String text, long seq) { }

    /**
     * The class's cure as a whole. Candles that a hand has decided on have left it.
     *
     * @param poured how many of {@code of} candle-making seats have poured
     * @param range  from the beginning of the first candle's range to the end of the last one's; once every seat has
     *               poured, and while one of them is not past its range, not before the ninth decile of when the last
     *               one is ready; empty if no candle is waited for
     * @param alike  each of them is said to be ready in that very range
     * @param likely when half of them are likely ready
     * @param firstPour when the first candle was poured
     * @param setting the candles whose range has not begun; empty if there are none
     * @param untried the seats whose candles may be firm and have not been judged, by number
     */
    public record CureView(int poured, int of, Optional<SaidRange> range, boolean alike, Optional<Instant> likely,
                           Optional<Instant> firstPour, Optional<SettingView> setting, List<Integer> untried) {
        public CureView {
            untried = List.copyOf(untried);
        }

        /** Every seat that makes a candle has poured it. */
        public boolean allPoured() {
            return poured == of;
        }
    }

    /**
     * Candles that still set.
     *
     * @param range from the beginning of the first one's range to when the last one is ready
     * @param alike each of them is said to be ready in that very range
     */
    public record SettingView(List<Integer> seats, SaidRange range, boolean alike) {
        public SettingView {
            seats = List.copyOf(seats);
        }
    }

    /**
     * A seat that needs somebody.
     *
     * @param helper who has it now
     * @param went   who went there and has not said "sorted" for too long
     */
    public record HelpView(int seat, String name, SeatFlag flag, Optional<String> helper, Optional<WentView> went) { }

    /** @param step what the step is called */
    public record LongestView(int seat, String step) { }

    /** A helper who went to a seat. */
    public record WentView(String helper, Instant at) { }

    public ClassView {
        steps = List.copyOf(steps);
        seats = List.copyOf(seats);
        help = List.copyOf(help);
        turns = List.copyOf(turns);
        undo = List.copyOf(undo);
        notes = List.copyOf(notes);
    }

    /** Where it is held; may be empty. */
    public String place() {
        return plan.place();
    }

    /** What a device takes back with one tap. @param device its mark */
    public Optional<UndoView> undoOn(String device) {
        return undo.stream().filter(u -> u.device().equals(device)).findFirst();
    }

    public SeatView seat(int number) {
        return seats.stream().filter(s -> s.seat() == number).findFirst().orElseThrow();
    }
}
