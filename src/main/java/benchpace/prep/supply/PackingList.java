package benchpace.prep.supply;

import benchpace.plan.Plan;
import benchpace.plan.kit.Appliance;
import benchpace.prep.wax.WaxTotals;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What travels to a hired venue, by box; what comes home again stands apart.
 *
 * @param boxes in the order in which the plan names them, what has no box last
 */
public record PackingList(List<Box> boxes) {
    /** One box. @param name empty for what has none */
    public record Box(String name, List<Packed> usedUp, List<Packed> reusable) {
        public Box {
            usedUp = List.copyOf(usedUp);
            reusable = List.copyOf(reusable);
        }

        private Box(String name, List<Packed> all) {
            this(name, all.stream().filter(p -> !p.reusable()).toList(),
                    all.stream().filter(Packed::reusable).toList());
        }
    }

    public PackingList {
        boxes = List.copyOf(boxes);
    }

    public static PackingList of(Plan plan, WaxTotals totals, List<SupplyLine> supplies) {
        Map<String, List<Packed>> boxes = new LinkedHashMap<>();
        supplies.stream().filter(s -> s.needed() > 0).forEach(s -> boxes
                .computeIfAbsent(s.supply().box(), name -> new ArrayList<>()).add(new Packed.OfSupply(s)));
        List<Packed> loose = new ArrayList<>();
        Set<String> listed = supplies.stream().filter(SupplyLine::grams).map(s -> s.supply().id())
                .collect(Collectors.toSet());
        totals.waxes().stream().filter(w -> !listed.contains(w.wax()))
                .forEach(w -> loose.add(new Packed.OfWax(w.wax(), w.name(), w.waxGrams())));
        if (totals.fragranceGrams() > 0 && !listed.contains(Supplies.FRAGRANCE)) {
            loose.add(new Packed.OfFragrance(totals.fragranceGrams()));
        }
        plan.kit().appliances().forEach(a -> loose.add(new Packed.OfAppliance(a.id(), a.name())));
        Set<String> pluggedIn = plan.kit().appliances().stream().map(Appliance::melter).flatMap(m -> m.stream())
                .collect(Collectors.toSet());
        plan.kit().melters().stream().filter(m -> !pluggedIn.contains(m.id()))
                .forEach(m -> loose.add(new Packed.OfAppliance(m.id(), m.name())));
        List<Packed> without = boxes.getOrDefault("", new ArrayList<>());
        boxes.remove("");
        without.addAll(loose);
        if (!without.isEmpty()) {
            boxes.put("", without);
        }
        return new PackingList(boxes.entrySet().stream().map(e -> new Box(e.getKey(), e.getValue())).toList());
    }
}
