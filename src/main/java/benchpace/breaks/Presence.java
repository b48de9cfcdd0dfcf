package benchpace.breaks;

import java.time.Instant;

/** Whether a seat can be planned for. */
public sealed interface Presence {
    /** At the table and staying until the candle is ready. */
    record Here() implements Presence { }

    /** Here now and leaving at an instant; what it starts must end by then. */
    record LeavingAt(Instant at) implements Presence { }

    /** Away for a moment: nothing is planned for it and no class break waits for it. */
    record Paused() implements Presence { }

    /** Gone home. */
    record Left() implements Presence { }
}
