package benchpace.board.cooling;

import benchpace.cure.room.FitChange;
import benchpace.cure.room.RoomFit;
import benchpace.store.RoomLesson;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * What a room has taught, class by class.
 *
 * @param room    its name; empty for "this room"
 * @param lessons the class that closed last first
 */
public record TaughtRoom(String room, List<Row> lessons) {
    /**
     * One class's part.
     *
     * @param change what it made of what the room had taught before it; empty of one that was taken back
     */
    public record Row(RoomLesson lesson, Optional<FitChange> change) { }

    public TaughtRoom {
        lessons = List.copyOf(lessons);
    }

    /** @param lessons of one room, in the order in which classes ended; at least one */
    static TaughtRoom of(List<RoomLesson> lessons) {
        List<Row> rows = new ArrayList<>();
        RoomFit before = RoomFit.untaught();
        for (RoomLesson lesson : lessons) {
            rows.add(new Row(lesson, lesson.counts() ? Optional.of(lesson.fit().since(before)) : Optional.empty()));
            before = lesson.counts() ? lesson.fit() : before;
        }
        Collections.reverse(rows);
        return new TaughtRoom(lessons.get(0).room(), rows);
    }

    /** The lesson that the next class starts from; none if none counts. */
    public Optional<RoomLesson> latest() {
        return lessons.stream().map(Row::lesson).filter(RoomLesson::counts).findFirst();
    }

    /** How many lessons count. */
    public int classes() {
        return (int) lessons.stream().filter(row -> row.lesson().counts()).count();
    }

    /** How many count that nobody has looked at. */
    public int news() {
        return (int) lessons.stream().filter(row -> row.lesson().state() == RoomLesson.State.NEW).count();
    }

    /** The same as long as nothing was learned or decided. */
    public String tag() {
        return Integer.toHexString(lessons.stream().map(row -> row.lesson().toString()).toList().hashCode());
    }
}
