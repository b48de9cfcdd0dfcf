package benchpace.web.screen.learned;

import benchpace.board.cooling.TaughtRoom;
import benchpace.cure.room.RoomFit;
import benchpace.store.RoomLesson;
import benchpace.words.RoomWords;
import benchpace.words.Times;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a room has taught, and each class's part in it.
 *
 * @param words what the next class there starts from
 * @param news  how many classes' parts count that nobody has looked at, in a sentence; empty if none
 * @param tag   of what stands, so that a page that is behind decides nothing unseen
 */
public record RoomPanel(RoomWords words, List<Row> rows, String news, String tag) {
    /**
     * One class's part.
     *
     * @param classId to look back on; empty if the class cannot be read
     * @param name    of the class
     * @param when    it began
     * @param change  what it made of what the room had taught before; empty of what was taken back
     * @param after   how the room cools with it; empty of what was taken back
     * @param state   what holds of it, in a sentence
     * @param mark    {@code new}, {@code accepted} or {@code taken-back}
     */
    public record Row(String id, String classId, String name, String when, String change, String after, String state,
                      String mark) {
        public boolean isNew() {
            return mark.equals("new");
        }

        public boolean counts() {
            return !mark.equals("taken-back");
        }
    }

    /** A class as it is called here. */
    public record Called(String name, Instant startsAt) { }

    /** @param classes those whose record can be read, by id */
    public static RoomPanel of(TaughtRoom room, Map<String, Called> classes, Times times) {
        RoomWords words = room.latest().map(l -> RoomWords.of(room.room(), l.fit(), room.classes(), l.learnedAt(),
                times)).orElseGet(() -> RoomWords.untaught(room.room()));
        int news = room.news();
        String told = news == 0 ? "" : (news == 1 ? "One class's part is" : news + " classes' parts are")
                + " new: in force unless you take it back.";
        return new RoomPanel(words, room.lessons().stream().map(row -> row(row, classes, times)).toList(), told,
                room.tag());
    }

    private static Row row(TaughtRoom.Row row, Map<String, Called> classes, Times times) {
        RoomLesson lesson = row.lesson();
        Optional<Called> called = Optional.ofNullable(classes.get(lesson.classId()));
        Optional<RoomFit> after = lesson.counts() ? Optional.of(lesson.fit()) : Optional.empty();
        return new Row(lesson.classId(), called.isPresent() ? lesson.classId() : "",
                called.map(Called::name).orElse("A class that cannot be read"),
                times.day(called.map(Called::startsAt).orElse(lesson.learnedAt())),
                row.change().map(RoomWords::change).orElse(""), after.map(RoomWords::middle).orElse(""),
                state(lesson, times), lesson.state().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
    }

    private static String state(RoomLesson lesson, Times times) {
        return switch (lesson.state()) {
            case NEW -> "New: in force unless you take it back.";
            case ACCEPTED -> "Accepted on " + times.date(lesson.said().orElseThrow().at()) + ".";
            case TAKEN_BACK -> "Taken back on " + times.date(lesson.said().orElseThrow().at())
                    + ": it teaches no more.";
        };
    }
}
