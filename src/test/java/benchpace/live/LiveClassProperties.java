package benchpace.live;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.Wishes.Evening;
import benchpace.live.Wishes.Wish;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;

/** What holds for every class, whatever is wished for in whatever order. */
class LiveClassProperties {

    @Provide
    Arbitrary<Evening> evenings() {
        return Wishes.evenings();
    }

    private static LiveClass after(Evening evening) {
        LiveClass live = evening.begun();
        for (Wish wish : evening.wishes()) {
            live = Wishes.put(live, wish);
        }
        return live;
    }

    @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
    void folding_the_stored_events_gives_the_state_that_was_acknowledged(@ForAll("evenings") Evening evening) {
        LiveClass acknowledged = after(evening);

        LiveClass reopened = LiveClass.of(acknowledged.history());

        assertThat(Digest.of(reopened)).isEqualTo(Digest.of(acknowledged));
        assertThat(reopened.seq()).isEqualTo(acknowledged.seq());
        Statistics.label("events let stand").collect(acknowledged.seq() > 20 ? "more than 20" : "up to 20");
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void whoever_goes_on_from_a_class_first_takes_nothing_from_whoever_does_so_next(
            @ForAll("evenings") Evening evening) {
        LiveClass live = evening.begun();
        for (Wish wish : evening.wishes()) {
            LiveClass first = Wishes.put(live, wish);
            LiveClass second = Wishes.put(live, wish);

            assertThat(Digest.of(second)).as("once more with %s", wish.event()).isEqualTo(Digest.of(first));
            assertThat(Digest.of(LiveClass.of(first.log()))).as("added up anew").isEqualTo(Digest.of(first));
            live = second;
        }
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void a_clock_set_right_and_wrong_again_leaves_the_class_as_it_was(@ForAll("evenings") Evening evening,
            @ForAll @IntRange(min = -500_000_000, max = 500_000_000) int seconds) {
        LiveClass live = after(evening);
        Duration by = Duration.ofSeconds(seconds);

        LiveClass moved = shifted(live, by);
        LiveClass back = shifted(moved, by.negated());

        assertThat(Digest.of(back)).isEqualTo(Digest.of(live));
        assertThat(Digest.of(LiveClass.of(moved.history()))).as("added up once more").isEqualTo(Digest.of(moved));
        assertThat(Digest.of(LiveClass.of(moved.log()))).as("read back").isEqualTo(Digest.of(moved));
        assertThat(lasted(moved)).isEqualTo(lasted(live));
    }

    private static LiveClass shifted(LiveClass live, Duration by) {
        Instant now = live.lastRecordedAt().plus(by);
        return live.apply(new Recorded(live.seq() + 1, "board.clock." + live.seq(), "test", now, now,
                new ClassEvent.ClockShifted(1, by)));
    }

    /** From the setting up to where each seat stands now, and to its pour. */
    private static List<Duration> lasted(LiveClass live) {
        return live.seats().stream().flatMap(seat -> Stream.concat(Stream.of(live.progress().standing(seat).since()),
                live.progress().pouredAt(seat).stream())).map(at -> Duration.between(live.createdAt(), at)).toList();
    }

    @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
    void undoing_an_event_right_after_it_restores_what_could_be_seen(@ForAll("evenings") Evening evening) {
        LiveClass live = evening.begun();
        for (Wish wish : evening.wishes()) {
            LiveClass next = Wishes.put(live, wish);
            boolean taken = next.seq() > live.seq();
            if (taken && !(wish.event() instanceof ClassEvent.Undone)) {
                Decision undo = decide(next, new ClassEvent.Undone(next.seq()));
                if (undo instanceof Decision.Accepted accepted) {
                    assertThat(Digest.of(append(next, accepted.event()))).as("after undoing %s", wish.event())
                            .isEqualTo(Digest.of(live));
                } else {
                    // an opening may be in use at once by seats that jumped ahead; a closed class takes back only that
                    assertThat(((Decision.Refused) undo).reason())
                            .isInstanceOfAny(Refusal.StepInUse.class, Refusal.ClassIsClosed.class);
                }
            }
            live = next;
        }
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void a_tap_that_was_let_stand_is_already_finished_when_it_comes_again(@ForAll("evenings") Evening evening) {
        LiveClass live = evening.begun();
        for (Wish wish : evening.wishes()) {
            LiveClass next = Wishes.put(live, wish);
            if (next.seq() > live.seq() && wish.event() instanceof ClassEvent.StepFinished tap) {
                assertThat(decide(next, tap)).isEqualTo(new Decision.Refused(
                        new Refusal.AlreadyFinished(tap.seat(), tap.step(), next.seq())));
            }
            live = next;
        }
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void deciding_changes_nothing_and_says_the_same_again(@ForAll("evenings") Evening evening) {
        LiveClass live = after(evening);
        Digest before = Digest.of(live);

        for (Wish wish : evening.wishes()) {
            assertThat(decide(live, wish.event())).isEqualTo(decide(live, wish.event()));
        }
        assertThat(Digest.of(live)).isEqualTo(before);
    }

    @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
    void every_seat_stands_somewhere_and_its_time_there_is_never_negative(@ForAll("evenings") Evening evening) {
        LiveClass live = evening.begun();
        for (Wish wish : evening.wishes()) {
            live = Wishes.put(live, wish);
            Progress progress = live.progress();
            Instant now = live.lastRecordedAt();
            for (Seat seat : live.seats()) {
                Standing standing = progress.standing(seat);
                Duration first = progress.timeIn(seat, standing, now);
                assertThat(first.isNegative()).isFalse();
                assertThat(progress.timeIn(seat, standing, now.plusSeconds(60)))
                        .isBetween(first, first.plusSeconds(60));
                assertThat(standing.step().isPresent()).isEqualTo(switch (standing.phase()) {
                    case EXPECTED, LEFT, SHARING, DONE -> false;
                    case LISTENING, WORKING, WAITING, CURING -> true;
                    case PAUSED -> standing.step().isPresent();
                });
                Statistics.label("phases").collect(standing.phase());
            }
        }
    }

    @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
    void a_seat_never_stands_at_a_step_it_has_finished_nor_behind_one(@ForAll("evenings") Evening evening) {
        LiveClass live = after(evening);
        Progress progress = live.progress();
        for (Seat seat : live.seats()) {
            Optional<Step> at = progress.standing(seat).step();
            at.ifPresent(step -> assertThat(live.plan().indexOf(step.id()))
                    .isGreaterThan(progress.furthestFinished(seat)));
            progress.gaps(seat).forEach(gap -> assertThat(live.plan().indexOf(gap.id()))
                    .isLessThan(progress.furthestFinished(seat)));
        }
    }

    @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
    void a_working_seat_can_be_tapped_and_a_waiting_one_cannot(@ForAll("evenings") Evening evening) {
        LiveClass live = after(evening);
        if (live.closedAt().isPresent()) {
            return;
        }
        for (Seat seat : live.seats()) {
            Standing standing = live.progress().standing(seat);
            StepId step = standing.step().map(Step::id).orElse(new StepId("none"));
            Decision tap = decide(live, new ClassEvent.StepFinished(seat.number(), step));
            if (standing.phase() == Standing.Phase.WORKING) {
                assertThat(tap).isInstanceOf(Decision.Accepted.class);
            } else if (standing.phase() == Standing.Phase.WAITING) {
                assertThat(((Decision.Refused) tap).reason())
                        .isInstanceOfAny(Refusal.StepNotOpen.class, Refusal.OutOfOrder.class);
            }
        }
    }

    @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
    void whose_candle_is_shared_makes_one_or_went_away_and_nobody_shares_in_a_ring(
            @ForAll("evenings") Evening evening) {
        LiveClass live = evening.begun();
        for (Wish wish : evening.wishes()) {
            live = Wishes.put(live, wish);
            for (Seat seat : live.seats()) {
                if (seat.sharesWith().isPresent()) {
                    Seat host = live.seat(seat.sharesWith().get()).orElseThrow();
                    assertThat(host.sharesWith()).isEmpty();
                    assertThat(!seat.present() || host.present()).as("%s shares with %s", seat, host).isTrue();
                }
            }
        }
    }

    @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
    void nothing_is_known_of_a_candle_from_before_it_was_poured(@ForAll("evenings") Evening evening) {
        LiveClass live = after(evening);
        for (Seat seat : live.seats()) {
            Instant poured = live.progress().pouredAt(seat).orElse(Instant.MAX);
            seat.readings().forEach(reading -> assertThat(reading.at()).isAfterOrEqualTo(poured));
            seat.skinSeenAt().ifPresent(at -> assertThat(at).isAfterOrEqualTo(poured));
            seat.judgedSetAt().ifPresent(at -> assertThat(at).isAfterOrEqualTo(poured));
        }
    }

    @Provide
    Arbitrary<Evening> comingsAndGoings() {
        return Wishes.comingsAndGoings();
    }

    @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
    void pauses_are_in_order_and_apart_and_take_out_no_more_than_there_was(
            @ForAll("comingsAndGoings") Evening evening) {
        LiveClass live = after(evening);
        for (Seat seat : live.seats()) {
            List<Seat.Pause> pauses = seat.pauses();
            for (int i = 1; i < pauses.size(); i++) {
                assertThat(pauses.get(i - 1).until()).isPresent();
                assertThat(pauses.get(i - 1).until().get()).isBefore(pauses.get(i).from());
            }
            Instant now = live.lastRecordedAt().plusSeconds(1);
            Instant start = now.minusSeconds(600);
            assertThat(seat.pausedWithin(start, now)).isBetween(Duration.ZERO, Duration.ofSeconds(600));
        }
    }

    @Provide
    Arbitrary<List<Integer>> orders() {
        return Arbitraries.shuffle(1, 2, 3, 4, 5);
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void in_which_order_taps_of_different_seats_arrive_makes_no_difference(@ForAll("orders") List<Integer> order) {
        assertThat(standingsAfter(order)).isEqualTo(standingsAfter(List.of(1, 2, 3, 4, 5)));
    }

    private static List<Standing> standingsAfter(List<Integer> order) {
        TestClass c = TestClass.evening(5).open("welcome").minute(5).open("wicks").minute(20);
        order.forEach(seat -> c.madeAt(6 + seat).finish(seat, "wicks"));
        order.forEach(seat -> c.madeAt(12 + seat / 2.0).finish(seat, "blend"));
        c.open("pour");
        return c.live().seats().stream().map(c.live().progress()::standing).toList();
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void undoing_everything_but_the_creation_leaves_the_class_as_it_was_made(@ForAll("evenings") Evening evening) {
        LiveClass live = after(evening);
        List<Recorded> history = new ArrayList<>(live.history());
        long last = live.seq();
        for (long seq = last; seq > 1; seq--) {
            if (!(history.get((int) seq - 1).event() instanceof ClassEvent.Undone)) {
                live = append(live, new ClassEvent.Undone(seq));
            }
        }

        assertThat(Digest.of(live)).isEqualTo(Digest.of(TestClass.evening(5).live()));
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void seats_that_do_not_exist_are_refused_by_every_sort_of_wish(@ForAll("evenings") Evening evening) {
        LiveClass live = after(evening);
        for (Wish wish : evening.wishes()) {
            if (wish.event() instanceof ClassEvent.AtSeat at && live.seat(at.seat()).isEmpty()
                    && !(at instanceof ClassEvent.SeatAdded)) {
                assertThat(((Decision.Refused) decide(live, wish.event())).reason()).isInstanceOfAny(
                        live.takenAway(at.seat()).isPresent() ? Refusal.SeatIsAway.class : Refusal.NoSuchSeat.class,
                        Refusal.ClassIsClosed.class);
            }
        }
    }

    private static Decision decide(LiveClass live, ClassEvent wish) {
        Instant now = live.lastRecordedAt();
        return Rules.decide(live, new Command("again", "test", now, wish), now, Plausibility.ANYTHING);
    }

    private static LiveClass append(LiveClass live, ClassEvent event) {
        Instant now = live.lastRecordedAt();
        return live.apply(new Recorded(live.seq() + 1, "more-" + live.seq(), "test", now, now, event));
    }
}
