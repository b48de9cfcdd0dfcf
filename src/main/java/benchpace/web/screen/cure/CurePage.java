package benchpace.web.screen.cure;

import benchpace.board.cooling.CureTrials;
import benchpace.cure.room.MinuteRange;
import benchpace.cure.room.RoomFit;
import benchpace.web.screen.shell.Shell;
import benchpace.words.Degrees;
import benchpace.words.RangeWords;
import benchpace.words.RoomWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Candles tried out side by side, and what rooms have taught.
 *
 * @param basis what the ranges start from, in words
 * @param rooms what there is to look at and to reset
 */
public record CurePage(Shell shell, boolean instructor, List<CureForm.Choice> plans, List<CureForm.Choice> waxes,
                       CureForm form, List<Result> results, List<CureChart> charts, String basis,
                       List<RoomWords> rooms) {
    private static final double LONGEST = 600;

    /**
     * How one combination does.
     *
     * @param verdict {@code fits}, {@code close} or {@code long}; empty if no wait was told
     * @param fit     the same in words
     */
    public record Result(String letter, String what, String skin, String ready, String firm, String verdict,
                         String fit) { }

    /** @param trials by letter */
    public static CurePage of(Shell shell, boolean instructor, List<CureForm.Choice> plans,
                              List<CureForm.Choice> waxes, CureForm form, Map<String, CureTrials.Trial> trials,
                              Optional<Double> wait, String place, RoomFit fit, List<RoomWords> rooms) {
        List<Result> results = new ArrayList<>();
        trials.forEach((letter, trial) -> results.add(result(letter, trial, wait)));
        String basis = fit.observations() == 0
                ? "Computed for a room that has taught nothing yet; no candle was timed to set these figures right."
                : "Computed with what " + (place.isEmpty() ? "this room" : place) + " has taught: "
                        + RoomWords.loss(fit).toLowerCase(java.util.Locale.ROOT) + ".";
        return new CurePage(shell, instructor, plans, waxes, form, results, charts(trials, wait.orElse(-1.0)), basis,
                List.copyOf(rooms));
    }

    private static Result result(String letter, CureTrials.Trial trial, Optional<Double> wait) {
        MinuteRange ready = trial.outlook().ready();
        String verdict = wait.map(w -> ready.p90() <= w ? "fits" : ready.p50() <= w ? "close" : "long").orElse("");
        String fit = switch (verdict) {
            case "fits" -> "Fits: nine in ten should be ready within the wait.";
            case "close" -> "Close: more than half should be ready within the wait, but some may need "
                    + RangeWords.minutes(ready.p90()) + ".";
            case "long" -> "Too long: most should still be too soft when the wait ends.";
            default -> "";
        };
        return new Result(letter, what(trial), RangeWords.of(trial.outlook().skin()), RangeWords.of(ready),
                RangeWords.of(trial.outlook().firm()), verdict, fit);
    }

    private static String what(CureTrials.Trial trial) {
        return Degrees.plain(trial.table().fillGrams()) + " g of " + trial.table().wax().name() + " in "
                + trial.table().vessel().material().name().toLowerCase(java.util.Locale.ROOT) + ", "
                + Degrees.plain(trial.table().vessel().innerDiameterMillimetres()) + " mm";
    }

    private static List<CureChart> charts(Map<String, CureTrials.Trial> trials, double wait) {
        if (trials.isEmpty()) {
            return List.of();
        }
        double longest = trials.values().stream()
                .mapToDouble(t -> Math.min(t.outlook().firm().p50() * 1.2, LONGEST)).max().orElseThrow();
        double minutes = Math.ceil(Math.max(longest, wait * 1.1) / 30) * 30;
        double hottest = trials.values().stream().mapToDouble(t -> t.table().pourCelsius()).max().orElseThrow();
        double coldest = trials.values().stream().mapToDouble(t -> t.table().roomCelsius()).min().orElseThrow();
        List<CureChart.Course> solid = new ArrayList<>();
        List<CureChart.Course> surface = new ArrayList<>();
        StringBuilder solidWords = new StringBuilder("Per cent of the wax that is solid, by minutes from the pour.");
        StringBuilder surfaceWords = new StringBuilder("Temperature in the middle of the top, in degrees Celsius.");
        trials.forEach((letter, t) -> {
            solid.add(new CureChart.Course(letter, m -> 100 * t.curves().solidFractionAt(m),
                    t.curves().lastMinutes()));
            surface.add(new CureChart.Course(letter, t.curves()::surfaceCelsiusAt, t.curves().lastMinutes()));
            solidWords.append(' ').append(letter).append(": half after ")
                    .append(RangeWords.minutes(t.curves().minutesToSolidFraction(0.5))).append(", nine tenths after ")
                    .append(RangeWords.minutes(t.curves().minutesToSolidFraction(0.9))).append('.');
            surfaceWords.append(' ').append(letter).append(": ").append(Math.round(t.curves().surfaceCelsiusAt(30)))
                    .append(" after 30 min, ").append(Math.round(t.curves().surfaceCelsiusAt(60)))
                    .append(" after 60 min.");
        });
        return List.of(CureChart.of("solid", "How much of the wax is solid", solidWords.toString(), solid, minutes, 0,
                        100, 25, " %", wait),
                CureChart.of("surface", "Temperature in the middle of the top", surfaceWords.toString(), surface,
                        minutes, Math.floor(coldest / 10) * 10, Math.ceil(hottest / 10) * 10, 10, " °C", wait));
    }
}
