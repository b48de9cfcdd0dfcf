package benchpace.files.plan;

import benchpace.files.Fields;
import benchpace.plan.Vessel;
import java.util.Optional;

/** The vessel of a candle while it is read. */
final class VesselDraft extends Draft<Vessel> {
    private String id = "vessel";
    private String name = "this vessel";
    private Vessel.Material material = Vessel.Material.GLASS;
    private double innerDiameterMillimetres = 75;
    private double wallMillimetres = 3;
    private double brimHeightMillimetres = 90;

    private VesselDraft(Fields fields) {
        super(fields);
    }

    static Optional<Vessel> read(Fields fields) {
        VesselDraft draft = new VesselDraft(fields);
        draft.put("id", fields.line("id", 1, 40), draft.id, v -> draft.id = v);
        draft.put("name", fields.line("name", 1, 60), draft.name, v -> draft.name = v);
        draft.put("material", fields.choice("material", Vessel.Material.class), draft.material,
                v -> draft.material = v);
        draft.put("innerDiameterMm", fields.number("innerDiameterMm", 20, 400), draft.innerDiameterMillimetres,
                v -> draft.innerDiameterMillimetres = v);
        draft.put("wallMm", fields.number("wallMm", 0.05, 30), draft.wallMillimetres, v -> draft.wallMillimetres = v);
        draft.put("brimHeightMm", fields.number("brimHeightMm", 10, 500), draft.brimHeightMillimetres,
                v -> draft.brimHeightMillimetres = v);
        return draft.finished();
    }

    @Override public Vessel get() {
        return new Vessel(id, name, material, innerDiameterMillimetres, wallMillimetres, brimHeightMillimetres);
    }
}
