package benchpace.live;

import java.time.Instant;

/**
 * What somebody wishes to be true of a class.
 *
 * @param id   made where the tap was made; the same id counts once, however often it is sent. 1 to 64 characters. Those
 *             that {@link #isOwn} are the board's own and taken from no client
 * @param by   who wishes it: a role, or a helper's initials
 * @param device the mark of the device it was tapped on; empty if none
 * @param at   when the tap was made
 * @param wish the event to record if the rules agree
 */
public record Command(String id, String by, String device, Instant at, ClassEvent wish) {
    public static final int LONGEST_ID = 64;

    private static final String OWN = "board.";

    /** Of no device. */
    public Command(String id, String by, Instant at, ClassEvent wish) {
        this(id, by, "", at, wish);
    }

    /** The same, tapped on that device. */
    public Command on(String tapped) {
        return new Command(id, by, tapped, at, wish);
    }

    /** The same, made at that time. */
    public Command at(Instant made) {
        return new Command(id, by, device, made, wish);
    }

    /** The id of a command that the board gives itself. */
    public static String own(String name) {
        return OWN + name;
    }

    /** Whether only the board may use this id; {@code create} is what older logs call a class's creation. */
    public static boolean isOwn(String id) {
        return id.startsWith(OWN) || id.equals("create");
    }

    public Command {
        if (id.isBlank() || id.length() > LONGEST_ID || id.chars().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException("a command id is 1 to " + LONGEST_ID + " printable characters");
        }
    }
}
