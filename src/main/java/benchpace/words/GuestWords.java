package benchpace.words;

import java.util.List;

/** Says what became of a list of guests at a table. */
public final class GuestWords {
    private static final int NAMED = 6;

    private GuestWords() { }

    /** "3 do not fit: Ada, Bo and Zo. Add seats, or leave them out."; empty if all do. */
    public static String left(List<String> names, int seats) {
        if (names.isEmpty()) {
            return "";
        }
        List<String> shown = names.stream().map(name -> name.isEmpty() ? "somebody without a name" : name).toList();
        return names.size() + (names.size() == 1 ? " does" : " do") + " not fit, as there "
                + (seats == 1 ? "is 1 seat" : "are " + seats + " seats") + ": " + listed(shown)
                + ". Add seats, or leave them out.";
    }

    /** "At these tables choir cannot sit together."; empty if nobody is split. */
    public static String split(List<String> parties) {
        return parties.isEmpty() ? "" : "At these tables " + listed(parties) + " cannot sit together: a run of free "
                + "seats long enough is wanting.";
    }

    private static String listed(List<String> all) {
        if (all.size() > NAMED) {
            return String.join(", ", all.subList(0, NAMED - 1)) + " and " + (all.size() - NAMED + 1) + " more";
        }
        return all.size() == 1 ? all.get(0)
                : String.join(", ", all.subList(0, all.size() - 1)) + " and " + all.get(all.size() - 1);
    }

    /** What is promised if nothing else is said. */
    public static String promise(long minutes) {
        return "Left empty: " + minutes + " minutes after the beginning, as the plan says.";
    }
}
