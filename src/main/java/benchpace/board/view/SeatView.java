package benchpace.board.view;

import benchpace.board.cooling.CandleClock;
import benchpace.board.pacing.Eased;
import benchpace.board.pacing.SeatFlag;
import benchpace.live.ClassEvent;
import benchpace.plan.SeatingChart;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One seat as screens show it.
 *
 * @param name      the guest's first name if given, else empty; never for the wall
 * @param place     its cell on the drawing of the table
 * @param stepId    its present step; empty when it has none
 * @param stepName  the same in words; empty when it has none
 * @param canFinish whether a tap on the tile finishes {@code stepId}
 * @param afterTest the open step after the cure that a tap finishes once somebody says that its candle was tried: its
 *                  range has not begun, so the tap asks; empty if there is none
 * @param countFrom the instant from which a clock counting up shows its time in step, pauses taken out
 * @param since     since when it has stood so
 * @param finished  ids of the steps it has tapped, in plan order
 * @param gaps      names of the steps it jumped over
 * @param eased     it is slow, and calls nobody only because a helper has just said "sorted"
 * @param pouredAt  when a candle of its own was poured; empty if it was not
 * @param candle    how that stands; empty also for a moment after the pour, while it is still to be computed
 * @param sharesWith the seat whose candle it shares
 * @param sharedBy  the seats that share its candle
 * @param hint      the guests say that they are done
 * @param question  the board asks "still at it?"
 * @param before    how many seats have their turn before it at what serves its step; empty if it does not wait for one
 * @param party     with whom the guest came; empty if alone, or not told
 * @param mind      what to mind with the guest, such as an allergy; may be empty. Never for the wall
 */
public record SeatView(int seat, String name, SeatingChart.Cell place, Mark mark, String stepId, String stepName,
                       boolean canFinish, String afterTest, Instant countFrom, Instant since, List<String> finished,
                       List<String> gaps, Optional<SeatFlag> flag, Optional<Eased> eased, Optional<String> helper,
                       Optional<Instant> pouredAt, Optional<CandleClock> candle, Optional<Integer> sharesWith,
                       List<Integer> sharedBy, boolean hint, boolean question, List<TapView> taps,
                       List<ClassView.NoteView> notes, Optional<Integer> before, String party, String mind) {

    /** What the tile says, by shape, word and colour together. */
    public enum Mark {
        ON_PACE, SLIPPING, BEHIND, SLOW, QUEUED, WAITING, LISTENING, PAUSED, EXPECTED, LEFT, SHARING, SETTING, TRY_IT,
        AT_LEISURE, SET, DONE;

        /** As it stands in JSON and in class names of the style sheets: {@code on-pace}. */
        public String token() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    /** One tap of the seat's own history. @param undone it was taken back */
    public record TapView(long seq, ClassEvent event, Instant at, boolean undone, boolean correctable) { }

    public SeatView {
        finished = List.copyOf(finished);
        gaps = List.copyOf(gaps);
        sharedBy = List.copyOf(sharedBy);
        taps = List.copyOf(taps);
        notes = List.copyOf(notes);
    }

    /** What it is flagged for, or would be had nobody just been there. */
    public Optional<SeatFlag> slowness() {
        return flag.or(() -> eased.map(Eased::flag));
    }

    /** Whether the class waits for this seat. */
    public boolean counts() {
        return mark != Mark.EXPECTED && mark != Mark.LEFT && mark != Mark.SHARING;
    }
}
