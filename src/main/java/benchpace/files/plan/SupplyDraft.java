package benchpace.files.plan;

import benchpace.files.Fields;
import benchpace.plan.kit.Supply;
import java.util.Optional;
import java.util.OptionalDouble;

/** One supply of a plan while it is read. */
final class SupplyDraft extends Draft<Supply> {
    private String id = "supply";
    private String name = "this supply";
    private double perSeat;
    private double perClass;
    private double sparePercent;
    private double packSize = 1;
    private double inStock;
    private boolean reusable;
    private OptionalDouble pricePerPack = OptionalDouble.empty();
    private String box = "";

    private SupplyDraft(Fields fields) {
        super(fields);
    }

    static Optional<Supply> read(Fields fields) {
        SupplyDraft draft = new SupplyDraft(fields);
        draft.put("id", fields.text("id"), draft.id, v -> draft.id = v);
        draft.put("name", fields.text("name"), draft.name, v -> draft.name = v);
        draft.put("perSeat", fields.figure("perSeat"), draft.perSeat, v -> draft.perSeat = v);
        draft.put("perClass", fields.figure("perClass"), draft.perClass, v -> draft.perClass = v);
        draft.put("sparePercent", fields.figure("sparePercent"), draft.sparePercent, v -> draft.sparePercent = v);
        draft.put("packSize", fields.figure("packSize"), draft.packSize, v -> draft.packSize = v);
        draft.put("inStock", fields.figure("inStock"), draft.inStock, v -> draft.inStock = v);
        draft.put("reusable", fields.yesOrNo("reusable", false), false, v -> draft.reusable = v);
        draft.put("pricePerPack", fields.figure("pricePerPack").map(OptionalDouble::of), draft.pricePerPack,
                v -> draft.pricePerPack = v);
        draft.put("box", fields.text("box", ""), draft.box, v -> draft.box = v);
        return draft.finished();
    }

    @Override public Supply get() {
        return new Supply(id, name, perSeat, perClass, sparePercent, packSize, inStock, reusable, pricePerPack, box);
    }
}
