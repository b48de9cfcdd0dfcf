package benchpace.web.screen.history;

import benchpace.history.Chosen;
import benchpace.history.Measure;
import benchpace.history.PastClass;
import benchpace.history.Punctuality;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.HistoryWords;
import benchpace.words.Times;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Past classes: those chosen, what they show together, and one page of them.
 *
 * @param count   how many there are in all, in words
 * @param form    the choice as it stands
 * @param faults  what was asked for and cannot be, a sentence each
 * @param empty   what is said where there is nothing to show; else empty
 * @param found   how many are chosen, and which of them stand below
 * @param toCome  how many are still being worked out, in a sentence; empty for none
 * @param left    what the drawings leave out, in a sentence; empty for nothing
 * @param trends  those that have two points at least to draw; the first of them is there if any is
 * @param months  the classes, the latest first
 * @param newer   the address of the page before; empty on the first
 * @param older   the address of the page after; empty on the last
 */
public record HistoryPage(Shell shell, String count, Form form, List<String> faults, String empty, String found,
                          String toCome, String left, CostChart costs, List<TrendChart> trends, List<Month> months,
                          String newer, String older) {
    /** So many classes stand on a page. */
    public static final int ROWS = 25;

    /** @param value as the address has it */
    public record Option(String value, String words, boolean chosen) { }

    /** @param from and {@code until}: as dates are written, or empty */
    public record Form(List<Option> plans, List<Option> rooms, String from, String until, List<Option> kept,
                       boolean anything) { }

    public record Month(String name, List<HistoryRow> rows) { }

    /**
     * What a page is made of.
     *
     * @param all every past class, the latest first
     */
    public record Given(List<PastClass> all, HistoryAddress address) {
        Chosen chosen() {
            return address.chosen();
        }
    }

    public static HistoryPage of(Given given, Viewer viewer, Times times) {
        List<PastClass> chosen = given.all().stream().filter(c -> given.chosen().accepts(c, times.zone())).toList();
        int pages = Math.max(1, (chosen.size() + ROWS - 1) / ROWS);
        int page = Math.min(given.address().page(), pages);
        int from = (page - 1) * ROWS;
        List<PastClass> shown = chosen.subList(from, Math.min(chosen.size(), from + ROWS));
        return new HistoryPage(
                new Shell("History", "history", List.of(), "", "", times.zone().getId(), viewer.role().token(),
                        viewer.initials()),
                HistoryWords.classes(given.all().size()), form(given), given.address().faults(), empty(given, chosen),
                found(chosen.size(), from, shown.size()),
                HistoryWords.toCome(given.all().stream()
                        .filter(c -> c.standing() == PastClass.Standing.TO_COME).count()),
                HistoryWords.leftOut(chosen), CostChart.of(chosen, times),
                Arrays.stream(Measure.values()).map(m -> TrendChart.of(m, chosen, times))
                        .filter(TrendChart::draws).toList(),
                months(shown, times), page > 1 ? given.address().to(page - 1) : "",
                page < pages ? given.address().to(page + 1) : "");
    }

    /** Why nothing is drawn; empty if something is, or no class is there. */
    public String undrawn() {
        return trends.isEmpty() ? HistoryWords.undrawn() : "";
    }

    private static String empty(Given given, List<PastClass> chosen) {
        return !chosen.isEmpty() ? "" : given.all().isEmpty()
                ? "No class is over yet. Once one is closed it stands here, with what it came to."
                : "No past class is like that.";
    }

    private static String found(int chosen, int from, int shown) {
        return chosen <= ROWS ? HistoryWords.classes(chosen)
                : (from + 1) + " to " + (from + shown) + " of " + HistoryWords.classes(chosen);
    }

    private static List<Month> months(List<PastClass> shown, Times times) {
        Map<String, List<HistoryRow>> months = shown.stream().collect(Collectors.groupingBy(
                c -> times.month(c.startsAt()), LinkedHashMap::new,
                Collectors.mapping(c -> HistoryRow.of(c, times), Collectors.toList())));
        return months.entrySet().stream().map(m -> new Month(m.getKey(), m.getValue())).toList();
    }

    // ---- the choice

    private static Form form(Given given) {
        Chosen chosen = given.chosen();
        return new Form(plans(given), rooms(given), date(chosen.from()), date(chosen.until()), kept(chosen),
                !chosen.everything());
    }

    private static String date(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse("");
    }

    private static List<Option> plans(Given given) {
        Optional<String> asked = given.chosen().planId();
        Map<String, String> names = new LinkedHashMap<>();
        given.all().forEach(c -> names.putIfAbsent(c.planId(), c.planName()));
        asked.ifPresent(id -> names.putIfAbsent(id, id));
        return options("All plans", names, asked, id -> id);
    }

    private static List<Option> rooms(Given given) {
        Optional<String> asked = given.chosen().place();
        Map<String, String> names = new LinkedHashMap<>();
        Stream.concat(given.all().stream().map(PastClass::place), asked.stream())
                .forEach(place -> names.putIfAbsent(place, HistoryWords.room(place)));
        return options("All rooms", names, asked, HistoryAddress::room);
    }

    private static List<Option> options(String all, Map<String, String> names, Optional<String> asked,
                                        UnaryOperator<String> value) {
        return Stream.concat(Stream.of(new Option("", all, asked.isEmpty())), names.entrySet().stream()
                .map(n -> new Option(value.apply(n.getKey()), n.getValue(),
                        asked.filter(n.getKey()::equals).isPresent()))
                .sorted(Comparator.comparing(Option::words, String.CASE_INSENSITIVE_ORDER))).toList();
    }

    private static List<Option> kept(Chosen chosen) {
        return IntStream.range(-1, Punctuality.values().length).mapToObj(i -> i < 0
                ? new Option("", "Late or on time", chosen.punctuality().isEmpty())
                : option(Punctuality.values()[i], chosen)).toList();
    }

    private static Option option(Punctuality punctuality, Chosen chosen) {
        return new Option(HistoryAddress.kept(punctuality), HistoryWords.punctuality(punctuality),
                chosen.punctuality().filter(punctuality::equals).isPresent());
    }
}
