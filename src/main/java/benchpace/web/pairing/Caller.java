package benchpace.web.pairing;

import benchpace.store.Session;
import benchpace.web.screen.shell.Role;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;

/**
 * Who types a PIN, as far as it can be told before the PIN is compared.
 *
 * @param circle whose wrong PINs are counted together with this one's
 * @param name   whose waits it shares: a device's mark, a network, or the console
 * @param from   the network it comes from: an IPv4 address, or the first 64 bits of an IPv6 address, as whoever has one
 *               of these has the other 2^64, too (RFC 4291, 2.5.1; RFC 8981)
 */
record Caller(Circle circle, String name, String from) {
    private static final int PREFIX_BYTES = 8;

    /** What strangers do to one another must not keep out those who were let in before, nor the board's own machine. */
    enum Circle {
        /** The machine on which the board runs. */
        CONSOLE,
        /** Devices that are, or once were, an instructor's. */
        INSTRUCTORS,
        /** Other devices that are, or once were, paired. */
        STAFF,
        STRANGERS
    }

    /**
     * @param console whether the request comes from the board's own machine
     * @param known   the pairing the device shows, even one that has run out
     */
    static Caller of(String address, boolean console, Optional<Session> known) {
        String network = network(address);
        if (console) {
            return new Caller(Circle.CONSOLE, "console", network);
        }
        return known.map(device -> new Caller(Role.of(device.role()) == Role.INSTRUCTOR
                        ? Circle.INSTRUCTORS : Circle.STAFF, device.mark(), network))
                .orElseGet(() -> new Caller(Circle.STRANGERS, network, network));
    }

    /** @param address as the connection has it: digits, never a name to be looked up */
    static String network(String address) {
        try {
            InetAddress read = InetAddress.getByName(address.replaceFirst("^\\[", "").replaceFirst("[%\\]].*", ""));
            return read instanceof Inet6Address
                    ? HexFormat.of().formatHex(Arrays.copyOf(read.getAddress(), PREFIX_BYTES)) + "::/64"
                    : read.getHostAddress(); // an IPv4 address written as IPv6 is read as what it is
        } catch (UnknownHostException e) {
            return address;
        }
    }
}
