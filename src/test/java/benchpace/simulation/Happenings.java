package benchpace.simulation;

import benchpace.board.time.ClockChoice;
import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.live.Standing;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.plan.StepKind;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Random;

/**
 * Makes an evening up as it goes: guests who work at their own speed, an instructor, helpers and phones that tap late,
 * wrong, twice or never over a bad network, and a computer that is stopped, put to sleep or set to another time.
 */
final class Happenings {
    private static final int MOST_ACTS = 160;

    /** What comes next of one agent. @param after the beginning */
    private record Due(Duration after, int order, Agent agent) { }

    /** Somebody who does something, and says when to be asked again; never again if empty. */
    private interface Agent {
        Optional<Duration> act(Performance then, List<Act> into);
    }

    private final Random random;
    private final Network network;
    private final AnyWish wishes;
    private final PriorityQueue<Due> due = new PriorityQueue<>(
            java.util.Comparator.comparing(Due::after).thenComparing(Due::order));
    private final int most;
    private final Duration longest;
    private Duration elapsed = Duration.ZERO;
    private int orders;
    private int acts;

    Happenings(Random random, Setting setting) {
        this.random = random;
        boolean calm = random.nextInt(3) == 0;
        this.network = new Network(random, calm);
        this.wishes = new AnyWish(random, setting);
        this.most = 40 + random.nextInt(MOST_ACTS - 40);
        this.longest = Duration.ofMinutes(60 + random.nextInt(200));
        double speed = 0.5 + random.nextDouble();
        double habit = random.nextDouble();
        for (int seat = 1; seat <= setting.seats(); seat++) {
            int number = seat;
            double own = speed * (0.7 + 0.6 * random.nextDouble());
            at(seconds(random.nextInt(300)), (then, into) -> guest(number, own, habit, then, into));
        }
        at(seconds(30), this::instructor);
        at(seconds(60 + random.nextInt(600)), this::curing);
        double odd = calm ? 0 : 60 + random.nextInt(500);
        if (odd > 0) {
            at(seconds(odd), (then, into) -> {
                network.send(wishes.any(then.live(), then.now()), then.wall(), into, this::later);
                return Optional.of(seconds(odd * random.nextDouble() * 2));
            });
        }
        at(minutes(5 + random.nextInt(20)), (then, into) -> {
            into.add(new Act.Look());
            return Optional.of(minutes(calm ? 6 + random.nextInt(20) : 8 + random.nextInt(40)));
        });
        if (!calm && random.nextInt(3) > 0) {
            at(minutes(1 + random.nextInt(60)), this::trouble);
        }
    }

    private void at(Duration after, Agent agent) {
        due.add(new Due(after, orders++, agent));
    }

    private void later(Duration by, Act act) {
        at(elapsed.plus(by), (then, into) -> {
            into.add(act);
            return Optional.empty();
        });
    }

    private static Duration seconds(double seconds) {
        return Duration.ofMillis(Math.round(seconds * 1000));
    }

    private static Duration minutes(double minutes) {
        return seconds(minutes * 60);
    }

    boolean goOn() {
        return acts < most && elapsed.compareTo(longest) < 0 && !due.isEmpty();
    }

    /** What happens next; nothing is changed on the board yet. */
    List<Act> next(Performance then) {
        Duration until = due.peek().after().minus(elapsed);
        if (!until.isZero()) {
            elapsed = elapsed.plus(until);
            return List.of(new Act.Pass(until));
        }
        Due first = due.poll();
        List<Act> into = new ArrayList<>();
        first.agent().act(then, into).ifPresent(again -> at(elapsed.plus(again), first.agent()));
        acts += into.size();
        return into;
    }

    // ---- people

