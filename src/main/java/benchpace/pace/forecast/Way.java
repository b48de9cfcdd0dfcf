package benchpace.pace.forecast;

/**
 * One possible way of every seat by itself from now on, before anybody waits for an opening or for a turn: the same
 * whoever else is there, so that worlds that differ a little are compared with the same chance (common random numbers;
 * Law, <i>Simulation Modeling and Analysis</i>, ch. 11).
 */
final class Way {
    /** The next step of each seat, by index; one past the pour if it has none. */
    final int[] step;
    /** From when on each seat could do that step, in minutes from the class's start. */
    final double[] from;
    /** The same had somebody walked to the seat just now. */
    final double[] fromIfHelped;
    /** The share of the table that the instructor waits for before opening a step. */
    double share;
    private final double[] takes;

    Way(int seats, int steps) {
        step = new int[seats];
        from = new double[seats];
        fromIfHelped = new double[seats];
        takes = new double[seats * steps];
    }

    /** Whether seat i still has to do step k. */
    boolean isToDo(int i, int k) {
        return step[i] <= k;
    }

    /** How many minutes seat i takes over step k, which it still has to do. */
    double takes(int i, int k) {
        return takes[k * step.length + i];
    }

    void setTakes(int i, int k, double minutes) {
        takes[k * step.length + i] = minutes;
    }
}
