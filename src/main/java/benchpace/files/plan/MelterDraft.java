package benchpace.files.plan;

import benchpace.files.Fields;
import benchpace.plan.AsTyped;
import benchpace.plan.kit.Melter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** One melter of a plan while it is read. */
final class MelterDraft extends Draft<Melter> {
    private String id = "melter";
    private String name = "this melter";
    private String wax = "wax";
    private OptionalDouble capacityGrams = OptionalDouble.empty();
    private double heelGrams;
    private OptionalDouble watts = OptionalDouble.empty();
    private OptionalDouble efficiency = OptionalDouble.empty();
    private Melter.ScentedIn scentedIn = Melter.ScentedIn.JUG;
    private AsTyped asTyped = AsTyped.NONE;

    private MelterDraft(Fields fields) {
        super(fields);
    }

    static Optional<Melter> read(Fields fields) {
        MelterDraft draft = new MelterDraft(fields);
        draft.put("id", fields.text("id"), draft.id, v -> draft.id = v);
        draft.put("name", fields.text("name"), draft.name, v -> draft.name = v);
        draft.put("wax", fields.text("wax"), draft.wax, v -> draft.wax = v);
        draft.put("capacityGrams", fields.figure("capacityGrams").map(OptionalDouble::of), draft.capacityGrams,
                v -> draft.capacityGrams = v);
        draft.put("heelGrams", fields.figure("heelGrams"), draft.heelGrams, v -> draft.heelGrams = v);
        draft.put("watts", fields.figure("watts").map(OptionalDouble::of), draft.watts, v -> draft.watts = v);
        draft.put("efficiency", fields.figure("efficiency").map(OptionalDouble::of), draft.efficiency,
                v -> draft.efficiency = v);
        draft.put("scentedIn", fields.choice("scentedIn", Melter.ScentedIn.class, draft.scentedIn), draft.scentedIn,
                v -> draft.scentedIn = v);
        draft.put(AsTypedFields.NAME, AsTypedFields.read(fields, List.of("capacityGrams", "heelGrams", "watts")),
                draft.asTyped, v -> draft.asTyped = v);
        return draft.finished();
    }

    @Override public Melter get() {
        return new Melter(id, name, wax, capacityGrams, heelGrams, watts, efficiency, scentedIn, asTyped);
    }
}