    /** Taps what the seat is done with, when it is, as its table's habit has it. */
    private Optional<Duration> guest(int number, double speed, double habit, Performance then, List<Act> into) {
        LiveClass live = then.live();
        Optional<Seat> there = live.seat(new SeatNumber(number));
        if (there.isEmpty()) {
            return Optional.of(minutes(5)); // taken away; it may come back
        }
        Seat seat = there.get();
        Standing standing = live.progress().standing(seat);
        if (standing.phase() == Standing.Phase.WORKING && standing.step().isPresent()) {
            Step step = standing.step().get();
            boolean finish = step.kind() == StepKind.FINISH && seat.judgedSetAt().isEmpty();
            if (random.nextDouble() < (finish ? 0.4 : 0.95 - 0.4 * habit)) {
                int tapped = random.nextInt(30) == 0 ? 1 + random.nextInt(live.seats().size()) : number;
                ObjectNode tap = wishes.command("finish-step").put("seat", tapped).put("step", step.id().value());
                network.send(tap, then.wall(), into, this::later);
            }
            double minutes = step.planned().toMillis() / 60_000.0;
            return Optional.of(minutes(Math.min(30, minutes * speed * Math.exp(0.5 * random.nextGaussian()))));
        }
        return Optional.of(seconds(20 + random.nextInt(120)));
    }

    /** Opens the next led step when most are done with what is open, or sooner, and closes the class in the end. */
    private Optional<Duration> instructor(Performance then, List<Act> into) {
        LiveClass live = then.live();
        Progress progress = live.progress();
        long makers = live.seats().stream().filter(Seat::makesCandle).count();
        long working = live.seats().stream().filter(Seat::makesCandle)
                .filter(s -> progress.standing(s).phase() == Standing.Phase.WORKING).count();
        Optional<Step> next = live.nextLed();
        boolean cures = next.filter(s -> s.kind() == StepKind.FINISH).isPresent();
        boolean ready = working <= makers / 4 && (!cures || random.nextInt(25) == 0 || someSet(live));
        if (next.isPresent() && (ready || random.nextInt(20) == 0)) {
            ObjectNode open = wishes.command("open-step").put("step", next.get().id().value());
            network.send(open, then.wall(), into, this::later);
        } else if (next.isEmpty() && working == 0 && random.nextInt(20) == 0) {
            network.send(wishes.command("close"), then.wall(), into, this::later);
        }
        return Optional.of(seconds(40 + random.nextInt(100)));
    }

    private static boolean someSet(LiveClass live) {
        return live.seats().stream().anyMatch(s -> s.judgedSetAt().isPresent());
    }

    /** Looks after what sets: hand tests, readings, and the activities of the wait. */
    private Optional<Duration> curing(Performance then, List<Act> into) {
        if (random.nextInt(12) == 0) {
            Act.Leave leave = wishes.leave();
            into.add(leave);
            if (random.nextInt(3) == 0) {
                later(seconds(random.nextInt(60)), leave);
            }
            return Optional.of(seconds(30 + random.nextInt(240)));
        }
        LiveClass live = then.live();
        Progress progress = live.progress();
        List<Seat> setting = live.seats().stream().filter(s -> progress.pouredAt(s).isPresent()).toList();
        if (!setting.isEmpty()) {
            Seat seat = setting.get(random.nextInt(setting.size()));
            Duration since = Duration.between(progress.pouredAt(seat).orElseThrow(), then.now());
            network.send(wishes.curing(live, seat, since, then.now()), then.wall(), into, this::later);
        }
        return Optional.of(seconds(30 + random.nextInt(240)));
    }

    // ---- the machine

    private Optional<Duration> trouble(Performance then, List<Act> into) {
        if (random.nextInt(3) > 0) {
            later(seconds(20 + random.nextInt(600)), new Act.Choose(Lots.of(random, ClockChoice.values())));
        }
        switch (random.nextInt(8)) {
            case 0 -> into.add(new Act.Jump(minutes(random.nextInt(240) - 120)));
            case 1 -> into.add(new Act.Jump(seconds(random.nextInt(20) - 10)));
            case 2 -> into.add(new Act.Sleep(minutes(random.nextInt(30))));
            case 3 -> {
                Duration there = minutes(random.nextInt(240) - 60);
                into.add(new Act.Jump(there));
                later(seconds(random.nextInt(300)), new Act.Jump(there.negated()));
            }
            default -> {
                into.add(new Act.Restart());
                if (random.nextBoolean()) {
                    into.add(new Act.Look());
                }
            }
        }
        return Optional.of(minutes(2 + random.nextInt(60)));
    }
}
