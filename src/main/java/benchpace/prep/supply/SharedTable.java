package benchpace.prep.supply;

import benchpace.plan.Plan;
import benchpace.plan.Stations;
import benchpace.plan.Step;
import java.util.List;

/**
 * What all share.
 *
 * @param supplies {@code shared()} of each, what is to spare included
 * @param stations what serves a step that cannot serve all at once
 */
public record SharedTable(List<SupplyLine> supplies, List<Station> stations) {
    /** What serves a step. @param step its name */
    public record Station(String step, Stations stations) { }

    public SharedTable {
        supplies = List.copyOf(supplies);
        stations = List.copyOf(stations);
    }

    public static SharedTable of(Plan plan, List<SupplyLine> supplies) {
        return new SharedTable(supplies.stream().filter(s -> s.shared() > 0).toList(),
                plan.steps().stream().filter(step -> step.stations().isPresent()).map(SharedTable::station).toList());
    }

    private static Station station(Step step) {
        return new Station(step.name(), step.stations().orElseThrow());
    }
}
