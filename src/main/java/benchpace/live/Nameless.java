package benchpace.live;

import static benchpace.plan.StandIns.prose;

import benchpace.plan.ActivityId;
import benchpace.plan.NamelessPlan;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.StandIns;
import benchpace.plan.StepId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The events of a class without anybody's name. They fold as before and the class stands as it stood: what was said
 * stays said, since whoever tells a name was there before. Of nameless events it makes the same events.
 *
 * <p>Give it a class's events in their order, for a word's stand-in is by when it was first met. For one class and one
 * reader.
 */
public final class Nameless implements ClassEvent.Cases<ClassEvent> {
    private static final List<String> ROLES = List.of("instructor", "helper", "guest", "wall", "board");

    /** Somebody told a name that was forgotten; to be shown as no name. */
    private static final String FORGOTTEN = "…";

    private final StandIns standIns = new StandIns();
    private final boolean guestsOnly;

    private Nameless(boolean guestsOnly) {
        this.guestsOnly = guestsOnly;
    }

    /**
     * Without the guests: no names, no parties, nothing to be minded, and of what was noted of a seat or the class only
     * that it was noted. It goes by each event alone.
     */
    public static Nameless ofGuests() {
        return new Nameless(true);
    }

    /**
     * Without a word that anybody wrote: stand-ins for the guests ("guest 3") and those who came together, the class
     * and its plan, with the ids that are made of names, the helpers' initials, the marks of devices and what devices
     * called their taps.
     */
    public static Nameless ofEverybody() {
        return new Nameless(false);
    }

    /** A whole class. */
    public List<Recorded> all(List<Recorded> log) {
        return log.stream().map(this::of).toList();
    }

    public Recorded of(Recorded recorded) {
        ClassEvent event = recorded.event().match(this);
        if (guestsOnly) {
            return recorded.event(event);
        }
        String by = ROLES.contains(recorded.by()) ? recorded.by() : helper(recorded.by());
        return new Recorded(recorded.seq(), "nameless." + recorded.seq(), by,
                standIns.name("device", recorded.device()), recorded.at(), recorded.recordedAt(), event);
    }

    // ---- what stands for whom

    /** A name as it is to be shown: none where it was forgotten. */
    static String shown(String name) {
        return name.equals(FORGOTTEN) ? "" : name;
    }

    private String guest(SeatNumber seat, String name) {
        return name.isEmpty() || guestsOnly ? "" : "guest " + seat.value();
    }

    private ClassEvent.Place place(ClassEvent.Place place) {
        return new ClassEvent.Place(place.seat(), guest(place.seat(), place.name()), party(place.party()),
                place.candle().map(this::candle), guestsOnly ? "" : prose(place.note()));
    }

    private String party(String party) {
        return guestsOnly ? "" : standIns.name("party", party);
    }

    private String helper(String initials) {
        return guestsOnly ? initials : standIns.name("helper", initials.toUpperCase(Locale.ROOT));
    }

    private Setup setup(Setup setup) {
        Plan plan = guestsOnly ? setup.plan() : NamelessPlan.of(setup.plan(), standIns);
        String name = guestsOnly ? setup.name() : standIns.name("class", setup.name());
        return new Setup(plan, name, setup.startsAt(), setup.promisedEnd(), setup.numbering(),
                setup.seats().stream().map(this::place).toList());
    }

    /** What stands for the id of a step that was met. */
    public StepId of(StepId step) {
        return step(step);
    }

    private StepId step(StepId step) {
        return guestsOnly ? step : new StepId(standIns.id("step", step.value()));
    }

    private ActivityId activity(ActivityId activity) {
        return guestsOnly ? activity : new ActivityId(standIns.id("activity", activity.value()));
    }

    private String candle(String candle) {
        return guestsOnly ? candle : standIns.id("candle", candle);
    }

    // ---- what bears words, or ids made of words

    @Override public ClassEvent classCreated(ClassEvent.ClassCreated event) {
        return new ClassEvent.ClassCreated(setup(event.setup()));
    }

    @Override public ClassEvent classSetUpAgain(ClassEvent.ClassSetUpAgain event) {
        return new ClassEvent.ClassSetUpAgain(setup(event.setup()));
    }

    @Override public ClassEvent seatAdded(ClassEvent.SeatAdded event) {
        return new ClassEvent.SeatAdded(place(event.place()));
    }

    @Override public ClassEvent guestCorrected(ClassEvent.GuestCorrected event) {
        ClassEvent.Place guest = place(new ClassEvent.Place(event.seat(), event.name(), event.party(),
                Optional.empty(), event.note()));
        return new ClassEvent.GuestCorrected(guest.seat(), guest.name(), guest.party(), guest.note());
    }

    @Override public ClassEvent seatArrived(ClassEvent.SeatArrived event) {
        boolean told = guestsOnly && !event.name().isEmpty();
        return new ClassEvent.SeatArrived(event.seat(), told ? FORGOTTEN : guest(event.seat(), event.name()));
    }

