package benchpace.files.plan;

import benchpace.files.Fields;
import benchpace.files.Words;
import benchpace.plan.AsTyped;
import benchpace.plan.kit.Appliance;
import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Kit;
import benchpace.plan.kit.Loads;
import benchpace.plan.kit.Melter;
import benchpace.plan.kit.Supply;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** What a plan says of the day before, its field {@code prep}, while it is read. */
final class KitDraft extends Draft<Kit> {
    private OptionalDouble roomCelsius = OptionalDouble.empty();
    private double spillPercent;
    private int readyMarginMinutes;
    private OptionalInt promisedMinutes = OptionalInt.empty();
    private Loads loads = Loads.NONE;
    private List<Melter> melters = List.of();
    private List<Appliance> appliances = List.of();
    private List<Circuit> circuits = List.of();
    private List<Supply> supplies = List.of();
    private AsTyped asTyped = AsTyped.NONE;

    private KitDraft(Fields fields) {
        super(fields);
    }

    static Optional<Kit> read(Fields fields) {
        KitDraft draft = new KitDraft(fields);
        draft.put("roomCelsius", fields.figure("roomCelsius").map(OptionalDouble::of), draft.roomCelsius,
                v -> draft.roomCelsius = v);
        draft.put("spillPercent", fields.figure("spillPercent"), draft.spillPercent, v -> draft.spillPercent = v);
        if (fields.has("readyMarginMinutes")) {
            draft.put("readyMarginMinutes", fields.whole("readyMarginMinutes", 0, 600).map(Long::intValue),
                    draft.readyMarginMinutes, v -> draft.readyMarginMinutes = v);
        }
        if (fields.has("promisedMinutes")) {
            draft.put("promisedMinutes", fields.whole("promisedMinutes", 1, 1440).map(Long::intValue)
                    .map(OptionalInt::of), draft.promisedMinutes, v -> draft.promisedMinutes = v);
        }
        if (fields.has("loads")) {
            draft.put("loads", fields.inner("loads").flatMap(LoadsDraft::read), draft.loads, v -> draft.loads = v);
        }
        draft.readWhatIsPluggedIn(fields);
        draft.put("supplies", Optional.of(Entries.read(fields, "supplies", Kit.MOST_SUPPLIES, "supply",
                SupplyDraft::read, Supply::id).sound()), draft.supplies, v -> draft.supplies = v);
        draft.put(AsTypedFields.NAME, AsTypedFields.read(fields, List.of("roomCelsius")), draft.asTyped,
                v -> draft.asTyped = v);
        return draft.finished();
    }

    /** What an appliance names must be listed, soundly or not; each is told of where it names it. */
    private void readWhatIsPluggedIn(Fields fields) {
        Entries<Melter> pots = Entries.read(fields, "melters", Kit.MOST, "melter", MelterDraft::read, Melter::id);
        put("melters", Optional.of(pots.sound()), melters, v -> melters = v);
        Entries<Circuit> wires = Entries.read(fields, "circuits", Kit.MOST, "circuit", CircuitDraft::read,
                Circuit::id);
        put("circuits", Optional.of(wires.sound()), circuits, v -> circuits = v);
        Entries<Appliance> plugged = Entries.read(fields, "appliances", Kit.MOST, "appliance", object -> {
            listed(object, "melter", pots.ids());
            listed(object, "circuit", wires.ids());
            return ApplianceDraft.read(object, pots.sound());
        }, Appliance::id);
        put("appliances", Optional.of(plugged.sound()).filter(all -> fields.sound()), appliances,
                v -> appliances = v);
    }

    private static void listed(Fields object, String kind, Set<String> ids) {
        object.glimpse(kind).filter(id -> !ids.contains(id)).ifPresent(id ->
                object.tell(kind, "no " + kind + " of this plan has the id \"" + Fields.shorter(id) + "\""
                        + Words.suggestion(id, new ArrayList<>(ids))));
    }

    @Override public Kit get() {
        return new Kit(roomCelsius, spillPercent, readyMarginMinutes, promisedMinutes, loads, melters, appliances,
                circuits, supplies, asTyped);
    }
}
