package benchpace.files.plan;

import benchpace.files.Fields;
import benchpace.plan.Opening;
import benchpace.plan.Picture;
import benchpace.plan.Stations;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import java.time.Duration;
import java.util.Optional;

/** One step of a plan while it is read. */
final class StepDraft extends Draft<Step> {
    static final Duration USUAL_ALLOWANCE = Duration.ofMinutes(3);

    private StepId id = new StepId("step");
    private String name = "this step";
    private StepKind kind = StepKind.HANDS_ON;
    private Opening opening = Opening.LED;
    private Duration planned = Duration.ofMinutes(1);
    private Duration allowance = Duration.ZERO;
    private String say = "";
    private String caution = "";
    private String wall = "";
    private Optional<Picture> picture = Optional.empty();
    private Optional<Stations> stations = Optional.empty();

    private StepDraft(Fields fields) {
        super(fields);
    }

    static Optional<Step> read(Fields fields) {
        StepDraft draft = new StepDraft(fields);
        draft.put("id", fields.named("id", StepId::new), draft.id, v -> draft.id = v);
        draft.put("name", fields.text("name"), draft.name, v -> draft.name = v);
        draft.put("kind", fields.choice("kind", StepKind.class), draft.kind, v -> draft.kind = v);
        draft.put("opening", fields.choice("opening", Opening.class, Opening.LED), draft.opening,
                v -> draft.opening = v);
        draft.put("minutes", fields.minutes("minutes"), draft.planned, v -> draft.planned = v);
        draft.put("allowanceMinutes", fields.minutes("allowanceMinutes", USUAL_ALLOWANCE), draft.allowance,
                v -> draft.allowance = v);
        draft.put("say", fields.text("say", ""), "", v -> draft.say = v);
        draft.put("caution", fields.text("caution", ""), "", v -> draft.caution = v);
        draft.put("wall", fields.text("wall", ""), "", v -> draft.wall = v);
        if (fields.has("picture")) {
            draft.put("picture", fields.choice("picture", Picture.class).map(Optional::of), draft.picture,
                    v -> draft.picture = v);
        }
        draft.readStations(fields);
        return draft.finished();
    }

    /** Held against the step's kind and length only if those are sound themselves. */
    private void readStations(Fields fields) {
        boolean sound = fields.sound();
        if (fields.has("stations")) {
            Optional<Stations> read = fields.inner("stations").flatMap(inner -> StationsDraft.read(inner, planned));
            put("stations", read.filter(served -> sound).map(Optional::of), stations, v -> stations = v);
        }
    }

    @Override public Step get() {
        return new Step(id, name, kind, opening, planned, allowance, say, caution, wall, picture, stations);
    }
}
