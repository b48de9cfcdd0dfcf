package benchpace.plan;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.SeatingChart.Bench;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Where parties are seated, against every way there is. */
class PartySeatingProperties {
    /** A table, who sits there already, and who comes. */
    record Evening(TableShape shape, int seats, Set<Integer> taken, List<String> parties) {
        List<Bench> benches() {
            return SeatingChart.benches(shape, seats);
        }
    }

    @Provide
    Arbitrary<Evening> evenings() {
        return Arbitraries.of(TableShape.values()).flatMap(shape -> Arbitraries.integers().between(1, 14)
                .flatMap(seats -> Combinators.combine(
                        Arbitraries.integers().between(1, seats).set().ofMaxSize(seats / 3),
                        Arbitraries.of("", "", "a", "b", "c", "d").list().ofMaxSize(seats + 3))
                        .as((taken, parties) -> new Evening(shape, seats, taken, parties))));
    }

    private static PartySeating seat(Evening evening) {
        return PartySeating.of(evening.benches(), evening.taken(), evening.parties());
    }

    @Property(tries = 2000)
    void everybody_has_a_free_seat_of_their_own_as_long_as_there_are_any(@ForAll("evenings") Evening evening) {
        List<Optional<SeatNumber>> seats = seat(evening).seats();

        assertThat(seats).hasSameSizeAs(evening.parties());
        List<Integer> given = seats.stream().flatMap(Optional::stream).map(SeatNumber::value).toList();
        assertThat(given).doesNotHaveDuplicates()
                .allMatch(seat -> seat <= evening.seats() && !evening.taken().contains(seat));
        assertThat(given).hasSize(Math.min(evening.parties().size(), evening.seats() - evening.taken().size()));
    }

    @Property(tries = 2000)
    void a_party_that_is_not_told_to_be_split_sits_together(@ForAll("evenings") Evening evening) {
        PartySeating seating = seat(evening);
        TreeMap<String, Set<Integer>> seats = new TreeMap<>();
        for (int i = 0; i < evening.parties().size(); i++) {
            String party = evening.parties().get(i);
            seating.seats().get(i).filter(seat -> !party.isEmpty())
                    .ifPresent(seat -> seats.computeIfAbsent(party, p -> new HashSet<>()).add(seat.value()));
        }
        seats.forEach((party, of) -> assertThat(together(evening.benches(), of)).as(party + " at " + of)
                .isEqualTo(!seating.split().contains(party)));
    }

    /** Whether they are beside each other, with nobody between. */
    private static boolean together(List<Bench> benches, Set<Integer> seats) {
        for (Bench bench : benches) {
            List<Integer> runs = new ArrayList<>();
            int length = bench.seats();
            for (int start = 0; start < (bench.round() ? length : 1); start++) {
                runs.clear();
                for (int i = 0; i < length; i++) {
                    int seat = bench.first() + (start + i) % length;
                    if (seats.contains(seat)) {
                        runs.add(i);
                    }
                }
                if (runs.size() == seats.size() && runs.get(runs.size() - 1) - runs.get(0) == seats.size() - 1) {
                    return true;
                }
            }
        }
        return false;
    }

    @Property(tries = 1500)
    void nobody_is_split_where_there_is_a_way_to_keep_all_together(@ForAll("evenings") Evening evening) {
        int room = evening.seats() - evening.taken().size();
        List<String> seated = evening.parties().subList(0, Math.min(room, evening.parties().size()));
        List<Integer> sizes = seated.stream().filter(p -> !p.isEmpty())
                .collect(Collectors.groupingBy(p -> p, Collectors.counting())).values().stream()
                .map(Long::intValue).toList();

        assertThat(seat(evening).split().isEmpty()).isEqualTo(fits(gaps(evening), sizes, 0));
    }

    /** How many free seats lie beside each other, found by walking around. */
    private static int[] gaps(Evening evening) {
        List<Integer> gaps = new ArrayList<>();
        for (Bench bench : evening.benches()) {
            boolean[] free = new boolean[bench.seats()];
            for (int i = 0; i < free.length; i++) {
                free[i] = !evening.taken().contains(bench.first() + i);
            }
            List<Integer> here = new ArrayList<>();
            int run = 0;
            for (boolean seat : free) {
                run = seat ? run + 1 : 0;
                if (run == 1) {
                    here.add(0);
                }
                if (run > 0) {
                    here.set(here.size() - 1, run);
                }
            }
            if (bench.round() && here.size() > 1 && free[0] && free[free.length - 1]) {
                here.set(0, here.get(0) + here.remove(here.size() - 1));
            }
            gaps.addAll(here);
        }
        return gaps.stream().mapToInt(Integer::intValue).toArray();
    }

    private static boolean fits(int[] gaps, List<Integer> sizes, int next) {
        if (next == sizes.size()) {
            return true;
        }
        for (int i = 0; i < gaps.length; i++) {
            if (gaps[i] >= sizes.get(next)) {
                int[] left = Arrays.copyOf(gaps, gaps.length);
                left[i] -= sizes.get(next);
                if (fits(left, sizes, next + 1)) {
                    return true;
                }
            }
        }
        return false;
    }
}