    @Override public ClassEvent seatNoted(ClassEvent.SeatNoted event) {
        return new ClassEvent.SeatNoted(event.seat(), prose(event.text()));
    }

    @Override public ClassEvent classNoted(ClassEvent.ClassNoted event) {
        return new ClassEvent.ClassNoted(prose(event.text()));
    }

    @Override public ClassEvent candleChosen(ClassEvent.CandleChosen event) {
        return new ClassEvent.CandleChosen(event.seat(), candle(event.candle()));
    }

    @Override public ClassEvent helpClaimed(ClassEvent.HelpClaimed event) {
        return new ClassEvent.HelpClaimed(event.seat(), helper(event.helper()));
    }

    @Override public ClassEvent helpSorted(ClassEvent.HelpSorted event) {
        return new ClassEvent.HelpSorted(event.seat(), helper(event.helper()));
    }

    @Override public ClassEvent stepOpened(ClassEvent.StepOpened event) {
        return new ClassEvent.StepOpened(step(event.step()));
    }

    @Override public ClassEvent stepFinished(ClassEvent.StepFinished event) {
        return new ClassEvent.StepFinished(event.seat(), step(event.step()));
    }

    @Override public ClassEvent stillWorking(ClassEvent.StillWorking event) {
        return new ClassEvent.StillWorking(event.seat(), step(event.step()));
    }

    @Override public ClassEvent doneHinted(ClassEvent.DoneHinted event) {
        return new ClassEvent.DoneHinted(event.seat(), step(event.step()));
    }

    @Override public ClassEvent activityOpened(ClassEvent.ActivityOpened event) {
        return new ClassEvent.ActivityOpened(activity(event.activity()));
    }

    @Override public ClassEvent activityClosed(ClassEvent.ActivityClosed event) {
        return new ClassEvent.ActivityClosed(activity(event.activity()));
    }

    @Override public ClassEvent activityExtended(ClassEvent.ActivityExtended event) {
        return new ClassEvent.ActivityExtended(activity(event.activity()), event.minutes());
    }

    @Override public ClassEvent activityMoved(ClassEvent.ActivityMoved event) {
        return new ClassEvent.ActivityMoved(activity(event.activity()), event.to());
    }

    @Override public ClassEvent activitySkipped(ClassEvent.ActivitySkipped event) {
        return new ClassEvent.ActivitySkipped(activity(event.activity()));
    }

    @Override public ClassEvent activityJoined(ClassEvent.ActivityJoined event) {
        return new ClassEvent.ActivityJoined(event.seat(), activity(event.activity()));
    }

    @Override public ClassEvent activityQuit(ClassEvent.ActivityQuit event) {
        return new ClassEvent.ActivityQuit(event.seat(), activity(event.activity()));
    }

    // ---- what says nothing of anybody but their seat

    @Override public ClassEvent undone(ClassEvent.Undone event) {
        return event;
    }

    @Override public ClassEvent tapRetimed(ClassEvent.TapRetimed event) {
        return event;
    }

    @Override public ClassEvent tapReseated(ClassEvent.TapReseated event) {
        return event;
    }

    @Override public ClassEvent seatTakenAway(ClassEvent.SeatTakenAway event) {
        return event;
    }

    @Override public ClassEvent seatPaused(ClassEvent.SeatPaused event) {
        return event;
    }

    @Override public ClassEvent seatResumed(ClassEvent.SeatResumed event) {
        return event;
    }

    @Override public ClassEvent seatExpected(ClassEvent.SeatExpected event) {
        return event;
    }

    @Override public ClassEvent seatLeft(ClassEvent.SeatLeft event) {
        return event;
    }

    @Override public ClassEvent seatPaired(ClassEvent.SeatPaired event) {
        return event;
    }

    @Override public ClassEvent seatUnpaired(ClassEvent.SeatUnpaired event) {
        return event;
    }

    @Override public ClassEvent pouredAgain(ClassEvent.PouredAgain event) {
        return event;
    }

    @Override public ClassEvent roomRead(ClassEvent.RoomRead event) {
        return event;
    }

    @Override public ClassEvent pourRead(ClassEvent.PourRead event) {
        return event;
    }

    @Override public ClassEvent temperatureRead(ClassEvent.TemperatureRead event) {
        return event;
    }

    @Override public ClassEvent skinSeen(ClassEvent.SkinSeen event) {
        return event;
    }

    @Override public ClassEvent judgedSet(ClassEvent.JudgedSet event) {
        return event;
    }

    @Override public ClassEvent guestsMayTell(ClassEvent.GuestsMayTell event) {
        return event;
    }

    @Override public ClassEvent clockShifted(ClassEvent.ClockShifted event) {
        return event;
    }

    @Override public ClassEvent classClosed(ClassEvent.ClassClosed event) {
        return event;
    }
}
