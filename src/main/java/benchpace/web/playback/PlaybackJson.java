package benchpace.web.playback;

import benchpace.board.view.Playing;
import benchpace.files.Json;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** How an evening is played, as JSON. */
public final class PlaybackJson {
    private PlaybackJson() { }

    public static ObjectNode of(Playing playing) {
        return Json.object().put("classId", playing.classId().orElse(null)).put("from", playing.from().toString())
                .put("until", playing.until().toString()).put("at", playing.at().toString())
                .put("speed", playing.speed()).put("paused", playing.paused()).put("ended", playing.ended());
    }
}
