package benchpace.files.plan;

import benchpace.files.Fields;
import benchpace.plan.kit.Circuit;
import java.util.Optional;
import java.util.OptionalDouble;

/** One of the venue's circuits while it is read. */
final class CircuitDraft extends Draft<Circuit> {
    private String id = "circuit";
    private String name = "this circuit";
    private OptionalDouble volts = OptionalDouble.empty();
    private OptionalDouble amps = OptionalDouble.empty();
    private Optional<Circuit.Rule> rule = Optional.empty();

    private CircuitDraft(Fields fields) {
        super(fields);
    }

    static Optional<Circuit> read(Fields fields) {
        CircuitDraft draft = new CircuitDraft(fields);
        draft.put("id", fields.text("id"), draft.id, v -> draft.id = v);
        draft.put("name", fields.text("name"), draft.name, v -> draft.name = v);
        draft.put("volts", fields.figure("volts").map(OptionalDouble::of), draft.volts, v -> draft.volts = v);
        draft.put("amps", fields.figure("amps").map(OptionalDouble::of), draft.amps, v -> draft.amps = v);
        if (fields.has("rule")) {
            draft.put("rule", fields.choice("rule", Circuit.Rule.class).map(Optional::of), draft.rule,
                    v -> draft.rule = v);
        }
        return draft.finished();
    }

    @Override public Circuit get() {
        return new Circuit(id, name, volts, amps, rule);
    }
}
