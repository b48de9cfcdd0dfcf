package benchpace.words.report;

import benchpace.board.view.ClassWhatIf;
import benchpace.plan.Plan;
import benchpace.plan.StepId;
import benchpace.report.whatif.Change;
import benchpace.report.whatif.Saving;
import benchpace.words.EveningWords;
import benchpace.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says what a class would have saved with one thing changed: a likely saving, what it rests on, and never a fact. */
public final class WhatIfWords {
    private static final int LONGEST_NAME = 80;

    private WhatIfWords() { }

    /** What the answers are; beside all of them. */
    public static String basis() {
        return "Worked out, not measured: this class gone through " + ClassWhatIf.WAYS + " times with one thing "
                + "changed and everybody's own times, openings and turns as they were. The minutes are by how much "
                + "earlier the last candle would have been ready; eight times in ten they lie in the range. Another "
                + "class has other guests.";
    }

    /** Why nothing is said; empty if something is. */
    public static String nothing(ClassWhatIf.Standing standing) {
        return switch (standing) {
            case TOLD -> "";
            case TOO_EARLY -> "This can be said once every candle is poured.";
            case MISSING -> "What would have saved time cannot be worked out just now.";
        };
    }

    /** "One helper more"; as it is called before a class. */
    public static String change(Change change, Plan plan) {
        if (change instanceof Change.Earlier c) {
            return "\"" + name(plan, c.step()) + "\" begun " + minutes(c.minutes()) + " earlier";
        }
        return EveningWords.change(before(change, plan), plan);
    }

    /** The same change, of a class to come. */
    private static benchpace.prep.evening.Change before(Change change, Plan plan) {
        if (change instanceof Change.Free c) {
            return new benchpace.prep.evening.Change.Free(id(plan, c.step()));
        } else if (change instanceof Change.Led c) {
            return new benchpace.prep.evening.Change.Led(id(plan, c.step()));
        } else if (change instanceof Change.Beforehand c) {
            return new benchpace.prep.evening.Change.Beforehand(id(plan, c.step()));
        } else if (change instanceof Change.MoreStations c) {
            return new benchpace.prep.evening.Change.MoreStations(id(plan, c.step()), c.then());
        } else if (change instanceof Change.SmallerVessels c) {
            return new benchpace.prep.evening.Change.SmallerVessels(c.fillShare());
        } else if (change instanceof Change.MoreHelp) {
            return new benchpace.prep.evening.Change.MoreHelp(0, 0);
        }
        throw new IllegalStateException("a change without words: " + change);
    }

    /** "would have saved about 9 min, likely 6 to 12 min". */
    public static String saving(Saving saving) {
        return switch (saving.verdict()) {
            case SAVES -> "would have saved about " + range(saving.p10(), saving.p50(), saving.p90());
            case COSTS -> "would have cost about " + range(-saving.p90(), -saving.p50(), -saving.p10());
            case NOTHING -> "would have saved nothing to speak of";
        };
    }

    private static String range(double least, double middle, double most) {
        return Math.round(least) == Math.round(most) ? minutes(middle)
                : minutes(middle) + ", likely " + Math.round(least) + " to " + minutes(most);
    }

    /** What the class shows of it. */
    public static String evidence(Change change, ClassWhatIf whatIf) {
        Plan plan = whatIf.plan();
        if (change instanceof Change.MoreHelp c) {
            return c.flags() == 0 ? "Nobody was flagged." : FlagBackWords.answers(whatIf.report().flags());
        } else if (change instanceof Change.Free c) {
            return Math.round(c.waitedMinutes()) < 1 ? "Hardly anybody waited for it to be opened."
                    : "Half of the seats waited " + minutes(c.waitedMinutes()) + " or more for it to be opened.";
        } else if (change instanceof Change.Led) {
            return "Every seat began it when it was done with the step before.";
        } else if (change instanceof Change.Beforehand c) {
            return "It took a median of " + minutes(c.medianMinutes()) + ", the slowest seat "
                    + minutes(c.mostMinutes()) + ".";
        } else if (change instanceof Change.MoreStations c) {
            String what = plan.steps().get(c.step()).stations().map(s -> s.what()).orElse("");
            return Math.round(c.waitedMinutes()) < 1 ? "Nobody waited for a turn (" + what + ")."
                    : "One seat waited " + minutes(c.waitedMinutes()) + " for its turn (" + what + ").";
        } else if (change instanceof Change.SmallerVessels c) {
            return "The last candle took " + minutes(c.cureMinutes()) + " from its pour.";
        } else if (change instanceof Change.Earlier c) {
            return "No step took longer: a median of " + minutes(c.medianMinutes()) + ".";
        }
        throw new IllegalStateException("a change without words: " + change);
    }

