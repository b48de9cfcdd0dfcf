package benchpace.web.entrance;

/** Bytes of answers that were made and have not left yet: memory, which slow readers must not be able to fill. */
final class Unread {
    private final int most;
    private long bytes;

    Unread(int most) {
        this.most = most;
    }

    /** @return false if there is no room for so many more */
    synchronized boolean takes(int more) {
        if (bytes + more > most) {
            return false;
        }
        bytes += more;
        return true;
    }

    synchronized void isRidOf(int gone) {
        bytes -= gone;
    }
}
