package benchpace.web.pairing;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;

/** Makes and compares what must not be guessed. */
public final class Secrets {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final String ENDINGS = "23456789abcdefghjkmnpqrstuvwxyz";

    private Secrets() { }

    /** 160 random bits as 27 characters that are safe in addresses. */
    public static String token() {
        byte[] bytes = new byte[20];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Six digits, to be typed by a person; guessing is slowed down by {@link Throttle}. */
    static String pin() {
        return String.format("%06d", RANDOM.nextInt(1_000_000));
    }

    /** A number nobody can foresee, to draw claim words with. */
    public static long seed() {
        return RANDOM.nextLong();
    }

    /** Four characters without look-alikes. */
    public static String idEnding() {
        return RANDOM.ints(4, 0, ENDINGS.length()).mapToObj(i -> ENDINGS.substring(i, i + 1))
                .reduce("", String::concat);
    }

    /** Compares in a time that does not tell how much was right. */
    static boolean same(String expected, String given) {
        return MessageDigest.isEqual(expected.getBytes(StandardCharsets.UTF_8), given.getBytes(StandardCharsets.UTF_8));
    }
}
