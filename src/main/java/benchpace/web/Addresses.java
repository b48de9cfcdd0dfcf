package benchpace.web;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Under which addresses this machine is reached. */
public final class Addresses {
    private static final List<String> VIRTUAL = List.of("docker", "veth", "br-", "virbr", "vmnet", "tun", "tap");

    private Addresses() { }

    /** The address that phones on the same network can reach; empty on a machine without a network. */
    public static Optional<String> onNetwork() {
        try {
            return NetworkInterface.networkInterfaces()
                    .filter(Addresses::real)
                    .sorted(Comparator.comparing(n -> n.getName().startsWith("w") ? 0 : 1))
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(a -> a instanceof Inet4Address && !a.isLoopbackAddress() && !a.isLinkLocalAddress())
                    .map(InetAddress::getHostAddress)
                    .findFirst();
        } catch (SocketException e) {
            return Optional.empty();
        }
    }

    private static boolean real(NetworkInterface network) {
        try {
            return network.isUp() && !network.isLoopback() && VIRTUAL.stream().noneMatch(network.getName()::startsWith);
        } catch (SocketException e) {
            return false;
        }
    }

    /** The names, besides plain addresses, that may stand in a request's Host header. Lower case. */
    static Set<String> names(Set<String> further) {
        Set<String> names = new HashSet<>(Set.of("localhost"));
        further.forEach(n -> names.add(n.toLowerCase(Locale.ROOT)));
        try {
            String own = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
            names.add(own);
            names.add(own + ".local");
        } catch (UnknownHostException e) {
            // a machine without a name is reached by its address
        }
        return names;
    }
}
