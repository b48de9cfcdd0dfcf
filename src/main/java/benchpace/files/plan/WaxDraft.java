package benchpace.files.plan;

import benchpace.files.Fields;
import benchpace.plan.Wax;
import java.util.Optional;

/** A wax of a plan's own while it is read: every number in the plan itself. */
final class WaxDraft extends Draft<Wax> {
    private String id = "wax";
    private String name = "this wax";
    private double densityKgM3 = 900;
    private double specificHeatSolidJKgK = 2200;
    private double specificHeatLiquidJKgK = 2200;
    private double latentHeatJKg = 150_000;
    private double solidusCelsius = 20;
    private double liquidusCelsius = 120;
    private double conductivitySolidWMK = 0.2;
    private double conductivityLiquidWMK = 0.3;
    private boolean calibrated;

    private WaxDraft(Fields fields) {
        super(fields);
    }

    static Optional<Wax> read(Fields fields) {
        WaxDraft draft = new WaxDraft(fields);
        draft.put("id", fields.line("id", 1, 40), draft.id, v -> draft.id = v);
        draft.put("name", fields.line("name", 1, 60), draft.name, v -> draft.name = v);
        draft.put("densityKgM3", fields.number("densityKgM3", 600, 1200), draft.densityKgM3,
                v -> draft.densityKgM3 = v);
        draft.put("specificHeatSolidJKgK", fields.number("specificHeatSolidJKgK", 1000, 5000),
                draft.specificHeatSolidJKgK, v -> draft.specificHeatSolidJKgK = v);
        draft.put("specificHeatLiquidJKgK", fields.number("specificHeatLiquidJKgK", 1000, 5000),
                draft.specificHeatLiquidJKgK, v -> draft.specificHeatLiquidJKgK = v);
        draft.put("latentHeatJKg", fields.number("latentHeatJKg", 20_000, 400_000), draft.latentHeatJKg,
                v -> draft.latentHeatJKg = v);
        draft.put("solidusCelsius", fields.number("solidusCelsius", 20, 120), draft.solidusCelsius,
                v -> draft.solidusCelsius = v);
        draft.put("liquidusCelsius", fields.number("liquidusCelsius", 20, 120), draft.liquidusCelsius,
                v -> draft.liquidusCelsius = v);
        draft.put("conductivitySolidWMK", fields.number("conductivitySolidWMK", 0.05, 2),
                draft.conductivitySolidWMK, v -> draft.conductivitySolidWMK = v);
        draft.put("conductivityLiquidWMK", fields.number("conductivityLiquidWMK", 0.05, 5),
                draft.conductivityLiquidWMK, v -> draft.conductivityLiquidWMK = v);
        draft.put("calibrated", fields.yesOrNo("calibrated", false), false, v -> draft.calibrated = v);
        return draft.finished();
    }

    @Override public Wax get() {
        return new Wax(id, name, densityKgM3, specificHeatSolidJKgK, specificHeatLiquidJKgK, latentHeatJKg,
                solidusCelsius, liquidusCelsius, conductivitySolidWMK, conductivityLiquidWMK, calibrated);
    }
}
