package benchpace.web.screen;

import benchpace.board.view.ClassView;
import benchpace.live.ClassEvent;
import benchpace.plan.SeatNumber;
import benchpace.plan.Stations;
import benchpace.plan.StepId;
import benchpace.plan.TableShape;
import benchpace.plan.TestPlans;
import java.time.Duration;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Situations a screen has to cope with, from an empty room to forty seats and the strangest names. */
public final class Evenings {
    static final List<String> ODD_NAMES = List.of("x\"><script>alert(1)</script>",
            "\u05D0\u05D1\u05D9\u05D2\u05D9\u05DC", "\u202Eevil\u202C", "A\u0301ngel\n\nevent: state",
            "Maximiliane-Charlotte von Unterlangenfeld", "&amp; ${1+1}",
            "'; --", "\uD83D\uDD6F\uFE0F\uD83D\uDD6F\uFE0F");

    private Evenings() { }

    /** Made once, as views never change and the largest cost seconds. */
    private static final class Made {
        static final Map<String, ClassView> ALL = make();
    }

    /** The same of these alone. */
    private static final class Crowds {
        static final Map<String, ClassView> ALL = makeCrowds();
    }

    public static Map<String, ClassView> all() {
        return Collections.unmodifiableMap(Made.ALL);
    }

    private static Map<String, ClassView> make() {
        Map<String, ClassView> all = new LinkedHashMap<>();
        all.put("before", eight().view(-12));
        all.put("talk", eight().open(0, "welcome").view(3));
        all.put("wicks", wicks().view(19.5));
        all.put("asks", asks().view(18));
        all.put("went", went().view(24));
        all.put("sorted-came-back", sorted().view(27.5));
        all.put("several", several().view(21));
        all.put("silent", silent().view(24));
        all.put("pour", pour().view(40));
        all.put("cure", cure().view(70));
        all.put("cure-early", cure().view(47));
        all.put("cure-late", cure().view(88));
        all.put("try-it", cure().event(95, new ClassEvent.JudgedSet(seat(2))).view(101));
        all.put("finish", finish().view(112));
        all.put("closed", finish().done(117, "wrap", 1, 2, 4, 5, 6, 7, 8)
                .event(120, new ClassEvent.ClassClosed()).view(121));
        all.put("odd-names", Evening.of(Evening.plan("evening-pour"), 8, ODD_NAMES).open(0, "welcome")
                .done(9, "vessel", 1, 2, 3).view(16));
        all.put("six", Evening.of("table-of-six", 6).open(0, "hello").done(7, "tin", 1, 2, 3, 4, 5, 6).open(8, "wicks")
                .done(12, "wicks", 1, 3, 6).view(13));
        all.put("turns", turns().view(42));
        all.put("twelve", twelve().view(22));
        all.put("twenty-four", many("big-table", 24, TableShape.ROWS).view(19));
        all.put("twenty-four-long", many("big-table", 24, TableShape.LONG_TABLE).view(19));
        all.put("forty", many("big-table", 40, TableShape.ROWS).view(19));
        all.put("forty-horseshoe", many("big-table", 40, TableShape.HORSESHOE).view(19));
        all.put("cure-24", poured(24).view(62));
        all.put("cure-40", poured(40).view(62));
        all.put("computed", computed().computed(62));
        all.put("computed-early", computed().computed(46));
        all.put("computed-read", read().computed(62));
        all.put("computed-try", read().event(85, new ClassEvent.JudgedSet(seat(4))).computed(125));
        all.put("computed-24", poured(24).computed(50));
        all.put("computed-40", poured(40).computed(50));
        all.putAll(Crowds.ALL);
        all.putAll(apart());
        return all;
    }

    /** A seat that comes late, slow ones, a table that is spread over steps, and a finish that has just been opened. */
    public static Map<String, ClassView> apart() {
        Map<String, ClassView> all = new LinkedHashMap<>();
        all.put("late", late().view(27));
        all.put("slow", slow().view(40));
        all.put("slow-24", slow24().view(41));
        all.put("spread", spread().view(26));
        all.put("trim-opens", trimOpens().view(101));
        all.put("wrapped", trimOpens().done(104, "trim", 1, 2, 3, 4, 5, 6).done(109, "wrap", 1, 2, 3, 4, 5, 6)
                .view(111));
        all.put("says-done", saysDone().view(21));
        return all;
    }

    /** Seat 6 comes when the others blend. */
    static Evening late() {
        return six().event(-5, new ClassEvent.SeatExpected(seat(6))).open(0, "hello")
                .done(6, "tin", 1, 2, 3, 4, 5).open(8, "wicks").done(12, "wicks", 1, 3, 5).done(14, "wicks", 2, 4)
                .open(18, "blend").event(22, new ClassEvent.SeatArrived(seat(6), "Noor")).done(25, "blend", 3, 5);
    }

