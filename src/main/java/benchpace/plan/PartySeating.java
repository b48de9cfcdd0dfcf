package benchpace.plan;

import benchpace.plan.SeatingChart.Bench;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Where guests sit so that those who came together sit beside each other, also around the corner of a table. A party is
 * split only where there is no way to keep all together, or the search for one took too much work; then it is told.
 *
 * @param seats of each guest, in the order they were given; empty for those for whom no place was left
 * @param split the parties that could not sit together, each once
 */
public record PartySeating(List<Optional<SeatNumber>> seats, List<String> split) {
    /** Ways tried before the best so far is taken: far more than sixty seats in parties of people need. */
    private static final int MOST_WAYS = 20_000;

    public PartySeating {
        seats = List.copyOf(seats);
        split = List.copyOf(split);
    }

    /**
     * @param benches who sits beside whom
     * @param taken   seats that are somebody's already
     * @param parties the party of each guest to seat; empty for one who came alone. Who comes first sits first
     */
    public static PartySeating of(List<Bench> benches, Set<Integer> taken, List<String> parties) {
        List<List<Integer>> gaps = gaps(benches, taken);
        int room = gaps.stream().mapToInt(List::size).sum();
        List<String> seated = parties.subList(0, Math.min(room, parties.size()));
        Map<Integer, Integer> gapOf = new Search(gaps.stream().map(List::size).toList(), groups(seated)).gapOf();
        return laidOut(gaps, seated, parties.size(), gapOf);
    }

    /** Free seats beside each other, as long as can be; an empty round table is one from its first seat on. */
    private static List<List<Integer>> gaps(List<Bench> benches, Set<Integer> taken) {
        List<List<Integer>> gaps = new ArrayList<>();
        for (Bench bench : benches) {
            List<Integer> order = new ArrayList<>();
            for (int seat = bench.first(); seat <= bench.last(); seat++) {
                order.add(seat);
            }
            int firstTaken = order.stream().filter(taken::contains).findFirst().map(order::indexOf).orElse(0);
            if (bench.round()) {
                Collections.rotate(order, -firstTaken);
            }
            List<Integer> gap = new ArrayList<>();
            for (int seat : order) {
                if (!taken.contains(seat)) {
                    gap.add(seat);
                } else if (!gap.isEmpty()) {
                    gaps.add(gap);
                    gap = new ArrayList<>();
                }
            }
            if (!gap.isEmpty()) {
                gaps.add(gap);
            }
        }
        return gaps;
    }

    /** The guests of each party of two or more, by their place in the list. */
    private static Map<String, List<Integer>> groups(List<String> parties) {
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        for (int i = 0; i < parties.size(); i++) {
            if (!parties.get(i).isEmpty()) {
                groups.computeIfAbsent(parties.get(i), p -> new ArrayList<>()).add(i);
            }
        }
        groups.values().removeIf(guests -> guests.size() < 2);
        return groups;
    }

    /** In each gap those who came first sit first, and who came together follow each other. */
    private static PartySeating laidOut(List<List<Integer>> gaps, List<String> parties, int guests,
                                        Map<Integer, Integer> gapOf) {
        int[] left = gaps.stream().mapToInt(List::size).toArray();
        gapOf.values().forEach(gap -> left[gap]--);
        List<List<Integer>> inGap = new ArrayList<>();
        gaps.forEach(gap -> inGap.add(new ArrayList<>()));
        Set<String> split = new HashSet<>();
        for (int i = 0; i < parties.size(); i++) {
            Integer gap = gapOf.get(i);
            if (gap == null) { // alone, or of a party for which no gap was long enough
                gap = 0;
                while (left[gap] == 0) {
                    gap++;
                }
                left[gap]--;
            }
            inGap.get(gap).add(i);
        }
        List<Optional<SeatNumber>> seats = new ArrayList<>(Collections.nCopies(guests, Optional.empty()));
        Map<String, Integer> where = new HashMap<>();
        for (int gap = 0; gap < gaps.size(); gap++) {
            List<Integer> order = together(inGap.get(gap), parties);
            for (int i = 0; i < order.size(); i++) {
                String party = parties.get(order.get(i));
                seats.set(order.get(i), Optional.of(new SeatNumber(gaps.get(gap).get(i))));
                Integer other = party.isEmpty() ? null : where.put(party, gap);
                if (other != null && other != gap) {
                    split.add(party);
                }
            }
        }
        return new PartySeating(seats, parties.stream().distinct().filter(split::contains).toList());
    }

    private static List<Integer> together(List<Integer> guests, List<String> parties) {
        Map<String, List<Integer>> order = new LinkedHashMap<>();
        guests.forEach(i -> order.computeIfAbsent(parties.get(i).isEmpty() ? "\n" + i : parties.get(i),
                p -> new ArrayList<>()).add(i));
        return order.values().stream().flatMap(List::stream).toList();
    }

    /** Which party goes into which gap: the largest first, each into the tightest that holds it, then into others. */
    private static final class Search {
        private final int[] left;
        private final List<List<Integer>> groups;
        private final int[] chosen;
        private int[] best;
        private int bestKept = -1;
        private int ways;

        Search(List<Integer> gaps, Map<String, List<Integer>> byParty) {
            left = gaps.stream().mapToInt(Integer::intValue).toArray();
            groups = new ArrayList<>(byParty.values());
            groups.sort(Comparator.comparing((List<Integer> g) -> g.size()).reversed());
            chosen = new int[groups.size()];
            best = chosen.clone();
        }

        /** By guest; none of a guest whose party fits nowhere. */
        Map<Integer, Integer> gapOf() {
            place(0, 0);
            Map<Integer, Integer> gapOf = new HashMap<>();
            for (int g = 0; g < groups.size(); g++) {
                int gap = best[g];
                if (gap >= 0) {
                    groups.get(g).forEach(guest -> gapOf.put(guest, gap));
                }
            }
            return gapOf;
        }

        /** @return whether all could be kept together, so that there is nothing more to look for */
        private boolean place(int group, int kept) {
            if (group == groups.size()) {
                if (kept > bestKept) {
                    bestKept = kept;
                    best = chosen.clone();
                }
                return kept == groups.size();
            }
            if (kept + groups.size() - group <= bestKept || ways++ > MOST_WAYS) {
                return false;
            }
            int size = groups.get(group).size();
            Set<Integer> tried = new HashSet<>();
            List<Integer> fitting = new ArrayList<>();
            for (int gap = 0; gap < left.length; gap++) {
                if (left[gap] >= size && tried.add(left[gap])) {
                    fitting.add(gap);
                }
            }
            fitting.sort(Comparator.comparing(gap -> left[gap]));
            for (int gap : fitting) {
                left[gap] -= size;
                chosen[group] = gap;
                boolean all = place(group + 1, kept + 1);
                left[gap] += size;
                if (all) {
                    return true;
                }
            }
            chosen[group] = -1;
            return place(group + 1, kept);
        }
    }
}
