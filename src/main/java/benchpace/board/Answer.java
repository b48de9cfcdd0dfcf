package benchpace.board;

import benchpace.live.Refusal;

/** What became of a command. */
public sealed interface Answer {

    /**
     * It is written down, durably.
     *
     * @param seq       the number of the event
     * @param duplicate it had been before; nothing was recorded again
     * @param candle    what became with it of the seat's candle on the shelf
     */
    record Recorded(long seq, boolean duplicate, LeavingEarly.Followed candle) implements Answer {
        /** With nothing done at the shelf. */
        public Recorded(long seq, boolean duplicate) {
            this(seq, duplicate, LeavingEarly.Followed.NOTHING);
        }
    }

    /** The rules of the class speak against it; nothing was recorded. */
    record Refused(Refusal reason) implements Answer { }
}
