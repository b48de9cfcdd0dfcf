package benchpace.words;

import benchpace.plan.pattern.Remark;

/** Says of a plan that was made from a few answers what it could not do as asked. */
public final class NewPlanWords {
    private NewPlanWords() { }

    /** One or two sentences for whoever answered. */
    public static String of(Remark remark) {
        if (remark instanceof Remark.CollectedLater r) {
            return collected(r);
        } else if (remark instanceof Remark.LongerThanAsked r) {
            return "Even in brief this class takes " + Phrases.count(r.takesMinutes()) + " on paper, and not "
                    + r.askedMinutes() + ".";
        } else if (remark instanceof Remark.MorePlaces r) {
            return "The turns at the pour are what takes long: with " + r.places() + " pouring at once instead of "
                    + r.planned() + " everybody takes their candle home in time.";
        }
        return "This wax is poured at " + Degrees.celsius(((Remark.HotForChildren) remark).pourCelsius())
                + ", which is hot for a table of children. A wax that is poured cooler is kinder.";
    }

    private static String collected(Remark.CollectedLater remark) {
        String needs = remark.readyMinutes() == 0
                ? "This candle does not set in an evening in a room as warm as that"
                : "This candle needs about " + Phrases.count(remark.readyMinutes()) + " to set";
        String has = remark.waitMinutes() == 0 ? "the class ends with the pour"
                : "the class leaves it " + remark.waitMinutes();
        return needs + ", and " + has + ": it stays with you and is collected later.";
    }
}
