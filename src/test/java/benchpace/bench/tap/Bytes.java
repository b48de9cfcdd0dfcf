package benchpace.bench.tap;

/** What one screen is sent after a tap. @param first of what the tap itself changed @param whole of the rest */
record Bytes(long first, long whole) {
    static final Bytes NONE = new Bytes(0, 0);

    Bytes plus(Bytes other) {
        return new Bytes(first + other.first, whole + other.whole);
    }
}
