package benchpace.web.pairing;

import benchpace.board.time.BoardTime;
import benchpace.store.PairingKeys;
import benchpace.web.screen.shell.Role;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The keys that ride behind the # of links. An instructor's opens once. The helpers' and the walls' let any number in,
 * so that one code on the wall of the back room serves all; a new one is drawn at each start, and those of before,
 * which are known by their hashes only, open as well for a year or until somebody asks for new ones.
 */
public final class Keys {
    /** Whoever asked for a key in a page stands beside the device that it is for. */
    static final Duration ASKED_FOR_STAYS = Duration.ofHours(1);
    /** Nothing that was printed hangs longer. */
    static final Duration PRINTED_STAYS = Duration.ofDays(365);

    private final PairingKeys kept;
    private final InstantSource clock;
    /** Until when each opens. */
    private final Map<String, Instant> oneTime = new ConcurrentHashMap<>();
    private Instant openedAt;
    private String helper;
    private String wall;

    public Keys(PairingKeys kept, InstantSource clock) {
        this.kept = kept;
        this.clock = clock;
        openedAt = clock.instant();
        if (BoardTime.of(clock).trusted()) {
            kept.prune(clock.instant().minus(PRINTED_STAYS));
        }
        helper = drawn(Role.HELPER);
        wall = drawn(Role.WALL);
    }

    private String drawn(Role role) {
        String key = Secrets.token();
        kept.add(key, role.token(), clock.instant());
        return key;
    }

    /** The board's time was set right by so much: keys made by the wrong one open as long as others. */
    synchronized void setRight(Duration by) {
        kept.move(openedAt, clock.instant().minus(by), by);
        oneTime.replaceAll((key, until) -> until.equals(Instant.MAX) ? until : until.plus(by));
        openedAt = openedAt.plus(by);
    }

    /** Takes over a helpers' key that was kept in clear by an older board. */
    public void takeOver(String helperKey) {
        kept.add(helperKey, Role.HELPER.token(), clock.instant());
    }

    /** A key that pairs one instructor's device and is then spent; for the console, where it waits all evening. */
    public String newInstructorKey() {
        return newInstructorKey(Instant.MAX);
    }

    /** The same for {@link #ASKED_FOR_STAYS}. */
    public String askedForInstructorKey() {
        return newInstructorKey(clock.instant().plus(ASKED_FOR_STAYS));
    }

    private String newInstructorKey(Instant until) {
        oneTime.values().removeIf(end -> !end.isAfter(clock.instant()));
        String key = Secrets.token();
        oneTime.put(key, until);
        return key;
    }

    public synchronized String helper() {
        return helper;
    }

    public synchronized String wall() {
        return wall;
    }

    /** From now on no link opens for that role but the new one. */
    public synchronized void renew(Role role) {
        kept.removeAll(role.token());
        String key = drawn(role);
        if (role == Role.HELPER) {
            helper = key;
        } else {
            wall = key;
        }
    }

    /** No key that was told before opens anything any more. */
    void spendAll() {
        oneTime.clear();
        renew(Role.HELPER);
        renew(Role.WALL);
    }

    /** What a key lets in as; of many that come with a one-time key at once one gets in. */
    public Optional<Role> open(String key) {
        Instant until = oneTime.remove(key);
        if (until != null) {
            return until.isAfter(clock.instant()) ? Optional.of(Role.INSTRUCTOR) : Optional.empty();
        }
        return openedByMany(key);
    }

    /** What a key that lets any number in lets them in as; a one-time key is neither told of nor spent. */
    Optional<Role> openedByMany(String key) {
        return kept.role(key).map(Role::of).filter(role -> role != Role.GUEST);
    }
}
