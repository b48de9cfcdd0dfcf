package benchpace.simulation;

import benchpace.board.ClassBoard;
import benchpace.board.view.ClassView;
import benchpace.files.BadFile;
import benchpace.files.Json;
import benchpace.files.log.EventJson;
import benchpace.files.log.RecordedClass;
import benchpace.web.NetworkedBoard;
import benchpace.web.StateText;
import benchpace.web.screen.EveryScreen;
import benchpace.words.MissingWords;
import java.io.IOException;
import java.io.StringReader;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What every screen and answer of a class must hold to at any instant. */
final class Screenful {
    /** What a machine says when nobody said what to say. */
    private static final Pattern MACHINE = Pattern.compile("\\bNaN\\b|Infinity|\\bOptional[\\[.]|\\bPT-?\\d|\\b1970-|"
            + "-\\d+ (min|h|s)\\b|\\bbenchpace\\.[a-z]+\\.[A-Za-z]|"
            + "[A-Za-z]@(?=[0-9]*[a-f])[0-9a-f]{5,8}\\b|[+-]\\d{5,}-\\d\\d-\\d\\d");
    /** Absent facts in JSON that a page carries are no words. */
    private static final Pattern NULL = Pattern.compile("(?<!&#34;:)\\bnull\\b");
    /** What stands in the place of what could not be made. */
    private static final Pattern INSTEAD = Pattern.compile("cannot be (shown|computed) just now|\"known\"[^>]*></");
    private static final int AROUND = 60;

    private Screenful() { }

    static void check(ClassBoard board, ClassView view) {
        Broken.unless(view.missing().models().isEmpty(), "every model can be computed",
                () -> MissingWords.fact(view.missing()));
        Map<String, String> pages;
        Map<Integer, Map<String, String>> candles;
        String state;
        StringBuilder events = new StringBuilder();
        try {
            pages = EveryScreen.of(board, view);
            candles = EveryScreen.candles(view);
            state = StateText.of(view, EveryScreen.LEAD);
            board.eventsAfter(0).forEach(r -> events.append(Json.text(EventJson.line(r))).append('\n'));
        } catch (RuntimeException | StackOverflowError e) {
            throw new Broken("every page is drawn", e);
        }
        pages.forEach((name, html) -> {
            words(name, html);
            none(NULL, name, html);
            none(INSTEAD, name, html);
        });
        Agreement.check(view, pages, candles);
        words("the state", state);
        words("the events", events.toString());
        readBack(events.toString());
    }

    /** What programs are given of a class is the file of a recorded class. */
    private static void readBack(String events) {
        try {
            String again = RecordedClass.write(RecordedClass.read("the events", new StringReader(events)));
            Broken.unless(again.equals(events), "the events are read back", () -> again);
        } catch (IOException | BadFile e) {
            throw new Broken("the events are read back", e);
        }
    }

    /** @param addresses as a real server answers at them; some show nothing of this class, and say so */
    static void check(Map<String, NetworkedBoard.Told> addresses) {
        addresses.forEach((address, told) -> {
            Broken.unless(told.status() < 500, "every address answers", () -> address + ": " + told);
            if (!address.endsWith(".ics")) { // its durations are written for machines (RFC 5545)
                none(INSTEAD, address, told.body());
                words(address, told.body());
            }
        });
    }

    private static void words(String name, String text) {
        none(MACHINE, name, text);
    }

    private static void none(Pattern what, String name, String text) {
        Matcher found = what.matcher(text);
        if (found.find()) {
            throw new Broken("no screen speaks like a machine", name + ": " + text.substring(
                    Math.max(0, found.start() - AROUND), Math.min(text.length(), found.end() + AROUND)));
        }
    }
}
