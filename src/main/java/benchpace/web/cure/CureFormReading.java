package benchpace.web.cure;

import benchpace.cure.TableCase;
import benchpace.files.plan.WaxFile;
import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.TableTop;
import benchpace.plan.Vessel;
import benchpace.plan.Wax;
import benchpace.web.screen.cure.CureForm;
import benchpace.words.Degrees;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Reads the form of {@code /cure} from an address, and fills it from a plan. What is wrong is told at the field. */
final class CureFormReading {
    static final List<String> LETTERS = List.of("A", "B", "C", "D");
    private static final int LONGEST = 40;
    private static final double MOST_MINUTES = 600;
    private static final Map<String, double[]> RANGES = Map.of("diameter", new double[] {20, 400},
            "wall", new double[] {0.05, 30}, "brim", new double[] {10, 500}, "fill", new double[] {1, 100_000},
            "fragrance", new double[] {0, 33.3}, "room", new double[] {Candle.COLDEST_ROOM, Candle.HOTTEST_ROOM},
            "pour", new double[] {Candle.COLDEST_POUR, Candle.HOTTEST_POUR}, "draught", new double[] {0, 5});

    private final UnaryOperator<String> asked;
    private final Map<String, Wax> waxes;

    /** @param asked the value of a parameter of the address; empty text for one that is not there */
    CureFormReading(UnaryOperator<String> asked, Map<String, Wax> waxes) {
        this.asked = asked;
        this.waxes = waxes;
    }

    /** What was read. @param cases by letter, those without a fault; @param minutes the wait, if it is a number */
    record Read(CureForm form, Map<String, TableCase> cases, Optional<Double> minutes) { }

    /** The waxes to choose from: those that come with the program, then those of the plans. */
    static Map<String, Wax> waxes(Iterable<Plan> plans) {
        Map<String, Wax> all = new LinkedHashMap<>();
        WaxFile.builtIn().forEach(w -> all.put(w.wax().id(), w.wax()));
        plans.forEach(plan -> plan.candles().forEach(c -> all.putIfAbsent(c.wax().id(), c.wax())));
        return all;
    }

    private String text(String name) {
        String text = asked.apply(name).strip();
        return text.length() > LONGEST ? text.substring(0, LONGEST) : text;
    }

    /** The form as it was sent. */
    Read read() {
        Map<String, TableCase> cases = new LinkedHashMap<>();
        List<CureForm.Column> columns = new ArrayList<>();
        for (String letter : LETTERS) {
            Map<String, String> values = new LinkedHashMap<>();
            Map<String, String> faults = new LinkedHashMap<>();
            String start = letter.toLowerCase(Locale.ROOT) + "-";
            for (String field : List.of("material", "wax", "table")) {
                values.put(field, text(start + field));
            }
            CureForm.NUMBERS.forEach(f -> values.put(f.name(), text(start + f.name())));
            if (!values.get("fill").isEmpty()) {
                tableCase(values, faults).ifPresent(c -> cases.put(letter, c));
            }
            columns.add(new CureForm.Column(letter, values, faults));
        }
        String typed = text("minutes");
        Optional<Double> minutes = number(typed).filter(m -> m >= 1 && m <= MOST_MINUTES);
        String fault = minutes.isPresent() || typed.isEmpty() ? "" : "Minutes from 1 to 600, please.";
        return new Read(new CureForm(text("plan"), asked.apply("place"), typed, fault, columns), cases, minutes);
    }

    private Optional<TableCase> tableCase(Map<String, String> values, Map<String, String> faults) {
        Map<String, Double> n = new LinkedHashMap<>();
        CureForm.NUMBERS.forEach(f -> {
            String typed = values.get(f.name());
            Optional<Double> number = typed.isEmpty() && f.name().matches("fragrance|draught") ? Optional.of(0.0)
                    : number(typed);
            double[] range = RANGES.get(f.name());
            number.filter(v -> v >= range[0] && v <= range[1]).ifPresentOrElse(v -> n.put(f.name(), v),
                    () -> faults.put(f.name(), "From " + Degrees.plain(range[0]) + " to " + Degrees.plain(range[1])
                            + " " + f.unit() + ", please."));
        });
        Wax wax = waxes.get(values.get("wax"));
        Optional<Vessel.Material> material = constant(Vessel.Material.values(), values.get("material"));
        Optional<TableTop> table = constant(TableTop.values(), values.get("table"));
        faultIf(wax == null, faults, "wax");
        faultIf(material.isEmpty(), faults, "material");
        faultIf(table.isEmpty(), faults, "table");
        if (!faults.isEmpty()) {
            return Optional.empty();
        }
        Vessel vessel = new Vessel("tried", "a vessel", material.get(), n.get("diameter"), n.get("wall"),
                n.get("brim"));
        double fragrance = n.get("fragrance");
        TableCase candle = new TableCase(vessel, wax, n.get("fill"), fragrance / (100 + fragrance), n.get("room"),
                n.get("pour"), table.get(), n.get("draught"), 1);
        return candle.fault().map(fault -> {
            faults.put(field(fault.field()), "This " + fault.reason() + ".");
            return Optional.<TableCase>empty();
        }).orElse(Optional.of(candle));
    }

    private static void faultIf(boolean wrong, Map<String, String> faults, String field) {
        if (wrong) {
            faults.put(field, "Choose one, please.");
        }
    }

    private static String field(String ofCase) {
        return switch (ofCase) {
            case "fillGrams" -> "fill";
            case "fragranceFraction" -> "fragrance";
            case "roomCelsius" -> "room";
            case "pourCelsius" -> "pour";
            default -> "draught";
        };
    }

    private static String hundredths(double value) {
        return value * 10 == Math.rint(value * 10) ? Degrees.plain(value) : String.format(Locale.ROOT, "%.2f", value);
    }

    private static Optional<Double> number(String typed) {
        String text = typed.replace(',', '.');
        return text.matches("[+-]?\\d{1,9}(\\.\\d{1,9})?") ? Optional.of(Double.valueOf(text)) : Optional.empty();
    }

    private static <E extends Enum<E>> Optional<E> constant(E[] all, String word) {
        for (E one : all) {
            if (one.name().toLowerCase(Locale.ROOT).equals(word)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }

    /** A plan's first four candles as an address's parameters would say them. */
    static Map<String, String> parameters(Plan plan) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("plan", plan.id().value());
        all.put("place", plan.place());
        plan.cure().ifPresent(cure -> all.put("minutes", Long.toString(cure.planned().toMinutes())));
        for (int i = 0; i < Math.min(plan.candles().size(), LETTERS.size()); i++) {
            Candle c = plan.candles().get(i);
            String start = LETTERS.get(i).toLowerCase(Locale.ROOT) + "-";
            all.put(start + "material", c.vessel().material().name().toLowerCase(Locale.ROOT));
            all.put(start + "wax", c.wax().id());
            all.put(start + "table", c.tableTop().name().toLowerCase(Locale.ROOT));
            all.put(start + "diameter", Degrees.plain(c.vessel().innerDiameterMillimetres()));
            all.put(start + "wall", hundredths(c.vessel().wallMillimetres()));
            all.put(start + "brim", Degrees.plain(c.vessel().brimHeightMillimetres()));
            all.put(start + "fill", Degrees.plain(c.fillGrams()));
            all.put(start + "fragrance", Degrees.plain(100 * c.fragranceFraction() / (1 - c.fragranceFraction())));
            all.put(start + "room", Degrees.plain(c.roomCelsius()));
            all.put(start + "pour", Degrees.plain(c.pourCelsius()));
            all.put(start + "draught", "0");
        }
        return all;
    }
}
