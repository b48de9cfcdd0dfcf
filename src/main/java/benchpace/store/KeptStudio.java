package benchpace.store;

import benchpace.files.BadField;
import benchpace.files.Json;
import benchpace.files.StudioJson;
import benchpace.plan.Studio;
import benchpace.store.sqlite.StoreException;
import com.fasterxml.jackson.core.JsonProcessingException;

/** Whose room it is, among the settings: in every backup, and never in what is sent along with a question. */
public final class KeptStudio {
    private static final String KEY = "studio";

    private final Settings settings;

    public KeptStudio(Settings settings) {
        this.settings = settings;
    }

    /** {@link Studio#NONE} until somebody says. @throws StoreException if it cannot be read back */
    public Studio get() {
        return settings.get(KEY).map(text -> {
            try {
                return StudioJson.read(Json.read(text));
            } catch (JsonProcessingException | BadField | IllegalArgumentException e) {
                throw new StoreException("The studio's name, place and colour cannot be read, so the screens do "
                        + "without until they are said anew.", e);
            }
        }).orElse(Studio.NONE);
    }

    /** @throws CannotBeKept if it would not be read back as it is */
    public void put(Studio studio) {
        if (!studio.known()) {
            settings.remove(KEY);
            return;
        }
        String text = Json.text(StudioJson.write(studio));
        ReadBack.require(studio, () -> StudioJson.read(Json.read(ReadBack.utf8(text))));
        settings.put(KEY, text);
    }
}
