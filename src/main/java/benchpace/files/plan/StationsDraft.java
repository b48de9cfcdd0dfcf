package benchpace.files.plan;

import benchpace.files.Fields;
import benchpace.plan.SeatNumber;
import benchpace.plan.Stations;
import java.time.Duration;
import java.util.Optional;

/** What serves a step while it is read. */
final class StationsDraft extends Draft<Stations> {
    private int atOnce = 1;
    private String what = "a station";
    private Duration each;

    private StationsDraft(Fields fields, Duration each) {
        super(fields);
        this.each = each;
    }

    /** @param step how long the step takes, which a seat keeps its station if nothing else is said */
    static Optional<Stations> read(Fields fields, Duration step) {
        Duration sound = step.compareTo(Stations.LONGEST) > 0 ? Stations.LONGEST : step;
        StationsDraft draft = new StationsDraft(fields, sound);
        draft.put("atOnce", fields.whole("atOnce", 1, SeatNumber.MOST).map(Long::intValue), draft.atOnce,
                v -> draft.atOnce = v);
        draft.put("what", fields.text("what"), draft.what, v -> draft.what = v);
        draft.put("minutesEach", fields.minutes("minutesEach", step), sound, v -> draft.each = v);
        return draft.finished();
    }

    @Override public Stations get() {
        return new Stations(atOnce, what, each);
    }
}
