package benchpace.simulation;

import benchpace.board.view.ClassView;
import benchpace.board.view.ClassView.NowView;
import benchpace.board.view.SeatView;
import benchpace.board.waiting.WaitView;
import benchpace.board.waiting.WaitView.PartView;
import benchpace.board.waiting.WaitView.StripView;
import benchpace.plan.ActivityKind;
import benchpace.plan.StepKind;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Header, rows, counters and ranges of one view tell one story, whatever happened in the class. */
final class Agreement {
    private static final Pattern DONE = Pattern.compile("(\\d+) of (\\d+)(?:<[^>]*>|\\s)*done");
    /** In the night in which clocks are set back it is said which hour is meant. */
    private static final String TIME = "\\d\\d:\\d\\d(?: (?:summer|winter|old|new)(?: time)?)?";
    private static final Pattern RANGE = Pattern.compile("(?<!from )(" + TIME + ")(?: to |\u2013)(" + TIME + ")");
    private static final int CLOCK = "00:00".length();
    private static final int HALF_A_DAY = 12 * 60;

    private final ClassView view;
    private final Instant now;

    private Agreement(ClassView view) {
        this.view = view;
        this.now = view.now();
    }

    /**
     * @param pages   as everybody sees them, by name
     * @param candles what is read of each seat's candle, by screen
     */
    static void check(ClassView view, Map<String, String> pages, Map<Integer, Map<String, String>> candles) {
        Agreement agreement = new Agreement(view);
        agreement.heading();
        agreement.counters(pages);
        agreement.calls();
        pages.forEach(agreement::ranges);
        agreement.candles(candles);
        agreement.home();
        agreement.times();
        agreement.wait(view.waiting());
    }

    private static void unless(boolean holds, String check, Object what) {
        Broken.unless(holds, check, what::toString);
    }

    private Set<Integer> makers() {
        return view.seats().stream().filter(SeatView::counts).map(SeatView::seat).collect(Collectors.toSet());
    }

    // ---- the heading and its rows

    private void heading() {
        NowView now = view.present();
        List<Integer> listed = new ArrayList<>(now.notDone());
        now.earlier().forEach(e -> listed.addAll(e.seats()));
        listed.addAll(now.setting());
        unless(new HashSet<>(listed).size() == listed.size(), "a seat is in one list of the heading only", now);
        unless(makers().containsAll(listed), "the heading lists seats that count, and no others", now);
        unless(now.of() == makers().size(), "the heading counts the seats that make a candle",
                now.of() + " of " + makers());
        boolean taps = now.step().filter(s -> s.kind() != StepKind.TALK && s.kind() != StepKind.CURE).isPresent();
        int sum = now.done() + listed.size();
        unless(taps ? sum == now.of() : sum <= now.of(), "done, not done, earlier and setting are all there are", now);
        now.step().filter(s -> taps).ifPresent(step -> unless(step.finished() == now.done(),
                "the heading and the step count alike", step + " and " + now));
        for (SeatView seat : view.seats()) {
            unless(!now.notDone().contains(seat.seat())
                            || now.step().filter(s -> seat.finished().contains(s.id())).isEmpty(),
                    "who is done with the step is not called as not done", seat);
        }
    }

    private void counters(Map<String, String> pages) {
        Set<String> counts = new TreeSet<>();
        for (String page : List.of("table", "helper", "wall")) {
            Matcher done = DONE.matcher(pages.get(page));
            while (done.find()) {
                counts.add(done.group(1) + " of " + done.group(2));
            }
        }
        unless(counts.size() <= 1, "every screen counts alike", counts);
        ClassView.CureView cure = view.cure();
        long poured = view.seats().stream().filter(SeatView::counts).filter(s -> s.pouredAt().isPresent()).count();
        unless(cure.of() == makers().size() && cure.poured() == poured, "poured candles are counted as they are", cure);
    }

    private void calls() {
        List<Integer> called = view.help().stream().map(ClassView.HelpView::seat).sorted().toList();
        List<Integer> flagged = view.seats().stream().filter(s -> s.flag().isPresent()).map(SeatView::seat).sorted()
                .toList();
        unless(called.equals(flagged), "who is flagged is called for, once", called + " and " + flagged);
        view.seats().forEach(s -> unless(s.flag().filter(f -> !f.step().equals(s.stepName())).isEmpty(),
                "a seat is called for the step that it is at", s));
        view.seats().forEach(s -> unless(s.flag().isEmpty() || s.eased().isEmpty(),
                "a seat is flagged or eased, not both", s));
    }

    // ---- candles and home

