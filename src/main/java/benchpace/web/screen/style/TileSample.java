package benchpace.web.screen.style;

import benchpace.web.screen.instructor.SeatTile;
import benchpace.words.Times;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A seat's tile in one of its states.
 *
 * @param state  in the words of the style sheets
 * @param now    the instant at which it stood so, RFC 3339
 * @param unsent a tap on it has not reached the board yet
 */
public record TileSample(String state, String now, SeatTile tile, boolean unsent) {

    /** One of each that is seen somewhere, and one whose tap is on its way. */
    static List<TileSample> all(List<Situation> situations) {
        Map<String, TileSample> first = new LinkedHashMap<>();
        situations.forEach(situation -> {
            Times times = new Times(situation.view().zone());
            situation.view().seats().forEach(seat -> {
                SeatTile tile = SeatTile.of(seat, situation.view(), times);
                String state = state(tile);
                first.putIfAbsent(state, new TileSample(state, situation.view().now().toString(), tile, false));
            });
        });
        List<TileSample> all = new ArrayList<>(first.values());
        all.stream().filter(sample -> sample.tile().canFinish()).findFirst().ifPresent(sample ->
                all.add(new TileSample("not sent yet", sample.now(), sample.tile(), true)));
        return all;
    }

    private static String state(SeatTile tile) {
        return tile.mark().replace('-', ' ')
                + (tile.asks() ? ", asked" : "")
                + (tile.word().isEmpty() || tile.word().equals(tile.mark()) ? "" : ": " + tile.word())
                + (tile.helper().isEmpty() ? "" : ", with a helper")
                + (tile.helped().isEmpty() ? "" : ", just helped");
    }
}
