package benchpace;

/** Floor 6: the command line. */
public final class Main {
    private Main() { }

    public static void main(String[] args) {
        System.exit(0);
    }
}