    private void candles(Map<Integer, Map<String, String>> candles) {
        candles.forEach((seat, screens) -> {
            Set<String> said = new TreeSet<>();
            screens.forEach((screen, words) -> {
                Matcher range = RANGE.matcher(words);
                if (range.find()) {
                    said.add(range.group().replace("\u2013", " to ").replace(" time", ""));
                }
            });
            unless(said.size() <= 1, "a candle has one range on every screen", seat + " " + screens);
        });
        view.seats().stream().flatMap(s -> s.candle().stream()).forEach(c -> {
            unless(!c.ready().from().isAfter(c.ready().likely()) && !c.ready().likely().isAfter(c.ready().until()),
                    "a candle's range holds its likely moment", c);
            unless(c.settled() || !c.said().from().isAfter(c.ready().from())
                    && !c.said().until().isBefore(c.ready().until()), "what is said covers what was computed", c);
            unless(!c.pouredAt().isAfter(now), "no candle is poured in the future", c);
        });
        view.cure().range().ifPresent(all -> view.seats().stream().filter(SeatView::counts)
                .flatMap(s -> s.candle().stream()).filter(c -> !c.settled()).forEach(c ->
                        unless(all.covers(c.said()), "what is said of all candles covers each", all + " and " + c)));
    }

    /** None reads as if it ran backwards; past midnight it goes on. */
    private void ranges(String page, String html) {
        Matcher range = RANGE.matcher(html);
        while (range.find()) {
            boolean plain = range.group(1).length() == CLOCK && range.group(2).length() == CLOCK;
            int minutes = Math.floorMod(minute(range.group(2)) - minute(range.group(1)), 2 * HALF_A_DAY);
            unless(!plain || minutes < HALF_A_DAY, "no range ends before it begins", page + ": " + range.group());
        }
    }

    private static int minute(String clock) {
        return Integer.parseInt(clock.substring(0, 2)) * 60 + Integer.parseInt(clock.substring(3, CLOCK));
    }

    private void home() {
        unless(!view.home().p10().isAfter(view.home().p50()) && !view.home().p50().isAfter(view.home().p90()),
                "the way home is early, likely, late", view.home());
        view.home().odds().ifPresent(o -> unless(o.kept() >= 0 && o.kept() <= 1 && o.late() >= 0 && o.late() <= 1,
                "odds are odds", o));
    }

    private void times() {
        view.nextChange().ifPresent(next -> unless(next.isAfter(now), "the next change is to come",
                next + " at " + now));
        view.present().since().ifPresent(since -> unless(!since.isAfter(now), "the present step has begun",
                view.present()));
        view.silence().ifPresent(quiet -> unless(!quiet.isNegative(), "a silence lasts some time", quiet));
        view.seats().forEach(s -> s.flag().ifPresent(f -> unless(f.minutesOver() >= 0 && f.priceMinutes() >= 0,
                "what a flag counts is not negative", s)));
        WaitView.Idle idle = view.waiting().idle();
        unless(idle.planned() >= 0 && idle.unplanned() >= 0 && idle.soFar() >= 0, "idle minutes are not negative",
                idle);
    }

    // ---- the wait

    /** A part of somebody's wait, and the place it takes, by the number of a seat. */
    private record Taken(int place, PartView part) { }

    /** Who share a candle wrap it together. */
    private int place(WaitView.ActivityView activity, StripView strip) {
        return activity.kind() == ActivityKind.WRAPPING ? view.seat(strip.seat()).sharesWith().orElse(strip.seat())
                : strip.seat();
    }

    private void wait(WaitView wait) {
        for (StripView strip : wait.strips()) {
            for (int i = 0; i < strip.parts().size(); i++) {
                PartView part = strip.parts().get(i);
                unless(!part.until().isBefore(part.from()), "a part of the wait ends after it begins", strip);
                unless(i == 0 || !part.from().isBefore(strip.parts().get(i - 1).until()),
                        "nobody is in two activities at once", strip);
            }
        }
        for (WaitView.ActivityView activity : wait.activities()) {
            List<Taken> taken = wait.strips().stream().flatMap(s -> s.parts().stream()
                    .filter(p -> p.activity().equals(activity.id()))
                    .map(p -> new Taken(place(activity, s), p))).toList();
            for (Taken one : activity.wholeClass() ? List.<Taken>of() : taken) {
                Instant then = one.part().from();
                long places = taken.stream().filter(t -> !t.part().from().isAfter(then)
                        && t.part().until().isAfter(then)).map(Taken::place).distinct().count();
                unless(places <= activity.places(), "no activity has more seats than places",
                        activity + " at " + then + ": " + taken);
            }
            unless(activity.seats().size() <= activity.places() || activity.wholeClass(),
                    "no more seats join than there are places", activity);
        }
    }
}
