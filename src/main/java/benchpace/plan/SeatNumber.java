package benchpace.plan;

/** A place at the table, as it is written on the place card: 1 to {@value #MOST}. */
public record SeatNumber(int value) implements Comparable<SeatNumber> {
    /** The largest class the board is meant for. */
    public static final int MOST = 60;

    public SeatNumber {
        if (value < 1 || value > MOST) {
            throw new IllegalArgumentException("a seat number is 1 to " + MOST + ", not " + value);
        }
    }

    @Override public int compareTo(SeatNumber other) {
        return Integer.compare(value, other.value);
    }

    @Override public String toString() {
        return Integer.toString(value);
    }
}
