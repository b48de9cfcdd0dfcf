package benchpace.board;

import benchpace.live.Refusal;

/** What became of a command. */
public sealed interface Answer {

    /**
     * It is written down, durably.
     *
     * @param seq       the number of the event
     * @param duplicate it had been before; nothing was recorded again
     */
    record Recorded(long seq, boolean duplicate) implements Answer { }

    /** The rules of the class speak against it; nothing was recorded. */
    record Refused(Refusal reason) implements Answer { }
}
