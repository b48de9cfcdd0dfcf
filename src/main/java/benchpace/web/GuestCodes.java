package benchpace.web;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.live.Seat;
import benchpace.plan.SeatNumber;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Arrays;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * The codes at the seats. A code stands for one seat of one class and cannot be guessed: it is the keyed hash (HMAC,
 * RFC 2104, with SHA-256) of class and seat under a secret that only the board's store knows, cut to 128 bits. It needs
 * no list to be kept, and a reprinted sheet carries the same codes.
 */
public final class GuestCodes {
    private static final String HASH = "HmacSHA256";
    private static final int CODE_BYTES = 16;

    private final byte[] secret;
    private final Map<String, Place> places = new ConcurrentHashMap<>();
    private final Set<String> known = ConcurrentHashMap.newKeySet();

    /** One seat of one class. */
    record Place(String classId, SeatNumber seat) { }

    /** @param secret at least 128 random bits, the same at every start */
    public GuestCodes(String secret) {
        this.secret = secret.getBytes(StandardCharsets.UTF_8);
    }

    /** 22 characters that are safe in addresses. */
    String code(String classId, SeatNumber seat) {
        try {
            Mac mac = Mac.getInstance(HASH);
            mac.init(new SecretKeySpec(secret, HASH));
            byte[] full = mac.doFinal((classId + "\n" + seat.value()).getBytes(StandardCharsets.UTF_8));
            return Base64.getUrlEncoder().withoutPadding().encodeToString(Arrays.copyOf(full, CODE_BYTES));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has " + HASH, e);
        }
    }

    /** The seat a code stands for, if it is one of ours. */
    Optional<Place> place(String code, Boards boards) {
        for (ClassBoard board : boards.all()) {
            if (!known.contains(board.id())) { // known only once its codes are: two that scan at once both find theirs
                board.live().seats().stream().map(Seat::number)
                        .forEach(seat -> places.put(code(board.id(), seat), new Place(board.id(), seat)));
                known.add(board.id());
            }
        }
        return Optional.ofNullable(places.get(code));
    }
}