    /** What it takes for granted. */
    public static String assumed(Change change, Plan plan) {
        if (change instanceof Change.MoreHelp) {
            return "Assumes that somebody is at a flagged seat a minute after its flag, and that what held it up is "
                    + "over another minute later. Work itself takes as long.";
        } else if (change instanceof Change.Free) {
            return "Assumes that everybody goes on alone as soon as the step before is done.";
        } else if (change instanceof Change.Led) {
            return "Assumes that you open it as you opened the others here.";
        } else if (change instanceof Change.Beforehand c) {
            return "Assumes that the other steps take as long. For you it is about "
                    + minutes(c.seats() * (double) Math.round(c.medianMinutes())) + " of work before the class, "
                    + c.seats() + " times "
                    + minutes(c.medianMinutes()) + ".";
        } else if (change instanceof Change.MoreStations) {
            return "Assumes that it is as quick as the others, and that steps take as long.";
        } else if (change instanceof Change.SmallerVessels) {
            return "Same shape, less wax; steps take as long, the cure is computed anew. Assumes that candles are "
                    + "tried as much sooner as they are ready.";
        } else if (change instanceof Change.Earlier c) {
            List<String> ways = ways(c, plan);
            return ways.isEmpty() ? "Assumes that steps take as long." : "Assumes " + Phrases.and(ways) + ".";
        }
        throw new IllegalStateException("a change without words: " + change);
    }

    /** Less than half a minute is not worth a word. */
    private static List<String> ways(Change.Earlier change, Plan plan) {
        List<String> ways = new ArrayList<>();
        change.talks().forEach((k, m) -> said(m, "that \"" + name(plan, k) + "\" is ", " shorter")
                .ifPresent(ways::add));
        change.openings().forEach((k, m) -> said(m, "that \"" + name(plan, k) + "\" is opened ", " sooner")
                .ifPresent(ways::add));
        return ways;
    }

    private static Optional<String> said(double minutes, String before, String after) {
        return Math.round(minutes) == 0 ? Optional.empty() : Optional.of(before + minutes(minutes) + after);
    }

    /** What to do about a change that no plan can hold. */
    public static String advice(Change change) {
        return change instanceof Change.MoreHelp ? "No plan holds this: ask one more to help at the next class."
                : "No plan holds this: open it sooner at the next class.";
    }

    /** The name of a plan's copy with the change made, cut to what a name may have. */
    public static String planName(Change change, Plan plan) {
        String ending = ", " + brief(change, plan);
        int room = Math.max(1, LONGEST_NAME - ending.length());
        String stem = plan.name();
        if (stem.length() > room) {
            stem = stem.substring(0, Character.isHighSurrogate(stem.charAt(room - 1)) ? room - 1 : room).strip();
        }
        String name = stem + ending;
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME).strip();
    }

    private static String brief(Change change, Plan plan) {
        if (change instanceof Change.Free c) {
            return name(plan, c.step()) + " free";
        } else if (change instanceof Change.Led c) {
            return name(plan, c.step()) + " led";
        } else if (change instanceof Change.Beforehand c) {
            return name(plan, c.step()) + " beforehand";
        } else if (change instanceof Change.MoreStations c) {
            return c.then() + " at once at " + name(plan, c.step());
        } else if (change instanceof Change.Earlier) {
            return "shorter talk";
        }
        return "smaller vessels";
    }

    private static String name(Plan plan, int step) {
        return plan.steps().get(step).name();
    }

    private static StepId id(Plan plan, int step) {
        return plan.steps().get(step).id();
    }

    private static String minutes(double minutes) {
        return Phrases.count((int) Math.round(minutes));
    }
}
