package benchpace.prep;

import java.util.List;

/** What the sheet warns of although all of it could be worked out. Facts only; {@code PrepWords} says them. */
public sealed interface Caution {

    /** Poured at or above the flash point: not forbidden, but keep what could light it away. */
    record AtFlashPoint(String candle, String name, double pourCelsius, double flashPointCelsius)
            implements Caution { }

    /** The fill, solid, would not go into the vessel. */
    record OverTheBrim(String candle, String name, double fillGrams, double brimGrams) implements Caution { }

    /** It is on from the sheet's switch-on to the end of the class, which is longer than the plan says. */
    record OnLonger(String appliance, String name, double saidMinutes, double workedOutMinutes) implements Caution { }

    /** A melter that the plan plugs in nowhere: its load is in no circuit's sum. */
    record PluggedInNowhere(String melter, String name) implements Caution { }

    /** Several melters are for one wax, and each line counts all of it. */
    record OneWaxInSeveral(String wax, List<String> names) implements Caution {
        public OneWaxInSeveral {
            names = List.copyOf(names);
        }
    }

    /** The melter is filled again during the class, and pouring stops meanwhile. */
    record PouringStops(String melter, String name, long fills) implements Caution { }
}
