package benchpace.prep.sheet;

import benchpace.plan.Plan;
import benchpace.prep.Caution;
import benchpace.prep.Part;
import benchpace.prep.PrepProblem;
import benchpace.prep.circuit.CircuitLine;
import benchpace.prep.circuit.CircuitPart;
import benchpace.prep.evening.Setting;
import benchpace.prep.evening.Timetable;
import benchpace.prep.melter.MelterLine;
import benchpace.prep.melter.MelterPart;
import benchpace.prep.supply.Cost;
import benchpace.prep.supply.PackingList;
import benchpace.prep.supply.PlaceSetting;
import benchpace.prep.supply.SharedTable;
import benchpace.prep.supply.Shopping;
import benchpace.prep.supply.Supplies;
import benchpace.prep.supply.SupplyLine;
import benchpace.prep.wax.CandleLine;
import benchpace.prep.wax.WaxTotals;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The day before, in numbers. What cannot be worked out is absent, {@link #problems} say why, and the rest stands.
 *
 * @param candles  the candles that somebody makes
 * @param totals   with the allowance for spills; absent if the plan names no candle
 * @param places   what lies at each place, by candle
 * @param shopping what has to be bought; never part of the cost
 * @param timetable absent until evenings have been simulated, which takes longer than all the rest
 */
public record PrepSheet(int seats, List<CandleLine> candles, Optional<WaxTotals> totals, List<MelterLine> melters,
                        List<CircuitLine> circuits, List<SupplyLine> supplies, List<PlaceSetting> places,
                        SharedTable shared, PackingList packing, Shopping shopping, Cost cost,
                        List<Caution> cautions, Optional<Timetable> timetable, List<PrepProblem> problems) {
    public PrepSheet {
        candles = List.copyOf(candles);
        melters = List.copyOf(melters);
        circuits = List.copyOf(circuits);
        supplies = List.copyOf(supplies);
        places = List.copyOf(places);
        cautions = List.copyOf(cautions);
        problems = List.copyOf(problems);
    }

    /** For a class that lasts as long as the plan promises. */
    public static PrepSheet of(Plan plan, int seats, Map<String, Integer> chosen) {
        return of(plan, seats, chosen, Setting.promised(plan));
    }

    /**
     * @param seats           1 to {@link benchpace.plan.SeatNumber#MOST}
     * @param chosen          how many seats make which candle, by its id; the rest make the plan's first
     * @param promisedMinutes from the beginning to the end that guests were told
     * @throws IllegalArgumentException for a candle that the plan does not have, more choices than seats, or no class
     */
    public static PrepSheet of(Plan plan, int seats, Map<String, Integer> chosen, double promisedMinutes) {
        List<CandleLine> candles = CandleCounts.of(plan, seats, chosen);
        WaxTotals totals = WaxTotals.of(candles, plan.kit().spillPercent());
        MelterPart melters = MelterPart.of(plan, totals);
        CircuitPart circuits = CircuitPart.of(plan.kit(), melters.lines(), promisedMinutes);
        List<SupplyLine> supplies = Supplies.of(plan, seats, totals);
        List<PrepProblem> problems = new ArrayList<>(WaxChecks.problems(plan, candles));
        problems.addAll(melters.problems());
        problems.addAll(circuits.problems());
        List<Caution> cautions = new ArrayList<>(WaxChecks.cautions(plan, candles));
        cautions.addAll(melters.cautions());
        cautions.addAll(circuits.cautions());
        return new PrepSheet(seats, candles, candles.isEmpty() ? Optional.empty() : Optional.of(totals),
                melters.lines(), circuits.lines(), supplies, PlaceSetting.of(seats, candles, supplies),
                SharedTable.of(plan, supplies), PackingList.of(plan, totals, supplies), Shopping.of(supplies),
                Cost.of(seats, supplies), cautions, Optional.empty(), problems);
    }

    /** The same sheet with its evenings. */
    public PrepSheet with(Timetable evenings) {
        return new PrepSheet(seats, candles, totals, melters, circuits, supplies, places, shared, packing, shopping,
                cost, cautions, Optional.of(evenings), problems);
    }

    /** The same sheet, of whose evenings nothing can be said. */
    public PrepSheet withoutTimetable() {
        List<PrepProblem> more = new ArrayList<>(problems);
        more.add(new PrepProblem.NoTimetable());
        return new PrepSheet(seats, candles, totals, melters, circuits, supplies, places, shared, packing, shopping,
                cost, cautions, Optional.empty(), more);
    }

    /** The problems of one part. */
    public List<PrepProblem> problems(Part part) {
        return problems.stream().filter(p -> p.part() == part).toList();
    }

    /** The melter that has to be switched on first, if any of those in use can be told. */
    public Optional<MelterLine> firstOn() {
        return melters.stream().filter(m -> m.used() && m.switchOnMinutesBefore().isPresent())
                .max(Comparator.comparingDouble(m -> m.switchOnMinutesBefore().getAsDouble()));
    }
}