    /** Seven have poured and centred their wicks, and seat 4 is still at the fragrance. */
    static Evening slow() {
        int[] others = {1, 2, 3, 5, 6, 7, 8};
        return eight().open(0, "welcome").done(8, "vessel", Evening.seats(1, 8)).open(9, "wicks")
                .done(13, "wicks", Evening.seats(1, 8)).open(16, "fragrance").done(20, "fragrance", others)
                .open(24, "before-wax").open(26, "mix").done(29, "mix", others).open(31, "pour")
                .done(34, "pour", others).done(36.5, "centre", others);
    }

    private static Evening slow24() {
        int[] most = Evening.seats(1, 20);
        return Evening.of(Evening.plan("big-table", TableShape.ROWS), 24, List.of("Ada", "Bruno", "", "Dag"))
                .open(0, "welcome").open(5, "vessel").done(7, "vessel", Evening.seats(1, 24)).open(10, "wicks")
                .done(15, "wicks", Evening.seats(1, 24)).open(20, "fragrance").done(25, "fragrance", most)
                .open(28, "mix").done(31, "mix", most).open(34, "pour").done(37, "pour", Evening.seats(1, 9));
    }

    /** Three are done with the blend, and one of them with the weighing, which is free, too. */
    static Evening spread() {
        return six().open(0, "hello").done(6, "tin", 1, 2, 3, 4, 5, 6).open(8, "wicks")
                .done(12, "wicks", 1, 2, 3, 4, 5, 6).open(15, "blend").done(20, "blend", 1, 3, 5).done(23, "weigh", 5);
    }

    /** The last step that is opened for everyone has just been. */
    public static Evening trimOpens() {
        int[] all = {1, 2, 3, 4, 5, 6};
        Evening evening = six().open(0, "hello").done(6, "tin", all).open(8, "wicks").done(12, "wicks", all)
                .open(15, "blend").done(20, "blend", all).done(23, "weigh", all).open(25, "mix").done(28, "mix", all)
                .open(31, "pour").done(34, "pour", all);
        for (int seat : all) {
            evening.event(96 + seat * 0.3, new ClassEvent.JudgedSet(seat(seat)));
        }
        return evening.open(100, "trim");
    }

    /** Seat 4 is flagged, and its guests say by phone that they are done. */
    static Evening saysDone() {
        return eight().event(-2, new ClassEvent.GuestsMayTell(true)).open(0, "welcome")
                .done(8, "vessel", 1, 2, 4, 5, 6, 7, 8, 3).open(9, "wicks").done(12, "wicks", 1, 2, 6, 3, 5, 7, 8)
                .event(20.5, new ClassEvent.DoneHinted(seat(4), new StepId("wicks")));
    }

    private static Evening six() {
        return Evening.of("table-of-six", 6);
    }

    /** Tables of every size with seats that are flagged, and the same in the wait: every kind of tile there is. */
    public static Map<String, ClassView> crowds() {
        return Collections.unmodifiableMap(Crowds.ALL);
    }

    private static Map<String, ClassView> makeCrowds() {
        Map<String, ClassView> all = new LinkedHashMap<>();
        for (int seats : new int[] {8, 12, 16, 20, 24, 40}) {
            all.put("flagged-" + seats, flagged(seats).view(27));
            all.put("sorted-" + seats, flagged(seats).event(25.5, new ClassEvent.HelpClaimed(seat(2), "MO"))
                    .event(26.5, new ClassEvent.HelpSorted(seat(2), "MO")).view(27));
            all.put("leisure-" + seats, poured(seats).event(35.5, new ClassEvent.SeatPaused(seat(4)))
                    .event(36, new ClassEvent.HelpClaimed(seat(5), "MO")).computed(50));
        }
        all.put("sorted", sorted().view(24));
        return all;
    }

    /** Seats 2, 5 and 7 do not get on, somebody is with seat 5, and seats 6 and 8 are missing in their own ways. */
    private static Evening flagged(int seats) {
        int[] others = IntStream.rangeClosed(1, seats).filter(n -> n != 2 && n != 5 && n != 7)
                .toArray();
        return Evening.of(Evening.plan("big-table", TableShape.ROWS), seats,
                        List.of("Mara", "Wilhelmina", "", "Jonas", "Maximiliane", "Theo", ""))
                .event(-2, new ClassEvent.SeatPaired(seat(3), seat(4)))
                .open(0, "welcome").open(6, "vessel").done(8, "vessel", Evening.seats(1, seats)).open(10, "wicks")
                .done(14, "wicks", others).event(17, new ClassEvent.SeatExpected(seat(6)))
                .event(18, new ClassEvent.SeatPaused(seat(8))).open(20, "fragrance")
                .done(25, "fragrance", Arrays.copyOf(others, others.length / 2))
                .event(26, new ClassEvent.HelpClaimed(seat(5), "MO"));
    }

