package benchpace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import benchpace.files.BadFile;
import benchpace.web.entrance.TlsKeys;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The board over TLS, with a key store made as the README says: by the JDK's own keytool. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TlsTest {
    private static final String PASSWORD = "wax and wick";

    @TempDir static Path folder;
    private static Path keys;
    private static Path old;
    private static Path passwordFile;

    @BeforeAll static void make() throws Exception {
        keys = keyStore("board.p12", "-validity", "30", "-ext", "SAN=dns:localhost,ip:127.0.0.1");
        old = keyStore("old.p12", "-startdate", "-10d", "-validity", "5");
        passwordFile = Files.writeString(folder.resolve("password"), PASSWORD + "\n");
    }

    private static Path keyStore(String name, String... more) throws IOException, InterruptedException {
        Path file = folder.resolve(name);
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin",
                "keytool").toString(), "-genkeypair", "-alias", "board", "-keyalg", "EC", "-dname", "CN=localhost",
                "-storetype", "PKCS12", "-keystore", file.toString(), "-storepass", PASSWORD));
        command.addAll(List.of(more));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes());
        assertThat(process.waitFor()).as(said).isZero();
        return file;
    }

    /** A browser that was told to trust this certificate and no other. */
    private static HttpClient trusting() throws Exception {
        KeyStore store = KeyStore.getInstance(keys.toFile(), PASSWORD.toCharArray());
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("board", store.getCertificate("board"));
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return HttpClient.newBuilder().sslContext(context).build();
    }

    private static Path data(String name) {
        return folder.resolve("data-" + name);
    }

    @Test void the_board_is_paired_and_followed_over_tls_and_plain_http_is_told_the_way() throws Exception {
        try (Program program = Program.run("serve", "--port", "0", "--data", data("tls").toString(), "--pin", "2468",
                "--tls-keystore", keys.toString(), "--tls-password-file", passwordFile.toString())) {
            String base = "https://localhost:" + program.port();
            HttpClient client = trusting();

            await().until(() -> program.out().contains("Ctrl-C"));
            assertThat(program.out()).startsWith("Benchpace is ready: " + base + "/").doesNotContain("http://");
            HttpResponse<String> paired = client.send(HttpRequest.newBuilder(URI.create(base + "/api/pair"))
                    .POST(HttpRequest.BodyPublishers.ofString("{\"pin\":\"2468\"}")).build(),
                    HttpResponse.BodyHandlers.ofString());
            assertThat(paired.statusCode()).isEqualTo(200);
            assertThat(paired.sslSession().orElseThrow().getProtocol()).isIn("TLSv1.2", "TLSv1.3");
            assertThat(paired.headers().firstValue("Set-Cookie")).get().asString()
                    .contains("Secure", "HttpOnly", "SameSite=Strict");
            String cookie = paired.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
            HttpResponse<String> classes = client.send(HttpRequest.newBuilder(URI.create(base + "/api/classes"))
                    .header("Cookie", cookie).build(), HttpResponse.BodyHandlers.ofString());
            String id = classes.body().replaceFirst("(?s).*?\"id\":\"([^\"]+)\".*", "$1");
            HttpResponse<InputStream> stream = client.send(HttpRequest.newBuilder(
                    URI.create(base + "/api/classes/" + id + "/stream")).build(),
                    HttpResponse.BodyHandlers.ofInputStream());
            try (InputStream events = stream.body()) {
                assertThat(new String(events.readNBytes("event: state".length()))).isEqualTo("event: state");
            }
            // a later start without TLS must find browsers that still ask for it in the clear
            assertThat(classes.headers().firstValue("Strict-Transport-Security")).isEmpty();

            HttpResponse<String> plain = client.send(HttpRequest.newBuilder(
                    URI.create("http://localhost:" + program.port() + "/table")).build(),
                    HttpResponse.BodyHandlers.ofString());
            assertThat(plain.statusCode()).isEqualTo(426);
            assertThat(plain.body()).contains("https://").doesNotContain("<");
        }
    }

    @Test void a_key_store_that_cannot_be_used_is_told_in_one_sentence() {
        Instant now = Instant.now();
        assertThatThrownBy(() -> TlsKeys.read(keys, "wrong", now)).isInstanceOf(BadFile.class)
                .hasMessageContaining("password").hasMessageContaining(keys.toString());
        assertThatThrownBy(() -> TlsKeys.read(old, PASSWORD, now)).isInstanceOf(BadFile.class)
                .hasMessageContaining("ran out on");
        assertThatThrownBy(() -> TlsKeys.read(keys, PASSWORD, now.minusSeconds(86_400 * 3)))
                .isInstanceOf(BadFile.class).hasMessageContaining("valid only from");
        assertThatThrownBy(() -> TlsKeys.read(passwordFile, PASSWORD, now)).isInstanceOf(BadFile.class)
                .hasMessageContaining("no key store");
        assertThatThrownBy(() -> TlsKeys.read(folder, PASSWORD, now)).isInstanceOf(BadFile.class)
                .hasMessageContaining("cannot be read");
        assertThatThrownBy(() -> TlsKeys.read(folder.resolve("none.p12"), PASSWORD, now))
                .isInstanceOf(BadFile.class).hasMessageContaining("cannot be read");
    }

    @Test void a_store_without_a_private_key_is_told() throws Exception {
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("board", KeyStore.getInstance(keys.toFile(), PASSWORD.toCharArray())
                .getCertificate("board"));
        Path file = folder.resolve("certificates.p12");
        try (var out = Files.newOutputStream(file)) {
            trusted.store(out, PASSWORD.toCharArray());
        }

        assertThatThrownBy(() -> TlsKeys.read(file, PASSWORD, Instant.now())).isInstanceOf(BadFile.class)
                .hasMessageContaining("no private key");
    }

    private static void assertBadInput(String sentence, String... options) throws Exception {
        List<String> arguments = new ArrayList<>(List.of("serve", "--port", "0", "--data", data("bad").toString()));
        arguments.addAll(List.of(options));
        try (Program program = Program.run(arguments.toArray(String[]::new))) {
            assertThat(program.exitCode()).isEqualTo(2);
            assertThat(program.err().lines()).hasSize(1).first().asString().contains(sentence);
        }
    }

    @Test void the_program_ends_with_2_and_says_why() throws Exception {
        assertBadInput("ran out on", "--tls-keystore", old.toString(), "--tls-password-file", passwordFile.toString());
        assertBadInput("needs its password", "--tls-keystore", keys.toString());
    }
}
