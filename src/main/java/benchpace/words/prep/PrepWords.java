package benchpace.words.prep;

import benchpace.prep.Caution;
import benchpace.prep.Figure;
import benchpace.prep.PrepProblem;
import benchpace.prep.sheet.PrepSheet;
import benchpace.words.Degrees;
import benchpace.words.Phrases;
import benchpace.words.PrepFigures;
import java.util.List;

/** Says what of a prep sheet could not be worked out and why, what must be put right, and what to mind. */
public final class PrepWords {
    /** Stands on every sheet. */
    public static final String FIRST = "Local codes, the makers' documents and licensed practice come before this "
            + "sheet.";
    private static final String NO_LOAD = ": no load can be called allowed without it.";

    private PrepWords() { }

    /** All problems of a sheet, in its order. */
    public static List<String> problems(PrepSheet sheet) {
        return sheet.problems().stream().map(PrepWords::of).toList();
    }

    /** All cautions of a sheet, in its order. */
    public static List<String> cautions(PrepSheet sheet) {
        return sheet.cautions().stream().map(PrepWords::of).toList();
    }

    public static String of(PrepProblem problem) {
        if (problem instanceof PrepProblem.Wanting p) {
            return wanting(p.figure(), p.name());
        } else if (problem instanceof PrepProblem.NoCandle) {
            return "The plan names no candle, so that wax, fragrance and melters cannot be worked out.";
        } else if (problem instanceof PrepProblem.LoadOver p) {
            return LoadWords.over(p);
        } else if (problem instanceof PrepProblem.NoCandleOfWax p) {
            return named(p.name()) + "it is for the wax \"" + p.wax()
                    + "\", and no candle of the plan is made of that; its fills and times are not worked out.";
        } else if (problem instanceof PrepProblem.WaxSaidTwoWays p) {
            return named(p.name()) + "two candles give the wax \"" + p.wax()
                    + "\" different numbers, so that its heat cannot be worked out.";
        } else if (problem instanceof PrepProblem.NotMolten p) {
            return named(p.name()) + "its wax is poured at " + Degrees.celsius(p.pourCelsius())
                    + " and is all molten only at " + Degrees.celsius(p.liquidusCelsius())
                    + ", so that its heat cannot be worked out.";
        } else if (problem instanceof PrepProblem.NotSolid p) {
            return named(p.name()) + "its wax begins to melt at " + Degrees.celsius(p.solidusCelsius())
                    + ", and the room has " + Degrees.celsius(p.roomCelsius())
                    + ", so that its heat cannot be worked out.";
        } else if (problem instanceof PrepProblem.CircuitOver p) {
            return named(p.name()) + "more is plugged in than its rule allows. Ask the venue.";
        } else if (problem instanceof PrepProblem.NoTimetable) {
            return "The timetable and its odds cannot be worked out just now.";
        }
        throw new IllegalArgumentException("no words for " + problem);
    }

    private static String wanting(Figure figure, String name) {
        return switch (figure) {
            case LOAD_CONVENTION -> "What the wax maker's limit is counted on is wanting (the wax alone, or all that "
                    + "is poured)" + NO_LOAD;
            case WAX_MAKER_LIMIT -> "The wax maker's limit for fragrance is wanting (it stands on the wax's data sheet)"
                    + NO_LOAD;
            case CERTIFICATE_LIMIT -> "The limit of the fragrance's certificate for candles is wanting (IFRA "
                    + "category 12, in per cent of all that is poured)" + NO_LOAD;
            case MELTER_CAPACITY -> named(name) + "how much wax it holds is wanting, so that its fills and times are "
                    + "not worked out.";
            case MELTER_WATTS -> named(name) + "its watts are wanting (they stand on its rating plate), so that "
                    + "neither its time nor its load is worked out.";
            case MELTER_EFFICIENCY -> named(name) + "its efficiency is wanting (the share of the heat that reaches "
                    + "the wax), so that its time is not worked out. Time one melt: its grams and minutes give it.";
            case APPLIANCE_WATTS -> named(name) + "its watts are wanting (they stand on its rating plate), so that its "
                    + "circuit is not added up.";
            case APPLIANCE_CIRCUIT -> named(name) + "which circuit it is plugged into is wanting, so that its load "
                    + "is in no sum.";
            case CIRCUIT_VOLTS -> named(name) + "its voltage is wanting, so that its load is not worked out. Ask the "
                    + "venue.";
            case CIRCUIT_AMPS -> named(name) + "the amperes of its breaker or fuse are wanting, so that nobody can say "
                    + "whether its load fits. Ask the venue.";
            case CIRCUIT_RULE -> named(name) + "what it is judged by is wanting (North America, United Kingdom, "
                    + "Continental Europe, or the breaker's amperes alone), so that its load is not worked out.";
        };
    }

    public static String of(Caution caution) {
        if (caution instanceof Caution.AtFlashPoint c) {
            return named(c.name()) + "it is poured at " + Degrees.celsius(c.pourCelsius()) + ", and the fragrance's "
                    + "flash point is " + Degrees.celsius(c.flashPointCelsius())
                    + ". Keep flames, sparks and glowing coils away, and follow the maker's safety sheet.";
        } else if (caution instanceof Caution.OverTheBrim c) {
            return named(c.name()) + PrepFigures.grams(c.fillGrams()) + " would run over the brim: the vessel holds "
                    + PrepFigures.grams(c.brimGrams()) + " of this wax.";
        } else if (caution instanceof Caution.OnLonger c) {
            return named(c.name()) + "by this sheet it is on for " + PrepFigures.minutes(c.workedOutMinutes())
                    + ", and the plan says " + PrepFigures.minutes(c.saidMinutes())
                    + ". Its circuit is judged by what the plan says.";
        } else if (caution instanceof Caution.PluggedInNowhere c) {
            return named(c.name()) + "the plan plugs it in nowhere, so that its load is in no circuit's sum.";
        } else if (caution instanceof Caution.OneWaxInSeveral c) {
            return Phrases.and(c.names()) + " are for the same wax; each line counts all of it.";
        } else if (caution instanceof Caution.PouringStops c) {
            return named(c.name()) + "it is filled " + c.fills() + " times, and pouring stops while cold wax melts.";
        }
        throw new IllegalArgumentException("no words for " + caution);
    }

    private static String named(String name) {
        return Phrases.sentence(name) + ": ";
    }
}
