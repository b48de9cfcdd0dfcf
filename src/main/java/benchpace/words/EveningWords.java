package benchpace.words;

import benchpace.plan.Plan;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.prep.evening.Bottleneck;
import benchpace.prep.evening.Chance;
import benchpace.prep.evening.Change;
import benchpace.prep.evening.CureBasis;
import benchpace.prep.evening.Effect;
import benchpace.prep.evening.Quantiles;
import benchpace.prep.evening.StepEnd;
import benchpace.prep.evening.Timetable;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Says what simulated evenings tell of a class before it: how long, how likely in time, and what would help. */
public final class EveningWords {
    private static final double HARDLY = 0.005;

    private EveningWords() { }

    /** "72 in 100, give or take 1"; nothing that was simulated is said to be sure. */
    public static String chance(Chance chance) {
        if (chance.share() < HARDLY) {
            return "less than 1 in 100";
        }
        if (chance.share() > 1 - HARDLY) {
            return "more than 99 in 100";
        }
        return Math.round(100 * chance.share()) + " in 100, give or take " + hundredths(chance.standardError());
    }

    /** Of a standard error; below a whole one "less than 1". */
    private static String hundredths(double error) {
        long whole = Math.round(100 * error);
        return whole < 1 ? "less than 1" : String.valueOf(whole);
    }

    /** "Done within 2 h: 72 in 100, give or take 1." */
    public static String onTime(Timetable timetable) {
        return "Done within " + minutes(timetable.promisedMinutes()) + ": " + chance(timetable.onTime()) + ".";
    }

    /** "Likely done after 1 h 56 min; one evening in ten by 1 h 29 min, nine in ten by 2 h 33 min." */
    public static String done(Timetable timetable) {
        return "Likely done after " + spread(timetable.done()) + ".";
    }

    /** When the last candle may be handled; empty if nothing is poured. */
    public static String lastCandle(Timetable timetable) {
        return timetable.lastCandle().map(q -> "The last candle is likely ready after " + spread(q) + ".").orElse("");
    }

    /** "1 h 56 min; one evening in ten by 1 h 29 min, nine in ten by 2 h 33 min". */
    public static String spread(Quantiles q) {
        return minutes(q.p50()) + "; one evening in ten by " + minutes(q.p10()) + ", nine in ten by "
                + minutes(q.p90());
    }

    /** What it rests on, and what "done" means. */
    public static String basis(Timetable timetable, Plan plan) {
        String cure = switch (timetable.cure()) {
            case COMPUTED -> ", each candle's cure computed from its vessel and wax";
            case PLANNED -> ", the cure by the plan's figure";
            case NONE -> "";
        };
        return String.format(Locale.ROOT, "Counted on %,d made-up evenings at this plan's pace%s. Done means: %s.",
                timetable.evenings(), cure, meaning(timetable, plan));
    }

    private static String meaning(Timetable timetable, Plan plan) {
        List<String> parts = new ArrayList<>(List.of("every seat is through with all steps"));
        if (plan.cure().isPresent()) {
            parts.add("every candle is ready");
        } else if (timetable.cure() != CureBasis.NONE) {
            parts.add("candles may still be setting, as the plan has no cure step");
        }
        return Phrases.and(parts);
    }

    /** "One seat waits about 34 min for its turn (melter tap)."; empty if none waits for a minute. */
    public static String longestWait(StepEnd end, Plan plan) {
        String what = plan.step(end.step()).flatMap(Step::stations).map(s -> s.what()).orElse("");
        return end.longestWait().filter(q -> q.p50() >= 1).map(q -> "One seat waits about " + minutes(q.p50())
                + " for its turn (" + what + ").").orElse("");
    }

    // ---- what would help

