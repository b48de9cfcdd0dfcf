package benchpace.words.prep;

import benchpace.plan.Plan;
import benchpace.prep.card.DocumentItem;
import benchpace.prep.card.LabelFigures;
import benchpace.prep.card.LabelItem;
import benchpace.prep.card.LabelRegion;
import benchpace.prep.card.SafetyLine;
import benchpace.prep.evening.Bottleneck;
import benchpace.prep.evening.Timetable;
import benchpace.prep.sheet.PrepSheet;
import benchpace.prep.wax.CandleLine;
import benchpace.words.EveningWords;
import benchpace.words.Phrases;
import benchpace.words.PrepFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The whole prep sheet as plain text, for a terminal or a printer. */
public final class PrepText {
    private static final int WIDTH = 100;

    private final Plan plan;
    private final PrepSheet sheet;
    private final StringBuilder text = new StringBuilder();

    private PrepText(Plan plan, PrepSheet sheet) {
        this.plan = plan;
        this.sheet = sheet;
    }

    public static String of(Plan plan, PrepSheet sheet) {
        return new PrepText(plan, sheet).whole();
    }

    private String whole() {
        text.append("Prep: ").append(plan.name()).append(", ").append(sheet.seats())
                .append(sheet.seats() == 1 ? " seat" : " seats").append('\n');
        section("To put right or find out", PrepWords.problems(sheet));
        section("Mind", PrepWords.cautions(sheet));
        section("Wax and fragrance", wax());
        sheet.melters().forEach(line -> section(line.melter().name(), MelterWords.of(line)));
        if (!sheet.melters().isEmpty()) {
            wrapped("  ", MelterWords.BASIS);
        }
        sheet.circuits().forEach(line -> section(line.circuit().name() + " (" + CircuitWords.circuit(line.circuit())
                + ")" + line.verdict().map(v -> ": " + CircuitWords.verdict(v)).orElse(""), Stream.of(
                        CircuitWords.plugged(line).stream(),
                        CircuitWords.reasons(line).stream(),
                        CircuitWords.advice(line).stream().map(a -> "What would help: " + a))
                        .flatMap(s -> s).toList()));
        section("Electricity, always", CircuitWords.ALWAYS);
        sheet.timetable().ifPresent(t -> section("Timetable", timetable(t)));
        sheet.places().forEach(place -> section(SupplyWords.places(place), SupplyWords.place(place)));
        section("Shared", Stream.concat(sheet.shared().supplies().stream().map(SupplyWords::shared),
                sheet.shared().stations().stream().map(SupplyWords::station)).toList());
        packing();
        section("To buy", Stream.concat(sheet.shopping().lines().stream().map(SupplyWords::buy),
                Stream.of(SupplyWords.price(sheet.shopping())).filter(s -> !s.isEmpty())).toList());
        if (!sheet.supplies().isEmpty()) {
            section("Cost", List.of(SupplyWords.cost(sheet)));
        }
        section("Documents to check", Stream.of(DocumentItem.values()).map(LabelWords::of).toList());
        LabelRegion.of(plan.kit()).forEach(this::labels);
        for (SafetyLine.Topic topic : SafetyLine.Topic.values()) {
            section(SafetyWords.topic(topic), SafetyLine.of(topic).stream().map(SafetyWords::of).toList());
        }
        text.append('\n');
        wrapped("", PrepWords.FIRST);
        return text.toString();
    }

    private List<String> wax() {
        List<String> said = new ArrayList<>();
        for (CandleLine line : sheet.candles()) {
            said.add(line.candle().name() + ", " + line.seats() + (line.seats() == 1 ? " seat: " : " seats: ")
                    + LoadWords.each(line) + " each.");
            said.add(Phrases.sentence(Stream.of(LoadWords.both(line), LoadWords.judged(line)).filter(s -> !s.isEmpty())
                    .reduce((a, b) -> a + "; " + b).orElse("")) + ".");
        }
        sheet.totals().ifPresent(totals -> said.add("In all, with " + PrepFigures.percent(plan.kit().spillPercent())
                + " for spills: " + Amounts.weight(totals.waxGrams()) + " wax and "
                + Amounts.weight(totals.fragranceGrams()) + " fragrance."));
        return said;
    }

    private List<String> timetable(Timetable t) {
        Stream<String> never = Bottleneck.of(plan, sheet.seats(), t.promisedMinutes()).stream()
                .flatMap(b -> EveningWords.bottleneck(b, plan).stream());
        return Stream.concat(never, Stream.of(EveningWords.onTime(t), EveningWords.done(t), EveningWords.lastCandle(t),
                EveningWords.basis(t, plan))).filter(s -> !s.isEmpty()).toList();
    }

    private void packing() {
        sheet.packing().boxes().forEach(box -> {
            List<String> said = new ArrayList<>(box.usedUp().stream().map(SupplyWords::packed).toList());
            box.reusable().forEach(packed -> said.add(SupplyWords.packed(packed) + " (comes home again)"));
            section(box.name().isEmpty() ? "Pack, in no box" : "Pack, box \"" + box.name() + "\"", said);
        });
    }

    private void labels(LabelRegion region) {
        List<String> said = new ArrayList<>(List.of(LabelWords.NO_VERDICT));
        sheet.candles().forEach(line -> said.add(line.candle().name() + ": "
                + LabelWords.of(LabelFigures.of(line.candle()), region) + "."));
        LabelItem.of(region).forEach(item -> said.add(Phrases.sentence(LabelWords.weight(item.weight())) + ": "
                + LabelWords.of(item)));
        section("Labels, " + LabelWords.region(region), said);
    }

    private void section(String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            text.append('\n').append(heading).append('\n');
            lines.forEach(line -> wrapped("- ", line));
        }
    }

    private void wrapped(String mark, String line) {
        StringBuilder row = new StringBuilder("  ").append(mark);
        int indent = row.length();
        boolean empty = true;
        for (String word : line.split(" ")) {
            if (!empty && row.length() + 1 + word.length() > WIDTH) {
                text.append(row).append('\n');
                row = new StringBuilder(" ".repeat(indent));
                empty = true;
            }
            row.append(empty ? "" : " ").append(word);
            empty = false;
        }
        text.append(row).append('\n');
    }
}
