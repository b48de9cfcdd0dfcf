package benchpace.web;

import benchpace.board.Boards;
import benchpace.store.Settings;
import benchpace.web.guest.GuestCodes;
import benchpace.web.pairing.Keys;

/**
 * What older boards kept in clear in the data folder: the helpers' key, and the secret that guests' codes were made
 * with. What was printed of them opens on; they themselves are erased.
 */
public final class OlderSecrets {
    static final String HELPER_KEY = "helper-key";
    static final String GUEST_SECRET = "guest-secret";

    private OlderSecrets() { }

    public static void takeOver(Settings settings, Keys keys, GuestCodes codes, Boards boards) {
        settings.get(HELPER_KEY).ifPresent(keys::takeOver);
        settings.get(GUEST_SECRET).ifPresent(secret -> codes.takeOver(secret, boards));
        settings.erase(HELPER_KEY);
        settings.erase(GUEST_SECRET); // at each start, for one may have ended before the log was emptied
    }
}
