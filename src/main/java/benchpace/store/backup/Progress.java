package benchpace.store.backup;

/** How far long work is, told now and then; whoever listens may ask it to stop. */
public interface Progress {
    /** What is being done. */
    enum Stage {
        /** Bytes are copied. */
        COPYING,
        /** Rows are added up. */
        COUNTING,
        /** Classes are read back. */
        READING
    }

    /** @param of about how many there are in all */
    void at(Stage stage, long done, long of);

    /** Whether it is to be given up. */
    default boolean stopped() {
        return false;
    }

    /** Nobody listens. */
    Progress UNHEARD = (stage, done, of) -> { };
}
