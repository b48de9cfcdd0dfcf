package benchpace.files.plan;

import benchpace.files.Fields;
import benchpace.plan.kit.Appliance;
import benchpace.plan.kit.Melter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** One thing that is plugged in, while it is read. One that is a melter has that melter's name and watts. */
final class ApplianceDraft extends Draft<Appliance> {
    private String id = "appliance";
    private String name = "this appliance";
    private OptionalDouble watts = OptionalDouble.empty();
    private Optional<String> melter = Optional.empty();
    private Optional<String> circuit = Optional.empty();
    private double onMinutes = 1;

    private ApplianceDraft(Fields fields) {
        super(fields);
    }

    /** @param melters that the plan has, as far as they are sound */
    static Optional<Appliance> read(Fields fields, List<Melter> melters) {
        ApplianceDraft draft = new ApplianceDraft(fields);
        Optional<Melter> pot = fields.glimpse("melter")
                .flatMap(named -> melters.stream().filter(m -> m.id().equals(named)).findFirst());
        draft.put("id", fields.text("id"), draft.id, v -> draft.id = v);
        draft.put("name", fields.has("melter") ? fields.text("name", pot.map(Melter::name).orElse(draft.name))
                : fields.text("name"), draft.name, v -> draft.name = v);
        if (fields.has("melter")) {
            draft.put("melter", fields.text("melter").map(Optional::of), draft.melter, v -> draft.melter = v);
        }
        draft.put("watts", watts(fields, pot), draft.watts, v -> draft.watts = v);
        if (fields.has("circuit")) {
            draft.put("circuit", fields.text("circuit").map(Optional::of), draft.circuit, v -> draft.circuit = v);
        }
        draft.put("onMinutes", fields.number("onMinutes", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY),
                draft.onMinutes, v -> draft.onMinutes = v);
        return draft.finished();
    }

    private static Optional<OptionalDouble> watts(Fields fields, Optional<Melter> pot) {
        Optional<Double> own = fields.figure("watts");
        pot.filter(melter -> own.isPresent() && !melter.watts().equals(OptionalDouble.of(own.get())))
                .ifPresent(melter -> fields.tell("watts", "the watts of a melter stand with the melter, \""
                        + melter.id() + "\": leave them out here"));
        return own.map(OptionalDouble::of);
    }

    @Override public Appliance get() {
        return new Appliance(id, name, watts, melter, circuit, onMinutes);
    }
}
