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
    private Hashes() { }

    public static String of(String secret) {
        try {
            MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(sha256.digest(secret.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
