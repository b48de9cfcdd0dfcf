package benchpace.simulation;

/** An invariant that does not hold. */
final class Broken extends AssertionError {
    private static final long serialVersionUID = 1L;
    private final String check;

    /** @param check the name of the invariant */
    Broken(String check, String what) {
        super(check + ": " + what);
        this.check = check;
    }

    Broken(String check, Throwable cause) {
        super(check + ": " + cause, cause);
        this.check = check;
    }

    String check() {
        return check;
    }

    static void unless(boolean holds, String check, java.util.function.Supplier<String> what) {
        if (!holds) {
            throw new Broken(check, what.get());
        }
    }
}
