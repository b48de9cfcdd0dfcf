package benchpace.web.stream;

import benchpace.board.view.ClassView;
import java.util.Map;

/**
 * What one screen shows of a class, in parts: name of the event to the content that replaces the part. Only changed
 * ones are sent.
 */
public interface LiveScreen {
    /** One that shows nothing: it hears that something happened. */
    LiveScreen NOTHING = new LiveScreen() { };

    /** What the shared parts hang on beside the view: screens whose keys are equal have them drawn once. */
    default Object key(ClassView view) {
        return "";
    }

    /** The parts that all screens of the same key show. @param all or only those that come with a tap itself */
    default Map<String, String> shared(ClassView view, boolean all) {
        return Map.of();
    }

    /** The parts that this screen alone shows. */
    default Map<String, String> own(ClassView view) {
        return Map.of();
    }

    /**
     * Whether its events are packed on their way, each with regard to those before: that takes a quarter of a megabyte
     * as long as the screen is open, so it is for the few that nobody touches and that draw much anew.
     */
    default boolean packed() {
        return false;
    }

    /** What it shows besides, of the board and not of the class: asked for at every beat, too. */
    default Map<String, String> beside() {
        return Map.of();
    }
}
