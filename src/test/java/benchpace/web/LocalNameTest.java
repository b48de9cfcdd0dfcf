package benchpace.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The board's name on the local network: said where there is one, and missed by nobody where there is none. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LocalNameTest {
    @TempDir Path data;
    private final List<String> told = new CopyOnWriteArrayList<>();
    private final AtomicBoolean left = new AtomicBoolean();

    private final LocalName.Announced second = new LocalName.Announced() {
        @Override public String name() {
            return "Benchpace-2.local";
        }

        @Override public void farewell() {
            left.set(true);
        }
    };

    private static InetAddress here() {
        return InetAddress.getLoopbackAddress();
    }

    private int statusUnder(String host, int port) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            OutputStream out = socket.getOutputStream();
            out.write(("GET /health HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
            return Integer.parseInt(answer.split(" ")[1]);
        }
    }

    @Test void the_name_the_network_gave_is_told_and_accepted_as_the_boards_own_and_no_other() throws IOException {
        try (TestBoard board = TestBoard.open(data); LocalName name = new LocalName((at, wanted, port) -> second)) {
            board.server().alsoKnownAs(name::name);
            assertThat(statusUnder("benchpace-2.local:" + board.port(), board.port())).isEqualTo(421);

            name.announce(here(), board.port(), told::add);

            await().untilAsserted(() -> assertThat(told).containsExactly("Benchpace-2.local"));
            assertThat(statusUnder("benchpace-2.local:" + board.port(), board.port())).isEqualTo(200);
            assertThat(statusUnder("benchpace.local:" + board.port(), board.port())).isEqualTo(421);
            assertThat(board.get("/", "").ok().body()).contains("http://benchpace-2.local:" + board.port() + "/wall");
        }
        assertThat(left).isTrue();
    }

    @Test void a_network_without_such_names_or_a_missing_library_leaves_the_board_without_one() {
        for (Throwable trouble : List.of(new IOException("no multicast"), new IllegalStateException(),
                new NoClassDefFoundError("JmDNS"))) {
            CountDownLatch tried = new CountDownLatch(1);
            try (LocalName name = new LocalName((at, wanted, port) -> {
                tried.countDown();
                if (trouble instanceof Error e) {
                    throw e;
                } else if (trouble instanceof RuntimeException e) {
                    throw e;
                }
                throw (IOException) trouble;
            })) {
                name.announce(here(), 1, told::add);
                await().until(() -> tried.getCount() == 0);

                assertThat(name.name()).isEmpty();
            }
        }
        assertThat(told).isEmpty();
    }

    @Test void a_network_that_takes_its_time_holds_up_neither_the_start_nor_the_stop() {
        CountDownLatch answer = new CountDownLatch(1);
        LocalName name = new LocalName((at, wanted, port) -> {
            answer.await();
            return second;
        });
        name.announce(here(), 1, told::add);
        assertThat(name.name()).isEmpty();

        name.close();
        answer.countDown();

        await().untilAsserted(() -> assertThat(left).isTrue());
        assertThat(name.name()).isEmpty();
        assertThat(told).isEmpty();
    }

    /** By the library itself, on this machine's own network, if that has multicast. */
    @Test void by_multicast_the_board_is_called_benchpace_or_the_next_free_name() throws IOException {
        InetAddress at = InetAddress.getByName(Addresses.onNetwork().orElse("127.0.0.1"));
        Assumptions.assumeFalse(at.isLoopbackAddress() || !NetworkInterface.getByInetAddress(at).supportsMulticast(),
                "this machine has no network with multicast");
        try (LocalName name = new LocalName()) {
            name.announce(at, 7070, told::add);
            await().atMost(java.time.Duration.ofSeconds(25)).untilAsserted(() -> assertThat(told).hasSize(1));

            assertThat(told.get(0)).matches("benchpace(-\\d+)?\\.local");
            assertThat(name.name()).contains(told.get(0));
        }
    }
}
