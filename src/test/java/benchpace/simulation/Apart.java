package benchpace.simulation;

/** Where two values that should be the same begin to differ, in their own words. */
final class Apart {
    private static final int AROUND = 160;

    private Apart() { }

    static String of(Object one, Object other) {
        String a = one.toString();
        String b = other.toString();
        int at = 0;
        while (at < Math.min(a.length(), b.length()) && a.charAt(at) == b.charAt(at)) {
            at++;
        }
        return "\n  " + around(a, at) + "\n  " + around(b, at);
    }

    private static String around(String text, int at) {
        return text.substring(Math.max(0, at - AROUND), Math.min(text.length(), at + AROUND));
    }
}
