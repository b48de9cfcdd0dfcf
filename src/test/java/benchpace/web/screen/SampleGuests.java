package benchpace.web.screen;

import benchpace.board.view.NamesDue;
import benchpace.board.view.NamesDue.Outlook;
import benchpace.board.view.NamesKept;
import benchpace.web.screen.data.GuestsCard;
import benchpace.web.screen.data.UnreadableCard;
import benchpace.web.screen.report.GuestsPart;
import benchpace.words.ForgettingWords;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** What pages say of guests' names, without a board. */
public final class SampleGuests {
    private static final Instant NOW = Instant.parse("2027-03-05T09:00:00Z");
    private static final Times TIMES = new Times(ZoneId.of("Europe/Berlin"));

    private SampleGuests() { }

    public static GuestsPart known() {
        return new GuestsPart("evening-x1", ForgettingWords.known(true,
                Optional.of(NOW.plus(Duration.ofDays(30))), TIMES), true, ForgettingWords.goes(),
                ForgettingWords.stays(2, Duration.ofDays(7)));
    }

    public static GuestsPart forgotten() {
        return new GuestsPart("evening-x1", ForgettingWords.forgotten(NOW, true, TIMES), false, List.of(), List.of());
    }

    public static GuestsCard off() {
        return new GuestsCard(ForgettingWords.rule(OptionalInt.empty()),
                ForgettingWords.outlook(Optional.empty(), 0, TIMES), 30, false, List.of(), 0, ForgettingWords.inShort(),
                List.of());
    }

    public static UnreadableCard unreadable() {
        return UnreadableCard.of(List.of(
                new NamesKept("evening-pour-x1k7", Optional.of(NOW), Optional.of(NOW), true),
                new NamesKept("table-of-six-b2m9", Optional.of(NOW), Optional.of(NOW), false)),
                OptionalInt.of(30), TIMES);
    }

    static UnreadableCard allReadable() {
        return UnreadableCard.of(List.of(), OptionalInt.empty(), TIMES);
    }

    public static GuestsCard on() {
        List<NamesDue> later = List.of(new NamesDue("a", "Thursday evening", NOW.plus(Duration.ofDays(2))),
                new NamesDue("b", "Candles for two", NOW.plus(Duration.ofDays(9))));
        Outlook outlook = new Outlook(List.of(new NamesDue("c", "Spring class", NOW)), later);
        List<GuestsCard.Row> rows = Stream.concat(outlook.now().stream(), later.stream())
                .map(due -> new GuestsCard.Row(due.classId(), due.name(), ForgettingWords.when(due, NOW, TIMES)))
                .toList();
        return new GuestsCard(ForgettingWords.rule(OptionalInt.of(30)),
                ForgettingWords.outlook(Optional.of(outlook), 41, TIMES), 30, true, rows, 7, ForgettingWords.inShort(),
                List.of(ForgettingWords.toSweep(), ForgettingWords.kept(List.of("kept-1", "kept-2"))));
    }
}
