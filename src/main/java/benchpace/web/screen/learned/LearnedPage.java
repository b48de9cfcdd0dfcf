package benchpace.web.screen.learned;

import benchpace.web.screen.shell.Shell;
import java.util.List;

/** All that past classes taught: of rooms and their cure, and of plans and their steps. */
public record LearnedPage(Shell shell, List<RoomPanel> rooms, List<PlanLesson> plans) {
    /**
     * A plan at a place.
     *
     * @param missing what is said where it cannot be worked out just now; empty if it can
     */
    public record PlanLesson(String name, String place, LessonPanel panel, String missing) { }
}
