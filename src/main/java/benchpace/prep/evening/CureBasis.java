package benchpace.prep.evening;

/** What the cure of the simulated candles rests on. */
public enum CureBasis {
    /** Computed for each candle, its vessel, wax and room. */
    COMPUTED,
    /** The plan's figure, as no candle is named or one of them cannot be computed. */
    PLANNED,
    /** Nothing is poured. */
    NONE
}
