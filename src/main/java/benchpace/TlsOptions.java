package benchpace;

import benchpace.files.BadFile;
import benchpace.web.entrance.TlsKeys;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import picocli.CommandLine.Option;

/** How the board is opened over TLS. The password is never an option: other users of a machine can read those. */
final class TlsOptions {
    private static final String PASSWORD_VARIABLE = "BENCHPACE_TLS_PASSWORD";

    @Option(names = "--tls-keystore", paramLabel = "FILE",
            description = "serve https with the key and certificate in this key store (PKCS#12 or JKS)")
    private Optional<Path> keyStore = Optional.empty();
    @Option(names = "--tls-password-file", paramLabel = "FILE",
            description = "its first line is the key store's password; default the variable " + PASSWORD_VARIABLE)
    private Optional<Path> passwordFile = Optional.empty();

    /** @throws Stop if there is no password, or the key store is not to be used */
    Optional<TlsKeys> keys(Instant now) {
        if (keyStore.isEmpty() && passwordFile.isPresent()) {
            throw new Stop(Main.BAD_INPUT, "--tls-password-file is of no use without --tls-keystore.");
        }
        try {
            return keyStore.map(file -> TlsKeys.read(file, password(file), now));
        } catch (BadFile e) {
            throw new Stop(Main.BAD_INPUT, e.getMessage());
        }
    }

    private String password(Path keys) {
        return passwordFile.map(TlsOptions::firstLine).or(() -> Optional.ofNullable(System.getenv(PASSWORD_VARIABLE)))
                .orElseThrow(() -> new Stop(Main.BAD_INPUT, "The key store " + keys + " needs its password: name a "
                        + "file with --tls-password-file, or set " + PASSWORD_VARIABLE + "."));
    }

    private static String firstLine(Path file) {
        try (var lines = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return Optional.ofNullable(lines.readLine()).orElse("");
        } catch (CharacterCodingException e) {
            throw new Stop(Main.BAD_INPUT, "The password file " + file + " is not text in UTF-8.");
        } catch (IOException e) {
            throw new Stop(Main.BAD_INPUT, "The password file " + file + " cannot be read.");
        }
    }
}