    /** "Two seats fewer", "Set the wick before the guests come". */
    public static String change(Change change, Plan plan) {
        if (change instanceof Change.FewerSeats c) {
            return c.fewer() == 2 ? "Two seats fewer" : c.fewer() + " seats fewer";
        } else if (change instanceof Change.MoreHelp) {
            return "One helper more";
        } else if (change instanceof Change.MoreStations c) {
            return "One more at \"" + name(c.step(), plan) + "\" (" + c.then() + " × " + what(c.step(), plan) + ")";
        } else if (change instanceof Change.Led c) {
            return "\"" + name(c.step(), plan) + "\" led instead of free";
        } else if (change instanceof Change.Free c) {
            return "\"" + name(c.step(), plan) + "\" free instead of led";
        } else if (change instanceof Change.Beforehand c) {
            return "\"" + name(c.step(), plan) + "\" done before the guests come";
        } else if (change instanceof Change.OtherCandle c) {
            return "Everyone makes \"" + plan.candle(c.candle()).map(k -> k.name()).orElse(c.candle()) + "\"";
        } else if (change instanceof Change.SmallerVessels c) {
            return "Vessels " + Math.round(100 * (1 - c.fillShare())) + " % smaller";
        } else if (change instanceof Change.CoolerPour c) {
            return "Poured " + Degrees.plain(c.kelvin()) + " °C cooler";
        } else if (change instanceof Change.Longer c) {
            return Math.round(c.minutes()) + " minutes more promised";
        }
        throw new IllegalStateException("a change without words: " + change);
    }

    /** What was assumed of it; empty where it says all itself. */
    public static String assumed(Change change) {
        if (change instanceof Change.FewerSeats) {
            return "The others are as quick as before.";
        } else if (change instanceof Change.MoreHelp c) {
            return "Somebody who is stuck is found by chance after " + Math.round(c.seenThenMinutes())
                    + " minutes on average, not " + Math.round(c.seenMinutes()) + "; steps take as long as before.";
        } else if (change instanceof Change.MoreStations) {
            return "It is as quick as the others.";
        } else if (change instanceof Change.Led) {
            return "It opens once most of the table is through with the step before.";
        } else if (change instanceof Change.Free) {
            return "Whoever is through with the step before goes on; the next led step waits as before.";
        } else if (change instanceof Change.Beforehand) {
            return "The step takes no time in the class, but somebody's time before it.";
        } else if (change instanceof Change.OtherCandle) {
            return "Steps take as long; its own cure is computed.";
        } else if (change instanceof Change.SmallerVessels) {
            return "Same shape, less wax; steps take as long, the cure is computed anew.";
        } else if (change instanceof Change.CoolerPour) {
            return "Ask the wax maker's sheet whether it may be poured so; a wax that would not be all liquid is left "
                    + "as it is.";
        }
        return "";
    }

    /** "saves 9 min, on time 81 in 100, give or take 1"; of what does nothing that it does nothing. */
    public static String effect(Effect effect) {
        return switch (effect.verdict()) {
            case NOTHING -> "changes next to nothing";
            case HELPS, HARMS -> time(effect) + "on time " + chance(effect.onTime());
        };
    }

    private static String time(Effect effect) {
        long minutes = Math.round(effect.savedP50Minutes());
        return minutes > 0 ? "saves " + minutes + " min, " : minutes < 0 ? "costs " + -minutes + " min, " : "";
    }

    // ---- what cannot work

    /**
     * Why a step cannot be done in time, then what would do: "\"Pour\" cannot be done in time: 40 seats, one at a time
     * (melter tap), take 2 h 47 min, and the other steps leave 30 min for it."
     */
    public static List<String> bottleneck(Bottleneck b, Plan plan) {
        String atOnce = b.stations().atOnce() == 1 ? "one" : String.valueOf(b.stations().atOnce());
        List<String> said = new ArrayList<>();
        said.add("\"" + name(b.step(), plan) + "\" cannot be done in time: " + b.seats() + " seats, " + atOnce
                + " at a time (" + b.stations().what() + "), take " + atLeast(b.turns())
                + ", and the other steps leave " + Phrases.length(b.left()) + " for it.");
        List<String> ways = new ArrayList<>();
        b.stationsNeeded().ifPresent(n -> ways.add(n + " at a time"));
        if (b.seatsServed() > 0) {
            ways.add(b.seatsServed() == 1 ? "one seat" : "no more than " + b.seatsServed() + " seats");
        }
        ways.add("a promise of " + atLeast(b.promiseNeeded()) + " or more");
        said.add("What would do: " + String.join(", or ", ways) + ".");
        return said;
    }

    private static String name(StepId step, Plan plan) {
        return plan.step(step).map(Step::name).orElse(step.value());
    }

    private static String what(StepId step, Plan plan) {
        return plan.step(step).flatMap(Step::stations).map(s -> s.what()).orElse("");
    }

    private static String minutes(double minutes) {
        return Phrases.length(Duration.ofMinutes(Math.round(minutes)));
    }

    /** To the next whole minute, so that what is needed is never said too short. */
    private static String atLeast(Duration length) {
        return Phrases.length(length.plusMinutes(1).minusMillis(1));
    }
}
