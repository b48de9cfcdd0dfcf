package benchpace.board.playback;

import benchpace.board.cooling.CureClock;
import benchpace.board.cooling.RoomCureClock;
import benchpace.board.cooling.RoomLessons;
import benchpace.board.pacing.PaceWatch;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.pacing.StepLessons;
import benchpace.board.view.ViewMaker;
import benchpace.cure.room.RoomFit;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What an evening is judged by when it is played back: the models of any class, starting from what that class itself
 * started from.
 *
 * @param cure when candles are ready
 * @param pace a fresh one each time: it remembers what it judged last
 * @param zone in which clock times are printed
 */
public record PlaybackModels(CureClock cure, Supplier<PaceWatch> pace, ZoneId zone) {
    /** Of a class, from what that started from; of an evening that is in no store, from nothing learned. Only reads. */
    public static PlaybackModels of(Optional<String> classId, RoomLessons lessons, StepLessons steps, ZoneId zone) {
        return new PlaybackModels(
                new RoomCureClock((id, room) -> classId.map(of -> lessons.of(of, room)).orElseGet(RoomFit::untaught)),
                () -> new PosteriorPaceWatch((id, live) -> classId.map(of -> steps.of(of, live)).orElseGet(Map::of)),
                zone);
    }

    ViewMaker maker() {
        return new ViewMaker(cure, pace.get(), zone);
    }
}
