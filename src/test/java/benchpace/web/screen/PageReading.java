package benchpace.web.screen;

import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads the pages of one class for what they say of its candles, its wait, its end and its steps. */
final class PageReading {
    private static final String TIME = Telling.TIME;
    private static final String SEATS = Telling.SEATS;
    private static final Pattern CARD = Pattern.compile("(?s)<li class=\"activity .*?</li>");
    private static final Pattern FLAG = Pattern.compile("(?s)<article class=\"flag .*?</article>");
    private static final Pattern SHEET = Pattern.compile("sheet (\\d+) .*");

    private final ClassView view;
    private final Telling telling;
    private final TreeSet<Integer> waitedFor;
    private final TreeSet<Integer> setting;

    private PageReading(ClassView view) {
        this.view = view;
        this.telling = new Telling(view);
        this.waitedFor = seats(view, false);
        this.setting = seats(view, true);
    }

    private static TreeSet<Integer> seats(ClassView view, boolean setting) {
        return view.seats().stream().filter(s -> s.counts() && s.candle().filter(c -> !c.settled()
                && (!setting || c.stillSets(view.now()))).isPresent()).map(SeatView::seat)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** What all these pages say, the state as JSON, and what is said beside them. */
    static Telling of(ClassView view, Map<String, String> pages) {
        PageReading reading = new PageReading(view);
        pages.forEach(reading::read);
        EveryScreen.candles(view).forEach(reading::candle);
        new StateReading(view, reading.telling).read();
        new AsideReading(view, reading.telling).read();
        return reading.telling;
    }

    private void read(String page, String html) {
        Map<String, String> called = new TreeMap<>();
        for (String words : Telling.pieces(html)) {
            allCandles(page, words);
            stillSetting(page, words);
            calls(page, words, called);
            steps(page, words);
            cutOpen(page, words);
        }
        if (view.cure().allPoured()) { // before that only what hangs on no candle still to be poured is called
            called.forEach((name, clock) -> telling.tell("next time of " + name, clock, page));
        }
        if (!page.startsWith("sheet") && !page.startsWith("phone")) {
            for (String words : telling.aloud(html)) {
                telling.each("[cC]an be tried in ((?:\\d+ h ?)?(?:\\d+ min)?)", words, m -> telling.tell(
                        "minutes until the first candle can be tried", Telling.minutes(m.group(1).strip()), page));
            }
        }
        cards(page, html);
        strips(page, html);
        sheet(page, html);
        late(page, html);
        home(page, html);
    }

    // ---- candles

    private void allCandles(String page, String words) {
        if (page.startsWith("sheet") || page.startsWith("phone") || words.contains("still setting")) {
            return;
        }
        telling.each("\\bReady about " + TIME + " to " + TIME, words, m -> all(m.group(1), m.group(2), page));
        telling.each("in the band from " + TIME + " to " + TIME, words, m -> all(m.group(1), m.group(2), page));
        telling.each("\\bFirst (?:candles ready )?from about " + TIME, words, m -> first(m.group(1), page));
        telling.each("all by about " + TIME, words, m -> telling.tell("all candles are ready by", m.group(1), page));
    }

    private void all(String from, String until, String page) {
        first(from, page);
        if (view.cure().allPoured()) {
            telling.tell("all candles are ready by", until, page);
        }
    }

    private void first(String clock, String page) {
        telling.tell("the first candle can be tried at", clock, page);
        if (telling.minutesTo(clock) > 0) {
            telling.tell("minutes until the first candle can be tried", telling.minutesTo(clock), page);
        }
    }

    /** Where every candle waited for is still setting, what is said of those that set is said of all. */
    private void stillSetting(String page, String words) {
        telling.each(SEATS + " (?:is|are) still setting, (?:ready about " + TIME + " to " + TIME
                + "|first from about " + TIME + "(?:, all by about " + TIME + ")?)", words, m -> stillSetting(m, page));
    }

    private void stillSetting(Matcher sentence, String page) {
        howMany(Telling.seats(sentence.group(1)), sentence.group(1), page);
        String from = sentence.group(2) != null ? sentence.group(2) : sentence.group(4);
        String until = sentence.group(2) != null ? sentence.group(3) : sentence.group(5);
        telling.tell("candles still setting can be tried from", from, page);
        if (setting.equals(waitedFor)) {
            first(from, page);
        }
        if (until != null && view.cure().allPoured()) {
            telling.tell("candles still setting are ready by", until, page);
            if (setting.equals(waitedFor)) {
                telling.tell("all candles are ready by", until, page);
            }
        }
    }

    private void howMany(TreeSet<Integer> seats, String words, String page) {
        telling.tell("how many candles are still setting",
                seats.isEmpty() ? words.replace(" seats", "") : seats.size(), page);
    }

    private void candle(int seat, Map<String, String> screens) {
        boolean waits = waitedFor.contains(seat);
        screens.forEach((screen, words) -> telling.each(TIME + "(?: to |\u2013)" + TIME, words, m -> {
            telling.tell("seat " + seat + " is ready", m.group(1) + " to " + m.group(2), screen);
            if (waits && waitedFor.size() == 1) {
                telling.tell("the first candle can be tried at", m.group(1), screen);
            }
        }));
    }

    private void cutOpen(String page, String words) {
        String cut = page.startsWith("sheet") ? page.replaceAll("\\D", "") + " on its sheet" : "on the wall";
        telling.each("about (\\d+) % (?:set|of the wax is set)", words, m -> telling.tell(
                "per cent set of the candle " + cut, m.group(1), page));
    }

    // ---- the wait

    /** Without a script a clock time stands for the minutes. @param called when each is called for the first time */
    private void calls(String page, String words, Map<String, String> called) {
        for (var activity : view.waiting().activities()) {
            String name = Pattern.quote(activity.name());
            telling.each("^" + name + " (?:at )?" + TIME + "\\b(?! to| is off)", words,
                    m -> called.merge(activity.name(), m.group(1), PageReading::earlier));
            telling.each("^" + name + " until " + TIME, words, m -> {
                if (!page.startsWith("sheet")) {
                    telling.tell(activity.name() + " goes on until", m.group(1), page);
                }
            });
            telling.each("^" + name + " from about " + TIME, words, m -> telling.tell(
                    activity.name() + " begins about", m.group(1), page));
        }
    }

    private void cards(String page, String html) {
        Matcher card = CARD.matcher(html);
        while (card.find()) {
            String name = Telling.plain(card.group().replaceAll("(?s).*?<h3>(.*?)</h3>.*", "$1"));
            String words = Telling.plain(card.group());
            telling.each("Next at " + TIME + ": " + SEATS, words, m -> {
                telling.tell("next time of " + name, m.group(1), page);
                seats("next seats of " + name, m.group(2), page);
            });
            telling.each("Now: " + SEATS + ", until (?:about )?" + TIME, words, m -> {
                seats("seats at " + name + " now", m.group(1), page);
                telling.tell(name + " goes on until", m.group(2), page);
            });
            telling.each("From about " + TIME + ", each candle", words,
                    m -> telling.tell(name + " begins about", m.group(1), page));
        }
    }

    /** Of many seats it may be told only how many they are. */
    private void seats(String fact, String words, String page) {
        TreeSet<Integer> seats = Telling.seats(words);
        if (!seats.isEmpty()) {
            telling.tell(fact, seats, page);
        }
    }

    private void strips(String page, String html) {
        Map<String, TreeSet<Integer>> now = new TreeMap<>();
        Map<String, String> last = new TreeMap<>();
        Map<String, TreeMap<String, TreeSet<Integer>>> next = new TreeMap<>();
        Map<String, String> expected = new TreeMap<>();
        telling.each("(?s)<div><dt>Seat (\\d+)</dt><dd>(.*?)</dd></div>", html, strip -> {
            int seat = Integer.parseInt(strip.group(1));
            boolean[] told = {false};
            for (String part : Telling.plain(strip.group(2)).split("; ")) {
                telling.each("^now (.*) " + TIME + " to " + TIME + "$", part, m -> {
                    now.computeIfAbsent(m.group(1), n -> new TreeSet<>()).add(seat);
                    last.merge(m.group(1), m.group(3), PageReading::later);
                    telling.tell("seat " + seat + " is at", m.group(1) + " until " + m.group(3), page);
                });
                telling.each("^(?!now |had |candle )(.*) " + TIME + " to " + TIME + "$", part, m -> {
                    next.computeIfAbsent(m.group(1), n -> new TreeMap<>())
                            .computeIfAbsent(m.group(2), at -> new TreeSet<>()).add(seat);
                    if (!told[0]) {
                        telling.tell("seat " + seat + " goes next to", m.group(1) + " at " + m.group(2), page);
                        told[0] = true;
                    }
                });
                telling.each("^(.*) about " + TIME + ", after the hand test", part,
                        m -> expected.merge(m.group(1), m.group(2), PageReading::earlier));
            }
        });
        now.forEach((name, seats) -> telling.tell("seats at " + name + " now", seats, page));
        last.forEach((name, clock) -> telling.tell(name + " goes on until", clock, page));
        next.forEach((name, waves) -> {
            telling.tell("next time of " + name, waves.firstKey(), page);
            telling.tell("next seats of " + name, waves.firstEntry().getValue(), page);
        });
        expected.forEach((name, clock) -> telling.tell(name + " begins about", clock, page));
    }

    private static String later(String a, String b) {
        return Telling.instant(a).isAfter(Telling.instant(b)) ? a : b;
    }

    static String earlier(String a, String b) {
        return Telling.instant(a).isBefore(Telling.instant(b)) ? a : b;
    }

    private void sheet(String page, String html) {
        Matcher of = SHEET.matcher(page);
        if (!of.matches()) {
            return;
        }
        for (String words : Telling.pieces(html)) {
            telling.each("^(?!Candle |The )([^.]*?) until " + TIME + "\\.", words, m -> telling.tell(
                    "seat " + of.group(1) + " is at", m.group(1) + " until " + m.group(2), page));
            telling.each("^(?:Skin )?about " + TIME + " to " + TIME + "$", words, m -> telling.tell(
                    "seat " + of.group(1) + " has a skin", m.group(1) + " to " + m.group(2), page));
            telling.each("Next (.*) at " + TIME + "\\.", words, m -> telling.tell(
                    "seat " + of.group(1) + " goes next to", m.group(1) + " at " + m.group(2), page));
        }
    }

    // ---- the class

    private void home(String page, String html) {
        telling.each("(?s)<p class=\"home[^>]*>(.*?)</p>", html, m -> telling.tell("everyone goes home",
                Telling.plain(m.group(1)).replace("Home ", "").replace(",", ""), page));
    }

    private void steps(String page, String words) {
        int of = view.present().of();
        if (view.present().step().isPresent()) {
            telling.each("^(\\d+) of (\\d+) done\\b", words, m -> telling.tell("done with the step of the heading",
                    m.group(1) + " of " + m.group(2), page));
            if (page.equals("wall")) {
                telling.each("^Everybody is done$", words, m -> telling.tell("done with the step of the heading",
                        of + " of " + of, page));
            }
        }
    }

    private void late(String page, String html) {
        Matcher flag = FLAG.matcher(html);
        TreeSet<Integer> seats = new TreeSet<>();
        while (flag.find()) {
            String words = Telling.plain(flag.group());
            telling.each("Seat (\\d+):", words, m -> {
                seats.add(Integer.parseInt(m.group(1)));
                telling.tell("why seat " + m.group(1) + " needs somebody", words.replaceAll(
                        "(?s).*?(Seat \\d+: .*?(?:\\?|needs\\.)).*", "$1"), page);
            });
        }
        telling.each("Seat (\\d+) needs somebody", html, m -> seats.add(Integer.parseInt(m.group(1))));
        if (page.equals("table") || page.equals("helper")) {
            telling.tell("who needs somebody", seats, page);
        }
    }
}
