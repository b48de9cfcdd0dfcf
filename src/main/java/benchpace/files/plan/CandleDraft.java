package benchpace.files.plan;

import benchpace.cure.TableCase;
import benchpace.files.Fields;
import benchpace.files.Words;
import benchpace.plan.AsTyped;
import benchpace.plan.BrimFill;
import benchpace.plan.Candle;
import benchpace.plan.TableTop;
import benchpace.plan.Vessel;
import benchpace.plan.Wax;
import benchpace.plan.kit.LoadConvention;
import java.util.List;
import java.util.Optional;

/** One candle of a plan while it is read, with its vessel and its wax. */
final class CandleDraft extends Draft<Candle> {
    private static final Vessel SOME_VESSEL = new Vessel("vessel", "this vessel", Vessel.Material.GLASS, 75, 3, 500);
    private static final Wax SOME_WAX = WaxFile.builtIn().get(0).wax();
    private static final int LONGEST_NAME = 60;
    private static final List<String> TYPED = List.of("fillGrams", "brimMillilitres", "roomCelsius", "pourCelsius");

    private String id = "candle";
    private String name = "this candle";
    private Vessel vessel = SOME_VESSEL;
    private Wax wax = SOME_WAX;
    private double fillGrams = 100;
    private Optional<BrimFill> brim = Optional.empty();
    private Fragrance fragrance = new Fragrance(0, LoadConvention.OF_WAX);
    private double roomCelsius = 21;
    private double pourCelsius = 70;
    private TableTop tableTop = TableTop.WOOD;
    private AsTyped asTyped = AsTyped.NONE;

    private CandleDraft(Fields fields) {
        super(fields);
    }

    static Optional<Candle> read(Fields fields) {
        CandleDraft draft = new CandleDraft(fields);
        draft.put("id", fields.text("id"), draft.id, v -> draft.id = v);
        draft.put("name", fields.line("name", 1, LONGEST_NAME), draft.name, v -> draft.name = v);
        draft.put("vessel", fields.inner("vessel").flatMap(VesselDraft::read), draft.vessel, v -> draft.vessel = v);
        draft.put("wax", wax(fields), draft.wax, v -> draft.wax = v);
        draft.readFill(fields);
        Fragrance.read(fields).ifPresent(v -> draft.fragrance = v);
        draft.put("roomCelsius", fields.number("roomCelsius", Candle.COLDEST_ROOM, Candle.HOTTEST_ROOM),
                draft.roomCelsius, v -> draft.roomCelsius = v);
        draft.put("pourCelsius", fields.number("pourCelsius", Candle.COLDEST_POUR, Candle.HOTTEST_POUR),
                draft.pourCelsius, v -> draft.pourCelsius = v);
        draft.put("tableTop", fields.choice("tableTop", TableTop.class), draft.tableTop, v -> draft.tableTop = v);
        draft.put(AsTypedFields.NAME, AsTypedFields.read(fields, TYPED), draft.asTyped, v -> draft.asTyped = v);
        return draft.finished().filter(candle -> setsAsPlanned(candle, fields));
    }

    @Override public Candle get() {
        return new Candle(id, name, vessel, wax, fillGrams, fragrance.fraction(), roomCelsius, pourCelsius,
                tableTop, brim, fragrance.convention(), asTyped);
    }

    /** By mass, or by what the vessel holds to the brim and the share of that. */
    private void readFill(Fields fields) {
        if (!fields.has("brimMillilitres") && !fields.has("fillFraction")) {
            put("fillGrams", fields.number("fillGrams", 1, 100_000), fillGrams, v -> fillGrams = v);
            return;
        }
        if (fields.has("fillGrams")) {
            fields.tell("fillGrams", "says the same as brimMillilitres and fillFraction: give the mass or those two");
        }
        Optional<Double> millilitres = fields.number("brimMillilitres", 1, 100_000);
        Optional<Double> fraction = fields.number("fillFraction", 0.01, 1);
        put("brimMillilitres", millilitres.flatMap(m -> fraction.map(f -> Optional.of(new BrimFill(m, f)))), brim,
                v -> {
                    brim = v;
                    fillGrams = v.map(filled -> filled.grams(wax)).orElse(100.0);
                });
    }

    /** The id of a wax that comes with the program, or all its numbers. */
    private static Optional<Wax> wax(Fields fields) {
        if (!fields.isText("wax")) {
            return fields.inner("wax").flatMap(WaxDraft::read);
        }
        return fields.text("wax").flatMap(id -> known(id, fields));
    }

    private static Optional<Wax> known(String id, Fields fields) {
        Optional<Wax> known = WaxFile.builtIn().stream().map(WaxFile.SourcedWax::wax)
                .filter(w -> w.id().equals(id)).findFirst();
        if (known.isEmpty()) {
            var ids = WaxFile.builtIn().stream().map(w -> w.wax().id()).toList();
            fields.tell("wax", "must be one of " + Words.quoted(ids)
                    + " or an object with all of a wax's numbers, not \"" + Fields.shorter(id) + "\""
                    + Words.suggestion(id, ids));
        }
        return known;
    }

    /** Whether such a candle can be poured and will set, told of at the field at fault. */
    private static boolean setsAsPlanned(Candle candle, Fields fields) {
        TableCase table = TableCase.of(candle.vessel(), candle.wax(), candle.fillGrams(), candle.fragranceFraction(),
                candle.roomCelsius(), candle.pourCelsius(), candle.tableTop(), 1);
        table.fault().ifPresent(fault -> fields.tell(
                fault.field().equals("fillGrams") && candle.brim().isPresent() ? "brimMillilitres" : fault.field(),
                fault.reason()));
        return fields.sound();
    }
}
