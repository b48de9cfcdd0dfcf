package benchpace.live;

import java.util.Set;

/**
 * What holds of an event by its kind alone, whatever its class is like. The one place that says so: the rules and the
 * edge ask here, and the pages are given what they go by.
 */
public enum EventTrait {
    /** Whoever helps at the table may wish for it; all else is the instructor's. */
    HELPERS_MAY(ClassEvent.StepFinished.class, ClassEvent.StillWorking.class, ClassEvent.HelpClaimed.class,
            ClassEvent.HelpSorted.class, ClassEvent.SeatNoted.class, ClassEvent.ClassNoted.class,
            ClassEvent.SeatPaused.class, ClassEvent.SeatResumed.class, ClassEvent.TemperatureRead.class,
            ClassEvent.SkinSeen.class, ClassEvent.ActivityJoined.class, ClassEvent.ActivityQuit.class),

    /** It may still be wished for once the class is closed. */
    AFTER_THE_CLOSE(ClassEvent.Undone.class, ClassEvent.TapRetimed.class, ClassEvent.SeatNoted.class,
            ClassEvent.ClassNoted.class, ClassEvent.JudgedSet.class, ClassEvent.ClassClosed.class),

    /** Said twice in a row it counts twice: another note, another reading. All else is then so already. */
    EACH_COUNTS(ClassEvent.SeatNoted.class, ClassEvent.ClassNoted.class, ClassEvent.StillWorking.class,
            ClassEvent.TemperatureRead.class, ClassEvent.RoomRead.class, ClassEvent.PourRead.class,
            ClassEvent.ActivityExtended.class);

    private final Set<Class<? extends ClassEvent>> kinds;

    @SafeVarargs EventTrait(Class<? extends ClassEvent>... kinds) {
        this.kinds = Set.of(kinds);
    }

    public boolean of(ClassEvent event) {
        return kinds.contains(event.getClass());
    }

    /** All kinds of event of which it holds. */
    public Set<Class<? extends ClassEvent>> kinds() {
        return kinds;
    }
}
