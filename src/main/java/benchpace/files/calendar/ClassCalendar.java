package benchpace.files.calendar;

import benchpace.breaks.WaitEvent;
import benchpace.plan.SeatNumber;
import benchpace.shelf.ShelfEntry;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What of a class goes into a calendar: the class, its breaks, and by when candles are to be collected. No names. */
public final class ClassCalendar {
    private final String classId;
    private final List<CalendarEntry> entries = new ArrayList<>();

    /** @param where the venue in words; may be empty */
    public ClassCalendar(String classId, String className, String where, Instant from, Instant until) {
        this.classId = classId;
        entries.add(new CalendarEntry.Timed(uid("class"), from, until, className, where, ""));
    }

    /** Adds what the wait plan calls out: breaks, openings, wrapping; about when the first candles are ready. */
    public ClassCalendar with(List<WaitEvent> events) {
        events.forEach(this::add);
        return this;
    }

    /** Adds a whole-day reminder for each candle that stands on the shelf. */
    public ClassCalendar withShelf(List<ShelfEntry> shelf, ZoneId zone) {
        for (ShelfEntry e : shelf) {
            if (!e.collected()) {
                String word = e.claimWord().map(w -> "Claim word: " + w + ".").orElse("");
                entries.add(new CalendarEntry.AllDay(uid("shelf-" + e.id()), e.collectBy().atZone(zone).toLocalDate(),
                        "Last day to collect the candle of seat " + e.seat(), "Shelf: " + e.place(), word));
            }
        }
        return this;
    }

    public List<CalendarEntry> entries() {
        return List.copyOf(entries);
    }

    private void add(WaitEvent event) {
        String who = "Seats " + event.seats().stream().map(SeatNumber::toString).collect(Collectors.joining(", "));
        String key = "-" + event.at().getEpochSecond() / 60;
        if (event instanceof WaitEvent.Opens e) {
            timed(e.activity() + key, e.at(), e.at(), e.name(), e.where(), who);
        } else if (event instanceof WaitEvent.ClassBreak e) {
            // a class break happens once, so moving it keeps its uid and a calendar replaces the old time
            timed(e.activity().value(), e.at(), e.until(), e.name(), e.where(), who);
        } else if (event instanceof WaitEvent.FirstReady e) {
            timed("first-ready", e.at(), e.at(), "First candles ready, about", "", who + ". An estimate; the "
                    + "instructor's hand test decides.");
        } else if (event instanceof WaitEvent.WrappingFrom e) {
            timed(e.activity().value(), e.at(), e.at(), e.name() + ", about", e.where(),
                    "After the instructor's hand test.");
        } else if (event instanceof WaitEvent.Wrapping e) {
            timed(e.activity() + key, e.at(), e.at(), e.name(), e.where(), who);
        }
    }

    private void timed(String part, Instant from, Instant until, String summary, String where, String who) {
        entries.add(new CalendarEntry.Timed(uid(part), from, until, summary, where, who));
    }

    private String uid(String part) {
        return classId + "-" + part + "@benchpace.invalid";
    }
}
