package benchpace.store.sqlite;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What is kept of a secret that only has to be recognised: its SHA-256 (FIPS 180-4). That needs no salt and no slowness
 * where the secret is 128 random bits and more, as all are that come here; nothing that a person types does.
 */
public final class Hashes {
    /** Looked up once: with every request a secret is recognised. */
    private static final ThreadLocal<MessageDigest> SHA_256 = ThreadLocal.withInitial(() -> {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    });

    private Hashes() { }

    public static String of(String secret) {
        return HexFormat.of().formatHex(SHA_256.get().digest(secret.getBytes(StandardCharsets.UTF_8)));
    }
}
