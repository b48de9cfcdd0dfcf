package benchpace.web.entrance;

import benchpace.files.BadFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.Key;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.UnrecoverableKeyException;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.Optional;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/**
 * The board's own key and certificate, by which browsers reach it over TLS. Only TLS 1.2 and 1.3 are spoken (RFC 8996
 * has done with the older ones), with whatever this Java holds safe of either.
 */
public final class TlsKeys {
    private final KeyStore keys;
    private final String password;

    private TlsKeys(KeyStore keys, String password) {
        this.keys = keys;
        this.password = password;
    }

    /**
     * Reads a key store of a kind that Java knows (PKCS#12 or JKS) with a private key and its certificate, the same
     * password for both.
     *
     * @throws BadFile in one sentence: cannot be read, another password, no private key, or not valid now
     */
    public static TlsKeys read(Path file, String password, Instant now) {
        if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
            throw new BadFile(file + " cannot be read: a key store is expected there.");
        }
        try {
            KeyStore keys = KeyStore.getInstance(file.toFile(), password.toCharArray());
            X509Certificate certificate = certificate(keys, password).orElseThrow(() ->
                    new BadFile(file + " holds no private key with a certificate."));
            requireValid(file, certificate, now);
            return new TlsKeys(keys, password);
        } catch (UnrecoverableKeyException e) {
            throw wrongPassword(file);
        } catch (IOException e) {
            throw e.getCause() instanceof UnrecoverableKeyException ? wrongPassword(file) : notOne(file);
        } catch (GeneralSecurityException e) {
            throw notOne(file);
        }
    }

    private static BadFile wrongPassword(Path file) {
        return new BadFile("The password given does not open the key store " + file + ".");
    }

    private static BadFile notOne(Path file) {
        return new BadFile(file + " is no key store that can be read (PKCS#12 or JKS).");
    }

    private static Optional<X509Certificate> certificate(KeyStore keys, String password)
            throws GeneralSecurityException {
        for (String alias : Collections.list(keys.aliases())) {
            Key key = keys.isKeyEntry(alias) ? keys.getKey(alias, password.toCharArray()) : null;
            if (key instanceof PrivateKey && keys.getCertificate(alias) instanceof X509Certificate certificate) {
                return Optional.of(certificate);
            }
        }
        return Optional.empty();
    }

    private static void requireValid(Path file, X509Certificate certificate, Instant now) {
        Instant from = certificate.getNotBefore().toInstant();
        Instant until = certificate.getNotAfter().toInstant();
        if (now.isAfter(until)) {
            throw new BadFile("The certificate in " + file + " ran out on " + day(until) + "; make a new one.");
        }
        if (now.isBefore(from)) {
            throw new BadFile("The certificate in " + file + " is valid only from " + day(from)
                    + " on; look at this computer's clock.");
        }
    }

    private static LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, ZoneOffset.UTC);
    }

    SslContextFactory.Server factory() {
        SslContextFactory.Server factory = new SslContextFactory.Server();
        factory.setKeyStore(keys);
        factory.setKeyManagerPassword(password);
        factory.setIncludeProtocols("TLSv1.2", "TLSv1.3");
        factory.setRenegotiationAllowed(false);
        return factory;
    }
}
