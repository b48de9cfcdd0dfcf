package benchpace.web.entrance;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.server.Request;

/**
 * All open connections. A newcomer is never turned away, for it may be a paired device that has not said so yet;
 * beyond a limit the one that has been silent, or at the same request, for longest is hung up on, among strangers of
 * the address that holds the most. A paired device's connection makes room only when there are too many in all, which
 * takes hundreds of such; then it is one of the device that holds the most.
 */
public final class Lines {
    private final EntranceLimits limits;
    private final LongSupplier nanos;
    private final Map<EndPoint, Line> all = new LinkedHashMap<>();

    public Lines(EntranceLimits limits) {
        this(limits, System::nanoTime);
    }

    Lines(EntranceLimits limits, LongSupplier nanos) {
        this.limits = limits;
        this.nanos = nanos;
    }

    void opened(EndPoint end) {
        Optional<Line> leaving;
        synchronized (this) {
            Line line = new Line(end, nanos.getAsLong());
            all.put(end, line);
            leaving = oneTooMany(line);
            leaving.ifPresent(l -> all.remove(l.end));
        }
        leaving.ifPresent(l -> l.end.close());
    }

    private Optional<Line> oneTooMany(Line newcomer) {
        Map<String, Long> strangers = all.values().stream().filter(Line::isStranger)
                .collect(Collectors.groupingBy(l -> l.address, Collectors.counting()));
        if (strangers.get(newcomer.address) > limits.connections().ofOneAddress()) {
            return longest(l -> l.isStranger() && l.address.equals(newcomer.address));
        }
        if (all.size() > limits.connections().most()) {
            Optional<String> greediest = greediestDevice();
            if (greediest.isPresent()) {
                return longest(l -> l.device().equals(greediest));
            }
        }
        long together = strangers.values().stream().mapToLong(Long::longValue).sum();
        if (together > limits.connections().strangers() || all.size() > limits.connections().most()) {
            long most = strangers.values().stream().mapToLong(Long::longValue).max().orElse(0);
            return longest(l -> l.isStranger() && strangers.get(l.address) == most);
        }
        return Optional.empty();
    }

    private Optional<String> greediestDevice() {
        return all.values().stream().flatMap(l -> l.device().stream())
                .collect(Collectors.groupingBy(d -> d, Collectors.counting())).entrySet().stream()
                .max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }

    private Optional<Line> longest(Predicate<Line> among) {
        return all.values().stream().filter(among).min(Comparator.comparingLong(Line::sinceNanos));
    }

    synchronized void closed(EndPoint end) {
        all.remove(end);
    }

    /** Hangs up on all that have had their time to ask something. */
    void hangUpOnTheSilent() {
        List<Line> silent;
        synchronized (this) {
            long before = nanos.getAsLong() - limits.toAsk().toNanos();
            silent = all.values().stream()
                    .filter(l -> l.doing() == Line.Doing.WAITING && l.sinceNanos() - before < 0).toList();
        }
        silent.forEach(l -> l.end.close());
    }

    synchronized void asks(Request request, Optional<String> device) {
        change(request, Line.Doing.ASKING);
        Optional.ofNullable(all.get(end(request))).ifPresent(line -> line.comesFrom(device));
    }

    void listens(Request request) {
        change(request, Line.Doing.LISTENING);
    }

    void isAnswered(Request request) {
        change(request, Line.Doing.WAITING);
    }

    private synchronized void change(Request request, Line.Doing doing) {
        Line line = all.get(end(request));
        if (line != null) {
            line.does(doing, nanos.getAsLong());
        }
    }

    /** How many connections are open. */
    public synchronized int count() {
        return all.size();
    }

    /** Ends the connection of a request at once, even while nobody reads at its other end. */
    public static void hangUp(Request request) {
        end(request).close();
    }

    /** The connection as the network knows it, beneath any encryption. */
    static EndPoint end(Request request) {
        EndPoint end = request.getConnectionMetaData().getConnection().getEndPoint();
        while (end instanceof EndPoint.Wrapper wrapper) {
            end = wrapper.unwrap();
        }
        return end;
    }
}