    /** No step is left to open, and some of the table is not done. */
    public static Map<String, ClassView> closing() {
        Map<String, ClassView> all = new LinkedHashMap<>();
        all.put("done", finish().done(114, "trim", 5, 6).done(115, "pour", 8)
                .event(116, new ClassEvent.SeatLeft(seat(8))).done(117, "wrap", 1, 2, 4, 5, 6)
                .open(118, "farewell").view(119));
        all.put("wrapping", finish().done(115, "wrap", 1, 2).open(116, "farewell").view(118));
        all.put("setting", pour().event(41.5, new ClassEvent.SeatArrived(seat(8), "Hale"))
                .done(43, "pour", 4).open(50, "trim").open(52, "farewell").view(53));
        return all;
    }

    /** Eight candles of two kinds, the room and the pour measured. */
    public static Evening computed() {
        return cure().event(36, new ClassEvent.PourRead(61)).event(41, new ClassEvent.RoomRead(20.5))
                .event(42, new ClassEvent.CandleChosen(seat(6), "tin-paraffin"));
    }

    /** The same with a thermometer held to one of them. */
    public static Evening read() {
        return computed().event(54, new ClassEvent.TemperatureRead(seat(5), 43));
    }

    public static SeatNumber seat(int number) {
        return new SeatNumber(number);
    }

    private static Evening eight() {
        return Evening.of("evening-pour", 8);
    }

    public static Evening wicks() {
        return eight().open(0, "welcome").done(8, "vessel", 1, 2, 4, 5, 6, 7, 8, 3).open(9, "wicks")
                .done(12, "wicks", 1, 2, 6).event(12.5, new ClassEvent.SeatPaused(seat(8)))
                .done(14, "wicks", 3, 5)
                .event(15, new ClassEvent.SeatNoted(seat(4), "Left-handed, wants the bar turned"))
                .event(17, new ClassEvent.HelpClaimed(seat(4), "MO"));
    }

    /** Seat 4 and seat 7 make one wonder; seat 5 says by phone that it is done. */
    static Evening asks() {
        return eight().event(-2, new ClassEvent.GuestsMayTell(true)).open(0, "welcome")
                .done(8, "vessel", 1, 2, 4, 5, 6, 7, 8, 3).open(9, "wicks").done(12, "wicks", 1, 2, 6)
                .done(13, "wicks", 3, 8)
                .event(15, new ClassEvent.DoneHinted(seat(5), new StepId("wicks")));
    }

    /** Somebody went to seat 4 and has not been heard of since. */
    public static Evening went() {
        return eight().open(0, "welcome").done(8, "vessel", 1, 2, 4, 5, 6, 7, 8, 3).open(9, "wicks")
                .done(12, "wicks", 1, 2, 6, 5, 3, 7, 8).event(17, new ClassEvent.HelpClaimed(seat(4), "MK"));
    }

    /** Somebody went to seat 4 and said that it was sorted, yet it sits where it sat. */
    static Evening sorted() {
        return went().event(22, new ClassEvent.HelpSorted(seat(4), "MK"));
    }

    /** Half the table is stuck and the other half ticked at once. */
    public static Evening several() {
        Evening evening = eight().open(0, "welcome").done(8, "vessel", 1, 2, 4, 5, 6, 7, 8, 3).open(9, "wicks")
                .done(12, "wicks", 1, 2, 6, 8);
        for (int seat : new int[] {3, 4, 5, 7}) {
            evening.event(13, new ClassEvent.StillWorking(seat(seat), new StepId("wicks")))
                    .event(14, new ClassEvent.HelpClaimed(seat(seat), "MO"))
                    .event(14.5, new ClassEvent.HelpSorted(seat(seat), "MO"))
                    .event(19, new ClassEvent.StillWorking(seat(seat), new StepId("wicks")));
        }
        return evening;
    }

    private static Evening silent() {
        return eight().open(0, "welcome").done(8, "vessel", Evening.seats(1, 8)).open(9, "wicks").done(11, "wicks", 1);
    }

    private static Evening pour() {
        Evening evening = eight().event(-5, new ClassEvent.SeatExpected(seat(8)))
                .event(-4, new ClassEvent.SeatPaired(seat(2), seat(3)));
        for (String[] step : new String[][] {{"0", "welcome"}, {"9", "wicks"}, {"16", "fragrance"},
                {"24", "before-wax"}, {"26", "mix"}, {"33", "pour"}}) {
            evening.open(Double.parseDouble(step[0]), step[1]);
            evening.done(Double.parseDouble(step[0]) + 4, step[1].equals("welcome") ? "vessel"
                    : step[1].equals("before-wax") || step[1].equals("pour") ? "none" : step[1],
                    step[1].equals("before-wax") || step[1].equals("pour") ? new int[0] : new int[] {1, 2, 4, 5, 6, 7});
        }
        return evening.done(37, "pour", 1, 2, 5).done(38.5, "centre", 1);
    }

