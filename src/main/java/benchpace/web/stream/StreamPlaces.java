package benchpace.web.stream;

import benchpace.board.Mailbox;
import benchpace.web.request.Problem;
import benchpace.web.request.Refused;
import java.time.Duration;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/**
 * Who may have a live screen. Paired devices and the board's own machine always get a place, if need be a stranger's.
 * Strangers share a number of places: once all are taken, an address that has none yet gets the oldest of the address
 * that holds the most; and so does a paired device that has many for one that has fewer. So the wall on the
 * shop's television comes on although a guest plays with many pages.
 */
final class StreamPlaces {
    private static final Duration LONGEST_GOODBYE = Duration.ofMillis(500);

    private final StreamLimits limits;
    /** The oldest first. */
    private final Set<Place> open = new LinkedHashSet<>();

    /** Who asks for a place. @param kept whether it may always have one @param device its mark; empty if not paired */
    record Asker(boolean kept, Optional<String> device, String address) { }

    /** Holds one screen's place, from before its mailbox is there. */
    static final class Place {
        private final Asker asker;
        private final Runnable hangUp;
        private Optional<Mailbox> mailbox = Optional.empty();
        private boolean ended;

        Place(Asker asker, Runnable hangUp) {
            this.asker = asker;
            this.hangUp = hangUp;
        }

        /** @return the mailbox; closed if the place was ended meanwhile */
        synchronized Mailbox hold(Mailbox held) {
            mailbox = Optional.of(held);
            if (ended) {
                held.close();
            }
            return held;
        }

        synchronized void end() {
            ended = true;
            mailbox.ifPresent(Mailbox::close);
        }
    }

    StreamPlaces(StreamLimits limits) {
        this.limits = limits;
    }

    /**
     * Counts and enters in one step, so that many that come at once are not one too many.
     *
     * @param hangUp ends the connection at once, even while its screen reads nothing
     * @throws Refused if there is no place
     */
    Place enter(Asker asker, Runnable hangUp) {
        Place place = new Place(asker, hangUp);
        Optional<Place> leaving = Optional.empty();
        synchronized (open) {
            if (isFullFor(asker)) {
                leaving = Optional.of(givingWayTo(asker).orElseThrow(StreamPlaces::full));
                leaving.ifPresent(open::remove);
            }
            open.add(place);
        }
        leaving.ifPresent(p -> {
            p.end();
            p.hangUp.run();
        });
        return place;
    }

    private boolean isFullFor(Asker asker) {
        return open.size() >= limits.most() || !asker.kept() && (strangers().size() >= limits.strangers()
                || held(asker.address()) >= limits.ofOneAddress());
    }

    private Optional<Place> givingWayTo(Asker asker) {
        if (asker.kept() && strangers().isEmpty()) {
            return givingWayAmongKept(asker);
        }
        Map<String, Long> held = strangers().stream()
                .collect(Collectors.groupingBy(p -> p.asker.address(), Collectors.counting()));
        Optional<Map.Entry<String, Long>> greediest = held.entrySet().stream()
                .max(Comparator.comparingLong(Map.Entry::getValue));
        boolean fair = asker.kept()
                || held(asker.address()) == 0 && greediest.filter(g -> g.getValue() > 1).isPresent();
        return greediest.filter(g -> fair).flatMap(g -> strangers().stream()
                .filter(p -> p.asker.address().equals(g.getKey())).findFirst());
    }

    /** A place of the device that has most, for one that has fewer. */
    private Optional<Place> givingWayAmongKept(Asker asker) {
        Map<Optional<String>, Long> held = open.stream()
                .collect(Collectors.groupingBy(p -> p.asker.device(), Collectors.counting()));
        return held.entrySet().stream().max(Comparator.comparingLong(Map.Entry::getValue))
                .filter(greediest -> greediest.getValue() > held.getOrDefault(asker.device(), 0L) + 1)
                .flatMap(greediest -> open.stream().filter(p -> p.asker.device().equals(greediest.getKey()))
                        .findFirst());
    }

    private List<Place> strangers() {
        return open.stream().filter(p -> !p.asker.kept()).toList();
    }

    private long held(String address) {
        return strangers().stream().filter(p -> p.asker.address().equals(address)).count();
    }

    private static Refused full() {
        return new Refused(new Problem(503, "too-many-screens", "Too many screens are open",
                "Close some pages of this board and try again."));
    }

    void leave(Place place) {
        synchronized (open) {
            open.remove(place);
            open.notifyAll();
        }
    }

    /** Ends every screen of a device that is paired no more. @param device its mark */
    void end(String device) {
        all().stream().filter(p -> p.asker.device().filter(device::equals).isPresent()).forEach(Place::end);
    }

    /** Ends all, and waits a moment until they have left; one that does not read may stay on. */
    void endAll() {
        all().forEach(Place::end);
        long deadline = System.nanoTime() + LONGEST_GOODBYE.toNanos();
        synchronized (open) {
            long left = LONGEST_GOODBYE.toMillis();
            while (!open.isEmpty() && left > 0 && waited(left)) {
                left = TimeUnit.NANOSECONDS.toMillis(deadline - System.nanoTime());
            }
        }
    }

    private boolean waited(long millis) {
        try {
            open.wait(millis);
            return true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** The marks of the paired devices that have one. */
    Set<String> devices() {
        return all().stream().flatMap(p -> p.asker.device().stream()).collect(Collectors.toSet());
    }

    int count() {
        return all().size();
    }

    private List<Place> all() {
        synchronized (open) {
            return List.copyOf(open);
        }
    }
}
