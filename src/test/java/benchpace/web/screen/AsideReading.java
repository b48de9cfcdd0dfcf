package benchpace.web.screen;

import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.board.waiting.WaitView.CallView;
import benchpace.files.calendar.CalendarEntry;
import benchpace.files.calendar.ClassCalendar;
import benchpace.web.screen.shelf.LeaveSheet;
import benchpace.words.Times;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads what is said of a class beside its pages: in the dialogue of leaving early and in its calendar. */
final class AsideReading {
    private static final String CALENDAR = "calendar";
    private final ClassView view;
    private final Telling telling;

    AsideReading(ClassView view, Telling telling) {
        this.view = view;
        this.telling = telling;
    }

    void read() {
        view.seats().stream().filter(s -> s.counts() && s.candle().isPresent()).forEach(this::leaving);
        calendar();
    }

    private void leaving(SeatView seat) {
        String words = LeaveSheet.of(seat.seat(), seat.name(), false, seat.candle().orElseThrow(), view.now(),
                view.now(), List.of(), "oak 12", view.now(), new Times(view.zone())).candle();
        telling.each("eady about " + Telling.TIME + " to " + Telling.TIME, words, m -> telling.tell(
                "seat " + seat.seat() + " is ready", m.group(1) + " to " + m.group(2), "dialogue of leaving"));
    }

    private void calendar() {
        Instant planned = view.waiting().plannedAt().orElse(view.now());
        Map<String, String> next = new TreeMap<>();
        List<CalendarEntry> entries = new ClassCalendar(view.id(), view.name(), view.place(), view.startsAt(),
                view.startsAt()).with(view.waiting().calls().stream().map(CallView::event).toList()).entries();
        entries.stream().skip(1).map(CalendarEntry.Timed.class::cast).forEach(entry -> {
            String from = Telling.clock(entry.from());
            if (entry.summary().equals("First candles ready, about")) {
                telling.tell("the first candle can be tried at", from, CALENDAR);
            } else if (entry.summary().endsWith(", about")) {
                telling.tell(entry.summary().replace(", about", "") + " begins about", from, CALENDAR);
            } else if (entry.from().isAfter(planned)) {
                next.merge(entry.summary(), from, PageReading::earlier);
            } else if (entry.until().isAfter(planned)) {
                telling.tell(entry.summary() + " goes on until", Telling.clock(entry.until()), CALENDAR);
            }
        });
        if (view.cure().allPoured()) { // before that only what hangs on no candle still to be poured is called
            next.forEach((name, clock) -> telling.tell("next time of " + name, clock, CALENDAR));
        }
    }
}