    public static Evening cure() {
        return pour().done(40.2, "pour", 4, 6).done(41, "centre", 2, 5)
                .event(41.5, new ClassEvent.SeatArrived(seat(8), "Hale"))
                .done(42.5, "centre", 4, 6).done(43, "pour", 7, 8).done(45, "centre", 7, 8);
    }

    /** One melter tap: seats pour one after the other. Two are through, the third is at it, the last is away. */
    public static Evening turns() {
        Evening evening = Evening.of(TestPlans.served(Evening.plan("evening-pour"), "pour",
                new Stations(1, "melter tap", Duration.ofMinutes(3))), 8, List.of("Ada", "Bruno", "", "Cleo", "Dag"))
                .open(0, "welcome").done(8, "vessel", 1, 2, 3, 4, 5, 6, 7, 8)
                .open(9, "wicks").done(13, "wicks", 2, 1, 3, 4, 5, 6, 7, 8)
                .open(16, "fragrance").done(22, "fragrance", 1, 2, 3, 4, 5, 6, 7, 8)
                .open(24, "before-wax").open(26, "mix").done(30, "mix", 5, 3, 7, 1, 2, 4, 6, 8)
                .open(33, "pour");
        return evening.done(36.2, "pour", 1).done(39.5, "pour", 2).event(41, new ClassEvent.SeatPaused(seat(8)));
    }

    private static Evening finish() {
        Evening evening = cure();
        for (int seat : new int[] {1, 2, 5, 4, 6, 7}) {
            evening.event(98 + seat * 0.1, new ClassEvent.JudgedSet(seat(seat)));
        }
        return evening.open(106, "trim").done(110, "trim", 1, 2, 4).event(111, new ClassEvent.SeatLeft(seat(7)));
    }

    /** Over, with seat 4 slow at its wick, three candles trimmed that nobody had tried, and one still setting. */
    public static Evening over() {
        return trimmed().event(110, new ClassEvent.ClassClosed());
    }

    /** The same with seat 8 tried, and then a close told of a moment before that: the tablet that has it was away. */
    public static Evening triedAfterTheClose() {
        return trimmed().event(112, new ClassEvent.JudgedSet(seat(8))).event(110, new ClassEvent.ClassClosed());
    }

    private static Evening trimmed() {
        Evening evening = eight().open(0, "welcome").done(8, "vessel", 1, 2, 3, 4, 5, 6, 7, 8).open(9, "wicks")
                .done(12, "wicks", 1, 2, 3, 5, 6, 7, 8).event(18, new ClassEvent.HelpClaimed(seat(4), "MO"))
                .done(25, "wicks", 4).open(26, "fragrance").done(31, "fragrance", Evening.seats(1, 8))
                .open(32, "before-wax").open(34, "mix").done(38, "mix", Evening.seats(1, 8)).open(39, "pour")
                .done(42, "pour", Evening.seats(1, 7)).done(55, "pour", 8);
        for (int seat : new int[] {1, 2, 3, 4}) {
            evening.event(98 + seat * 0.1, new ClassEvent.JudgedSet(seat(seat)));
        }
        return evening.open(100, "trim").done(104, "trim", 1, 2, 5, 6, 7);
    }

    private static Evening twelve() {
        return Evening.of(Evening.plan("evening-pour", TableShape.HORSESHOE), 12,
                        List.of("Ada", "Bruno", "Cleo", "Dag", ""))
                .open(0, "welcome").done(8, "vessel", Evening.seats(1, 12)).open(12, "wicks")
                .done(15, "wicks", 1, 2, 3, 4, 5, 6, 8, 9);
    }

    private static Evening many(String plan, int seats, TableShape shape) {
        return Evening.of(Evening.plan(plan, shape), seats,
                        List.of("Ada", "Bruno", "Cleo", "Dag", "", "Edda", "Annegret"))
                .open(0, "welcome").open(6, "vessel").done(8, "vessel", Evening.seats(1, seats)).open(10, "wicks")
                .done(14, "wicks", Evening.seats(1, seats - 9)).done(17, "wicks", seats - 1, seats);
    }

    private static Evening poured(int seats) {
        int[] all = Evening.seats(1, seats);
        return Evening.of("big-table", seats).open(0, "welcome").open(5, "vessel").done(6, "vessel", all)
                .open(15, "wicks")
                .open(20, "fragrance").open(25, "mix").open(30, "pour").done(34, "pour", all).done(43, "centre", all)
                .event(60, new ClassEvent.JudgedSet(seat(3)));
    }
}
