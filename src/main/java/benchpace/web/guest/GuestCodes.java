package benchpace.web.guest;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.time.BoardTime;
import benchpace.live.Seat;
import benchpace.plan.SeatNumber;
import benchpace.store.SeatCodes;
import benchpace.web.pairing.Secrets;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * The codes at the seats: 160 random bits, each for one seat of one class. They are known in memory while the board
 * runs and by their hashes after that, so a sheet that is printed again after a restart carries new codes, and the
 * former go on speaking for the same seats. They are forgotten some time after their class was closed, not at once, as
 * closing can be undone.
 */
public final class GuestCodes {
    static final Duration OUTLIVES_CLASS = Duration.ofHours(12);

    private final SeatCodes kept;
    private final InstantSource clock;
    private final Map<String, Map<Integer, String>> told = new HashMap<>();

    /** One seat of one class. */
    record Place(String classId, SeatNumber seat) { }

    public GuestCodes(SeatCodes kept, InstantSource clock) {
        this.kept = kept;
        this.clock = clock;
    }

    /** One for each of these seats: 27 characters that are safe in addresses; the same while the board runs. */
    public synchronized Map<Integer, String> codes(String classId, List<SeatNumber> seats) {
        Map<Integer, String> known = told.computeIfAbsent(classId, of -> new TreeMap<>());
        Map<Integer, String> drawn = new TreeMap<>();
        seats.stream().map(SeatNumber::value).filter(seat -> !known.containsKey(seat))
                .forEach(seat -> drawn.put(seat, Secrets.token()));
        if (!drawn.isEmpty()) {
            kept.add(classId, drawn);
            known.putAll(drawn);
        }
        return Map.copyOf(known);
    }

    /** The seat a code stands for, if it is one of ours and its class is there. */
    Optional<Place> place(String code, Boards boards) {
        return kept.place(code).filter(place -> boards.find(place.classId()).isPresent())
                .map(place -> new Place(place.classId(), new SeatNumber(place.seat())));
    }

    /** Forgets the codes of classes that are over, or whose guests are forgotten; none while the clock is in doubt. */
    public synchronized void forgetThoseOf(Boards boards) {
        if (!BoardTime.of(clock).trusted()) {
            return;
        }
        Instant over = clock.instant().minus(OUTLIVES_CLASS);
        for (String classId : kept.classes()) {
            boards.find(classId).filter(board -> board.forgotten().isPresent()
                    || board.live().closedAt().filter(at -> at.isBefore(over)).isPresent())
                    .ifPresent(board -> {
                        kept.removeOf(classId);
                        told.remove(classId);
                    });
        }
    }

    /**
     * Keeps the codes working that an older board made: keyed hashes (HMAC, RFC 2104, with SHA-256) of class and seat
     * under a secret that stood in clear in the data folder, cut to 128 bits.
     */
    public void takeOver(String secret, Boards boards) {
        for (ClassBoard board : boards.atHand()) {
            if (board.live().closedAt().isEmpty()) {
                Map<Integer, String> codes = new TreeMap<>();
                board.live().seats().stream().map(Seat::number)
                        .forEach(seat -> codes.put(seat.value(), ofOlderBoard(secret, board.id(), seat)));
                kept.add(board.id(), codes);
            }
        }
    }

    public static String ofOlderBoard(String secret, String classId, SeatNumber seat) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(secret.getBytes(StandardCharsets.UTF_8), "HmacSHA256"));
            byte[] full = mac.doFinal((classId + "\n" + seat.value()).getBytes(StandardCharsets.UTF_8));
            return Base64.getUrlEncoder().withoutPadding().encodeToString(Arrays.copyOf(full, 16));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has HMAC with SHA-256", e);
        }
    }
}
