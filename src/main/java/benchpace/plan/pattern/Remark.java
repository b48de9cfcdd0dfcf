package benchpace.plan.pattern;

/** What a new plan could not do as asked, or what its maker should look at. */
public sealed interface Remark {

    /**
     * The candle sets too slowly to be taken home from this class: it is collected later.
     *
     * @param readyMinutes after the pour, for half of such candles; 0 if it never is in the plan's room
     * @param waitMinutes  what the class leaves it; 0 if it ends with the pour
     */
    record CollectedLater(int readyMinutes, int waitMinutes) implements Remark { }

    /** Even the shortest form takes longer than was asked. */
    record LongerThanAsked(int askedMinutes, int takesMinutes) implements Remark { }

    /**
     * The turns at the pour are what makes it long.
     *
     * @param places   so many pouring places would let the class end in time, the candles ready
     * @param planned  as many as were answered
     */
    record MorePlaces(int planned, int places) implements Remark { }

    /** The wax is poured hotter than is kind to a table of children. @param pourCelsius at the pour */
    record HotForChildren(double pourCelsius) implements Remark { }
}
