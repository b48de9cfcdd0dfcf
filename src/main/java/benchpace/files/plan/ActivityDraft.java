package benchpace.files.plan;

import benchpace.files.Fields;
import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import benchpace.plan.ActivityKind;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;

/** One activity of the wait while it is read. */
final class ActivityDraft extends Draft<Activity> {
    private ActivityId id = new ActivityId("activity");
    private String name = "this activity";
    private ActivityKind kind = ActivityKind.BROWSING;
    private Activity.Audience audience = Activity.Audience.OWN_PACE;
    private Duration typical = Duration.ofMillis(1);
    private Duration longest = Duration.ofHours(4);
    private int places = 1;
    private Set<Activity.Need> needs = Set.of();
    private boolean interruptible = true;
    private String where = "";
    private String ledBy = "";
    private String cue = "";
    private String caution = "";

    private ActivityDraft(Fields fields) {
        super(fields);
    }

    static Optional<Activity> read(Fields fields) {
        ActivityDraft draft = new ActivityDraft(fields);
        draft.put("id", fields.named("id", ActivityId::new), draft.id, v -> draft.id = v);
        draft.put("name", fields.text("name"), draft.name, v -> draft.name = v);
        draft.put("kind", fields.choice("kind", ActivityKind.class), draft.kind, v -> draft.kind = v);
        draft.put("audience", fields.choice("audience", Activity.Audience.class), draft.audience,
                v -> draft.audience = v);
        draft.put("typicalMinutes", fields.minutes("typicalMinutes"), draft.typical, v -> draft.typical = v);
        draft.put("longestMinutes", fields.minutes("longestMinutes"), draft.longest, v -> draft.longest = v);
        draft.put("places", fields.whole("places", 1, SeatNumber.MOST).map(Long::intValue),
                draft.places, v -> draft.places = v);
        draft.put("needs", Optional.of(fields.choices("needs", Activity.Need.class)), draft.needs,
                v -> draft.needs = v);
        draft.put("interruptible", fields.yesOrNo("interruptible", true), true, v -> draft.interruptible = v);
        draft.put("where", fields.text("where", ""), "", v -> draft.where = v);
        draft.put("ledBy", fields.text("ledBy", ""), "", v -> draft.ledBy = v);
        draft.put("cue", fields.text("cue", ""), "", v -> draft.cue = v);
        draft.put("caution", fields.text("caution", ""), "", v -> draft.caution = v);
        return draft.finished();
    }

    @Override public Activity get() {
        return new Activity(id, name, kind, audience, typical, longest, places, needs, interruptible, where, ledBy,
                cue, caution);
    }
}
