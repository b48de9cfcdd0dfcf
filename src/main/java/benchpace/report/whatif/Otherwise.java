package benchpace.report.whatif;

import java.util.Arrays;

/** What is not as it was, in one way in which a class may have gone: for {@link Reenactment#played}. */
final class Otherwise {
    static final int NONE = -1;

    /** Steps that are left out. */
    final boolean[] left;
    /** The led step that is free, or {@link #NONE}. */
    int freed = NONE;
    /** The free step that is led, or {@link #NONE}: opened {@link #lag} after {@link #share} of the table is ready. */
    int led = NONE;
    double share;
    double lag;
    /** How many seats each step's stations serve at once; 0 for as many as they did. */
    final int[] atOnce;
    /** How much sooner a step is opened, or a talk is over, minutes. */
    final double[] sooner;
    /** How much less each seat takes for a step, minutes. */
    final double[][] less;
    /** What a candle takes to set, as a share of what it took, by seat. */
    final double[] cureShare;

    /** Nothing is otherwise. */
    Otherwise(int seats, int steps) {
        left = new boolean[steps];
        atOnce = new int[steps];
        sooner = new double[steps];
        less = new double[seats][steps];
        cureShare = new double[seats];
        Arrays.fill(cureShare, 1);
    }
}
