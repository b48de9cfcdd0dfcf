package benchpace.web.screen.prep;

import benchpace.plan.Candle;
import benchpace.plan.SeatNumber;
import benchpace.web.screen.shell.Counter;
import benchpace.web.screen.shell.Menu;
import benchpace.web.screen.shell.Parts;
import benchpace.web.screen.shell.Shell;
import benchpace.words.Phrases;
import java.util.List;
import java.util.Optional;

/**
 * The prep page of a class or a plan.
 *
 * @param when   "Thursday 4 March, 18:30, 8 places"
 * @param menu   of a class; a plan has none
 * @param form   of a plan: how many make what
 * @param packs  whether something travels in boxes
 */
public record PrepPage(Shell shell, String name, String when, Optional<Menu> menu, Optional<SeatsForm> form,
                       Parts parts, boolean ofClass, List<Way> ways) {

    /** How many seats make what; the first candle is made by whoever makes no other. */
    public record SeatsForm(String address, int seats, int most, List<Choice> others, String first, String answer) { }

    /** A candle beside the first. */
    public record Choice(String id, String name, int seats) { }

    /** Where one goes from here. */
    public record Way(String href, String words, boolean primary) { }

    public static PrepPage of(PrepGiven given, Parts parts) {
        return given.ofClass().map(c -> ofClass(given, c, parts)).orElseGet(() -> ofPlan(given, parts));
    }

    private static PrepPage ofClass(PrepGiven given, PrepGiven.OfClass ofClass, Parts parts) {
        Shell shell = new Shell(given.name() + ", prep", "prep", List.of(), given.id(), Counter.iso(given.now()),
                given.times().zone().getId(), given.viewer().role().token(), given.viewer().initials());
        String of = "/classes/" + given.id() + "/";
        List<Way> ways = given.viewer().instructor()
                ? List.of(new Way(of + "setup", "Set up", false), new Way(of + "instructor", "The table", true))
                : List.of(new Way(of + "helper", "Helper's phone", true));
        return new PrepPage(shell, given.name(), given.times().dayFrom(ofClass.startsAt(), given.now()) + ", "
                + places(given), Optional.of(Menu.of(shell)), Optional.empty(), parts, true, ways);
    }

    private static PrepPage ofPlan(PrepGiven given, Parts parts) {
        Shell shell = new Shell(given.name() + ", prep", "prep", List.of(), "", Counter.iso(given.now()),
                given.times().zone().getId(), given.viewer().role().token(), given.viewer().initials());
        List<Candle> candles = given.occasion().plan().candles();
        boolean starter = given.book().filter(PrepGiven.Book::starter).isPresent();
        SeatsForm form = new SeatsForm("/plans/" + given.id() + "/prep", given.occasion().seats(),
                SeatNumber.MOST, candles.stream().skip(1).map(c -> new Choice(c.id(), c.name(),
                        given.occasion().candles().getOrDefault(c.id(), 0))).toList(),
                candles.isEmpty() ? "" : candles.get(0).name(), given.answer());
        return new PrepPage(shell, given.name(), places(given), Optional.empty(), Optional.of(form), parts, false,
                List.of(new Way("/plans/" + given.id(), starter ? "The plan" : "Edit the plan", false),
                        new Way("/plans", "All plans", false),
                        new Way("/classes/new?plan=" + given.id(), "Set up a class", true)));
    }

    private static String places(PrepGiven given) {
        return Phrases.places(given.occasion().seats());
    }
}
