package benchpace.web.screen.playback;

import benchpace.board.view.Playing;
import benchpace.words.PlaybackWords;
import java.time.Duration;
import java.util.List;

/**
 * The band that marks every screen of an evening that is played back.
 *
 * @param when     which evening it is
 * @param controls whether whoever looks may move it along
 * @param lookBack where the class is looked back on; empty where that is nothing for who looks
 * @param joins    where it is watched, too: for another screen or phone
 */
public record PlaybackBand(String id, String when, Playing playing, boolean controls, String lookBack,
                           List<Join> joins) {

    /** An address and its QR code as the path of an SVG. @param words who is to open it */
    public record Join(String words, String url, String path, String viewBox) { }

    public PlaybackBand {
        joins = List.copyOf(joins);
    }

    public String mark() {
        return PlaybackWords.MARK;
    }

    /** What a tap is told. */
    public String told() {
        return PlaybackWords.nothingToTap().detail();
    }

    /** What is said once it is no longer played. */
    public String gone() {
        return PlaybackWords.noLonger().detail();
    }

    /** How fast it can go. */
    public List<Integer> speeds() {
        return List.of(1, 2, 5, 10, 20, 30, 60);
    }

    public boolean chosen(int speed) {
        return playing.speed() == speed;
    }

    /** How long the evening is. */
    public long seconds() {
        return Duration.between(playing.from(), playing.until()).toSeconds();
    }

    /** Where it is, from its beginning. */
    public long atSecond() {
        return Duration.between(playing.from(), playing.at()).toSeconds();
    }
}
