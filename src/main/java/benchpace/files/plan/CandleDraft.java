package benchpace.files.plan;

import benchpace.cure.TableCase;
import benchpace.files.Fields;
import benchpace.files.Words;
import benchpace.plan.Candle;
import benchpace.plan.TableTop;
import benchpace.plan.Vessel;
import benchpace.plan.Wax;
import java.util.Optional;

/** One candle of a plan while it is read, with its vessel and its wax. */
final class CandleDraft extends Draft<Candle> {
    private static final Vessel SOME_VESSEL = new Vessel("vessel", "this vessel", Vessel.Material.GLASS, 75, 3, 500);
    private static final Wax SOME_WAX = WaxFile.builtIn().get(0).wax();
    private static final int LONGEST_NAME = 60;
    private static final double MOST_PERCENT_OF_WAX = 100.0 / 3;

    private String id = "candle";
    private String name = "this candle";
    private Vessel vessel = SOME_VESSEL;
    private Wax wax = SOME_WAX;
    private double fillGrams = 100;
    private double fragranceFraction;
    private double roomCelsius = 21;
    private double pourCelsius = 70;
    private TableTop tableTop = TableTop.WOOD;

    private CandleDraft(Fields fields) {
        super(fields);
    }

    static Optional<Candle> read(Fields fields) {
        CandleDraft draft = new CandleDraft(fields);
        draft.put("id", fields.text("id"), draft.id, v -> draft.id = v);
        draft.put("name", fields.line("name", 1, LONGEST_NAME), draft.name, v -> draft.name = v);
        draft.put("vessel", fields.inner("vessel").flatMap(VesselDraft::read), draft.vessel, v -> draft.vessel = v);
        draft.put("wax", wax(fields), draft.wax, v -> draft.wax = v);
        draft.put("fillGrams", fields.number("fillGrams", 1, 100_000), draft.fillGrams, v -> draft.fillGrams = v);
        fragrance(fields).ifPresent(v -> draft.fragranceFraction = v);
        draft.put("roomCelsius", fields.number("roomCelsius", Candle.COLDEST_ROOM, Candle.HOTTEST_ROOM),
                draft.roomCelsius, v -> draft.roomCelsius = v);
        draft.put("pourCelsius", fields.number("pourCelsius", Candle.COLDEST_POUR, Candle.HOTTEST_POUR),
                draft.pourCelsius, v -> draft.pourCelsius = v);
        draft.put("tableTop", fields.choice("tableTop", TableTop.class), draft.tableTop, v -> draft.tableTop = v);
        return draft.finished().filter(candle -> setsAsPlanned(candle, fields));
    }

    @Override public Candle get() {
        return new Candle(id, name, vessel, wax, fillGrams, fragranceFraction, roomCelsius, pourCelsius, tableTop);
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

    /** As a share of all that is poured. The trade reckons in per cent of the wax; both are read. */
    private static Optional<Double> fragrance(Fields fields) {
        if (fields.has("fragranceFraction") && !fields.has("fragrancePercentOfWax")) {
            return fields.number("fragranceFraction", 0, 0.25);
        }
        if (fields.has("fragranceFraction")) {
            fields.tell("fragranceFraction", "says the same as fragrancePercentOfWax: give one of them");
        }
        return fields.number("fragrancePercentOfWax", 0, MOST_PERCENT_OF_WAX).map(CandleJson::fractionOfAll);
    }

    /** Whether such a candle can be poured and will set, told of at the field at fault. */
    private static boolean setsAsPlanned(Candle candle, Fields fields) {
        TableCase table = TableCase.of(candle.vessel(), candle.wax(), candle.fillGrams(), candle.fragranceFraction(),
                candle.roomCelsius(), candle.pourCelsius(), candle.tableTop(), 1);
        table.fault().ifPresent(fault -> fields.tell(fault.field(), fault.reason()));
        return fields.sound();
    }
}
