package benchpace.plan.kit;

import benchpace.plan.AsTyped;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What is laid out, melted and plugged in for a class.
 *
 * @param roomCelsius        the room and the solid wax in it, -10 to 45; absent takes the candle's own
 * @param spillPercent       wax and fragrance to melt and weigh beyond what is poured, 0 to 100; 0 is no allowance
 * @param readyMarginMinutes how long before the class begins the wax is to be molten, 0 to 600
 * @param promisedMinutes    from the beginning to the end that guests were told, 1 to 1440; absent is the plan's sum
 * @param melters            ids unique, at most {@value #MOST}
 * @param appliances         everything that is plugged in, melters too, which take their melter's watts; ids unique,
 *                           what they name is listed; at most {@value #MOST}
 * @param circuits           of the venue; ids unique, at most {@value #MOST}
 * @param supplies           ids unique, at most {@value #MOST_SUPPLIES}
 * @param asTyped            of {@code roomCelsius}
 */
public record Kit(OptionalDouble roomCelsius, double spillPercent, int readyMarginMinutes, OptionalInt promisedMinutes,
                  Loads loads, List<Melter> melters, List<Appliance> appliances, List<Circuit> circuits,
                  List<Supply> supplies, AsTyped asTyped) {
    public static final int MOST = 20;
    public static final int MOST_SUPPLIES = 100;
    /** A plan that says nothing of the day before. */
    public static final Kit NONE = new Kit(OptionalDouble.empty(), 0, 0, OptionalInt.empty(), Loads.NONE, List.of(),
            List.of(), List.of(), List.of());

    public Kit {
        roomCelsius.ifPresent(celsius -> Figures.within("the room's temperature", celsius, -10, 45, "°C"));
        Figures.within("the allowance for spills", spillPercent, 0, 100, "%");
        Figures.within("the time that the wax is ready before", readyMarginMinutes, 0, 600, "minutes");
        promisedMinutes.ifPresent(minutes -> Figures.within("the promised length", minutes, 1, 1440, "minutes"));
        melters = listed("melter", melters, melters.stream().map(Melter::id).toList(), MOST);
        appliances = listed("appliance", appliances, appliances.stream().map(Appliance::id).toList(), MOST);
        circuits = listed("circuit", circuits, circuits.stream().map(Circuit::id).toList(), MOST);
        supplies = listed("supply", supplies, supplies.stream().map(Supply::id).toList(), MOST_SUPPLIES);
        List<Melter> pots = melters;
        List<Circuit> wires = circuits;
        appliances.forEach(appliance -> requireListed(appliance, pots, wires));
        appliances = appliances.stream().map(appliance -> appliance.melter().map(id -> of(pots, id))
                .map(pot -> appliance.taking(pot.watts())).orElse(appliance)).toList();
    }

    /** With nothing kept as it was typed. */
    public Kit(OptionalDouble roomCelsius, double spillPercent, int readyMarginMinutes, OptionalInt promisedMinutes,
               Loads loads, List<Melter> melters, List<Appliance> appliances, List<Circuit> circuits,
               List<Supply> supplies) {
        this(roomCelsius, spillPercent, readyMarginMinutes, promisedMinutes, loads, melters, appliances, circuits,
                supplies, AsTyped.NONE);
    }

    private static void requireListed(Appliance appliance, List<Melter> melters, List<Circuit> circuits) {
        appliance.melter().filter(id -> melters.stream().noneMatch(m -> m.id().equals(id))).ifPresent(id -> {
            throw new IllegalArgumentException("\"" + appliance.name() + "\" is said to be the melter \"" + id
                    + "\", and no melter has that id");
        });
        appliance.circuit().filter(id -> circuits.stream().noneMatch(c -> c.id().equals(id))).ifPresent(id -> {
            throw new IllegalArgumentException("\"" + appliance.name() + "\" is plugged into \"" + id
                    + "\", and no circuit has that id");
        });
    }

    private static Melter of(List<Melter> melters, String id) {
        return melters.stream().filter(m -> m.id().equals(id)).findFirst().orElseThrow();
    }

    private static <T> List<T> listed(String what, List<T> things, List<String> ids, int most) {
        if (things.size() > most) {
            throw new IllegalArgumentException("at most " + most + " entries are kept of each kind, and there are "
                    + things.size());
        }
        Set<String> seen = new HashSet<>();
        for (String id : ids) {
            if (!seen.add(id)) {
                throw new IllegalArgumentException("two things are called " + what + " \"" + id + "\"");
            }
        }
        return List.copyOf(things);
    }

    /** The same with this melter in the place of the one of its id. */
    public Kit with(Melter melter) {
        return new Kit(roomCelsius, spillPercent, readyMarginMinutes, promisedMinutes, loads,
                melters.stream().map(m -> m.id().equals(melter.id()) ? melter : m).toList(), appliances, circuits,
                supplies, asTyped);
    }

    public Optional<Melter> melter(String id) {
        return melters.stream().filter(m -> m.id().equals(id)).findFirst();
    }

    public Optional<Circuit> circuit(String id) {
        return circuits.stream().filter(c -> c.id().equals(id)).findFirst();
    }
}
