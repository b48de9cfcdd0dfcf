package benchpace.web.screen;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.view.BareClass;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.files.Json;
import benchpace.files.log.EventJson;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.live.Standing;
import benchpace.live.Wishes;
import benchpace.live.Wishes.Wish;
import benchpace.web.Browsers;
import benchpace.web.screen.shell.KnownJson;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.StreamSupport;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.RandomGenerator;
import net.jqwik.api.sessions.JqwikSession;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * What a page shows of taps that wait in it is what the board makes of them when they arrive: random evenings, cut off
 * from the board at a random moment, judged by both.
 */
@ExtendWith(Browsers.class)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ForeseeingTest {
    private static final int EVENINGS = 600;
    private static final long SEED = 20270304;

    /** One evening as the page has it, and as the board has it once all taps have arrived. */
    private record Cut(ObjectNode page, BareClass before, BareClass after) { }

    /** Taps that say nothing of who stands where are the same to both, and readings may be no numbers at all. */
    private static boolean kept(ClassEvent event, LiveClass known) {
        if (event instanceof ClassEvent.Undone undone) {
            return undone.seq() > 1 && undone.seq() <= known.seq() && !known.isUndone(undone.seq())
                    && plainlyUndone(known, undone.seq());
        }
        if (event instanceof ClassEvent.SeatAdded || event instanceof ClassEvent.SeatTakenAway
                || event instanceof ClassEvent.GuestCorrected) {
            return false; // said on a page that asks the board at once, and never among the taps that wait
        }
        return !(event instanceof ClassEvent.TapRetimed) && !(event instanceof ClassEvent.TapReseated)
                && !(event instanceof ClassEvent.TemperatureRead) && !(event instanceof ClassEvent.RoomRead)
                && !(event instanceof ClassEvent.PourRead);
    }

    /** A finish that ended no pause, or an opening: what else an event changed only its whole history knows. */
    private static boolean plainlyUndone(LiveClass known, long seq) {
        ClassEvent event = known.corrected().get((int) seq - 1).event();
        return event instanceof ClassEvent.StepOpened || event instanceof ClassEvent.StepFinished
                && known.history().stream().noneMatch(r -> r.event() instanceof ClassEvent.SeatPaused);
    }

    private static Cut cut(LiveClass begun, List<Wish> wishes, Random random) {
        int online = random.nextInt(wishes.size() / 3 + 1);
        LiveClass known = begun;
        for (Wish wish : wishes.subList(0, online)) {
            known = Wishes.put(known, wish);
        }
        Instant cut = known.lastRecordedAt();
        ObjectNode page = Json.object();
        BareClass last = BareClass.of(known, cut);
        page.put("steps", KnownJson.steps(last.known()))
                .put("known", KnownJson.known(last.known(), known.seq()));
        ArrayNode taps = page.putArray("taps");
        LiveClass live = known;
        for (Wish wish : wishes.subList(online, wishes.size())) {
            boolean takenBack = random.nextInt(8) == 0; // an undo of what was not sent: neither ever hears of it
            if (takenBack || !kept(wish.event(), known)) {
                continue;
            }
            Instant at = live.lastRecordedAt().plusSeconds(wish.pauseSeconds());
            if (at.isBefore(cut)) {
                at = cut;
            }
            cut = at;
            Wish then = new Wish(wish.event(), (int) Duration.between(live.lastRecordedAt(), at).toSeconds(), 0);
            live = Wishes.put(live, then);
            taps.addObject().set("command", EventJson.fields(wish.event())
                    .put("type", EventJson.type(wish.event())).put("at", at.toString()));
        }
        page.put("now", cut.toEpochMilli());
        return new Cut(page, last, BareClass.of(live, cut));
    }

    private static List<Cut> cuts() {
        Random random = new Random(SEED);
        List<Cut> cuts = new ArrayList<>();
        JqwikSession.run(() -> {
            Arbitrary<Wishes.Evening> evenings = Wishes.evenings();
            RandomGenerator<Wishes.Evening> generator = evenings.generator(EVENINGS, false);
            for (int i = 0; i < EVENINGS; i++) {
                Wishes.Evening evening = generator.next(random).value();
                cuts.add(cut(evening.begun(), evening.wishes(), random));
            }
        });
        return cuts;
    }

    /** All in one breath: a call into the browser costs more than an evening. */
    private static JsonNode foreseen(Browser browser, List<Cut> cuts) throws Exception {
        OfflineScreens offline = new OfflineScreens();
        offline.page("/", "<!doctype html><title>Nothing</title>");
        try (BrowserContext context = browser.newContext()) {
            context.route("**", offline::answer);
            Page page = context.newPage();
            page.navigate(OfflineScreens.HOST + "/");
            ArrayNode all = Json.mapper().createArrayNode();
            cuts.forEach(c -> all.add(c.page()));
            Object answer = page.evaluate("""
                    async ([traits, text]) => {
                      const { foresee } = await import('/static/js/offline/foresee.js');
                      return JSON.stringify(JSON.parse(text).map((c) =>
                        foresee(JSON.parse(c.steps), JSON.parse(traits), JSON.parse(c.known), c.taps, c.now)));
                    }""", List.of(KnownJson.traits(), Json.text(all)));
            return Json.read((String) answer);
        }
    }

    @Test void the_page_foresees_what_the_board_makes_of_the_taps_that_wait(Browser browser) throws Exception {
        List<Cut> cuts = cuts();
        JsonNode all = foreseen(browser, cuts);

        List<String> apart = new ArrayList<>();
        Map<String, Integer> phases = new HashMap<>();
        for (int i = 0; i < cuts.size(); i++) {
            Cut cut = cuts.get(i);
            JsonNode shown = all.get(i);
            List<String> page = said(shown);
            List<String> board = said(cut);
            if (cut.page().get("taps").findValuesAsText("type").contains("undo")) {
                page.removeIf(ForeseeingTest::ofTheHeading); // how far a class had come before an event, only its log
                board.removeIf(ForeseeingTest::ofTheHeading); // knows
            }
            if (!page.equals(board)) {
                apart.add("evening " + i + " " + cut.page() + "\npage:  " + without(page, board) + "\nboard: "
                        + without(board, page));
            }
            cut.after().live().seats().forEach(seat -> phases.merge(
                    cut.after().live().progress().standing(seat).phase().name(), 1, Integer::sum));
        }
        assertThat(apart.size()).as(() -> String.join("\n", apart.subList(0, Math.min(3, apart.size())))).isZero();
        assertThat(phases.keySet()).contains("EXPECTED", "LEFT", "SHARING", "PAUSED", "LISTENING", "WORKING", "WAITING",
                "CURING", "DONE");
        assertThat(cuts.stream().filter(c -> c.after().live().seq() > c.before().live().seq() + 5).count())
                .as("evenings with more than five taps let stand after the cut").isGreaterThan(EVENINGS / 6);
    }

    private static boolean ofTheHeading(String line) {
        return line.startsWith("at ") || line.startsWith("not done ");
    }

    private static List<String> without(List<String> some, List<String> others) {
        return some.stream().filter(line -> !others.contains(line)).toList();
    }

    /** The page's words, in lines that can be compared. */
    private static List<String> said(JsonNode shown) {
        List<String> lines = new ArrayList<>();
        lines.add("closed " + shown.get("closed").asBoolean() + ", opened " + shown.get("opened").asText() + ", next "
                + shown.get("next").asText());
        lines.add("at " + shown.get("at").asText());
        for (JsonNode seat : shown.get("seats")) {
            lines.add(seat.get("seat") + " " + seat.get("name").asText() + " " + seat.get("phase").asText() + " at "
                    + seat.get("step").asText() + (seat.get("canFinish").asBoolean() ? ", may finish" : "")
                    + ", done " + texts(seat.get("finished")) + (seat.get("poured").asBoolean() ? ", poured" : "")
                    + (seat.get("judged").asBoolean() ? ", set" : "") + (seat.get("paused").asBoolean() ? ", away" : "")
                    + ", with " + seat.get("shares") + ", helped by " + seat.get("helper").asText());
        }
        shown.get("behind").forEach(row -> lines.add("leaves " + row.get("seat") + " at " + row.get("step").asText()
                + ", finish " + row.get("finish").asText() + (row.get("paused").asBoolean() ? ", away" : "")
                + (row.get("stays").asBoolean() ? ", stays" : "")));
        lines.add("not done " + texts(shown.get("notDone")) + ", done " + shown.get("done") + " of " + shown.get("of"));
        return lines;
    }

    private static List<String> texts(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false).map(JsonNode::asText).toList();
    }

    /** The board's. */
    private static List<String> said(Cut cut) {
        BareClass view = cut.after();
        LiveClass live = view.live();
        List<String> lines = new ArrayList<>();
        lines.add("closed " + live.closedAt().isPresent() + ", opened " + (live.furthestOpened() < 0 ? ""
                : live.plan().steps().get(live.furthestOpened()).id()) + ", next "
                + view.next().map(n -> n.step().id()).orElse(""));
        lines.add("at " + heading(view));
        for (Seat seat : live.seats()) {
            Standing standing = live.progress().standing(seat);
            SeatView shown = view.seats().stream().filter(s -> s.seat() == seat.number().value()).findFirst()
                    .orElseThrow();
            lines.add(seat.number() + " " + seat.name() + " " + standing.phase().name().toLowerCase(Locale.ROOT)
                    + " at " + shown.stepId() + (shown.canFinish() ? ", may finish" : "") + ", done "
                    + shown.finished() + (live.progress().pouredAt(seat).isPresent() ? ", poured" : "")
                    + (seat.judgedSetAt().isPresent() ? ", set" : "")
                    + (seat.pausedSince().isPresent() ? ", away" : "") + ", with "
                    + seat.sharesWith().map(host -> host.value()).orElse(0) + ", helped by "
                    + shown.helper().orElse(""));
        }
        view.next().ifPresent(next -> next.rows().forEach(row -> lines.add("leaves " + row.seat() + " at "
                + row.atStep() + ", finish " + row.finishStep() + (row.paused() ? ", away" : "")
                + (row.answered() ? ", stays" : ""))));
        lines.add("not done " + view.present().notDone().stream().map(String::valueOf).toList() + ", done "
                + view.present().done() + " of " + view.present().of());
        return lines;
    }

    private static String heading(BareClass view) {
        return view.present().step().map(ClassView.StepView::id).orElse("");
    }
}
