package benchpace.files.plan;

import benchpace.files.Fields;
import benchpace.plan.AsTyped;
import benchpace.plan.kit.LoadConvention;
import benchpace.plan.kit.Loads;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the makers allow of fragrance, while it is read. */
final class LoadsDraft extends Draft<Loads> {
    private Optional<LoadConvention> convention = Optional.empty();
    private OptionalDouble waxMakerPercent = OptionalDouble.empty();
    private OptionalDouble certificatePercentOfTotal = OptionalDouble.empty();
    private OptionalDouble flashPointCelsius = OptionalDouble.empty();
    private AsTyped asTyped = AsTyped.NONE;

    private LoadsDraft(Fields fields) {
        super(fields);
    }

    static Optional<Loads> read(Fields fields) {
        LoadsDraft draft = new LoadsDraft(fields);
        if (fields.has("convention")) {
            draft.put("convention", fields.choice("convention", LoadConvention.class).map(Optional::of),
                    draft.convention, v -> draft.convention = v);
        }
        draft.put("waxMakerPercent", fields.figure("waxMakerPercent").map(OptionalDouble::of),
                draft.waxMakerPercent, v -> draft.waxMakerPercent = v);
        draft.put("certificatePercentOfTotal", fields.figure("certificatePercentOfTotal").map(OptionalDouble::of),
                draft.certificatePercentOfTotal, v -> draft.certificatePercentOfTotal = v);
        draft.put("flashPointCelsius", fields.figure("flashPointCelsius").map(OptionalDouble::of),
                draft.flashPointCelsius, v -> draft.flashPointCelsius = v);
        draft.put(AsTypedFields.NAME, AsTypedFields.read(fields, List.of("flashPointCelsius")), draft.asTyped,
                v -> draft.asTyped = v);
        return draft.finished();
    }

    @Override public Loads get() {
        return new Loads(convention, waxMakerPercent, certificatePercentOfTotal, flashPointCelsius, asTyped);
    }
}
