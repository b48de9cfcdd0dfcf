package benchpace.store;

import benchpace.files.BadField;
import benchpace.files.Json;
import benchpace.files.ShelfJson;
import benchpace.shelf.ShelfArrangement;
import benchpace.store.sqlite.StoreException;
import com.fasterxml.jackson.core.JsonProcessingException;

/** How the shop arranged its pickup shelf, among the settings. */
public final class ShelfArrangements {
    private static final String KEY = "shelf";

    private final Settings settings;

    public ShelfArrangements(Settings settings) {
        this.settings = settings;
    }

    /** The standard one until another is put. @throws StoreException if it cannot be read back */
    public ShelfArrangement get() {
        return settings.get(KEY).map(text -> {
            try {
                return ShelfJson.readArrangement(Json.read(text));
            } catch (JsonProcessingException | BadField e) {
                throw new StoreException("The arrangement of the pickup shelf cannot be read, so the standard one is "
                        + "used until it is arranged anew.", e);
            }
        }).orElse(ShelfArrangement.STANDARD);
    }

    /** @throws CannotBeKept if it would not be read back as it is */
    public void put(ShelfArrangement arrangement) {
        String text = Json.text(ShelfJson.arrangement(arrangement));
        ReadBack.require(arrangement, () -> ShelfJson.readArrangement(Json.read(ReadBack.utf8(text))));
        settings.put(KEY, text);
    }
}
