package benchpace.board.cooling;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.waiting.WaitEvening;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.store.Rooms;
import benchpace.store.sqlite.Database;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A lesson takes a while to draw, and every class's round asks whether there is one. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RoomLessonsTest {
    @TempDir Path data;

    @Test void a_lesson_that_is_being_drawn_holds_up_no_class_that_has_none_to_draw() throws Exception {
        LiveClass open = new WaitEvening(3).pour(40, 1, 2).live();
        LiveClass closed = new WaitEvening(3).pour(40, 1, 2).record(90, new ClassEvent.ClassClosed()).live();
        assertThat(closed.plan().candles()).isNotEmpty();
        try (Database database = Database.open(data)) {
            RoomLessons lessons = new RoomLessons(new Rooms(database), InstantSource.system());
            lessons.draw("thursday", closed);

            synchronized (lessons) { // as while one is drawn
                for (Map.Entry<String, LiveClass> of : Map.of("friday", open, "thursday", closed).entrySet()) {
                    CompletableFuture.runAsync(() -> lessons.draw(of.getKey(), of.getValue()))
                            .get(20, TimeUnit.SECONDS);
                }
            }
        }
    }
}
