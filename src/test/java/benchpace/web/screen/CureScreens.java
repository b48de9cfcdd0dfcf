package benchpace.web.screen;

import benchpace.board.cooling.CureTrials;
import benchpace.cure.TableCase;
import benchpace.cure.room.RoomFit;
import benchpace.files.roster.Demo;
import benchpace.plan.Candle;
import benchpace.web.screen.cure.CureForm;
import benchpace.web.screen.cure.CurePage;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.RoomWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The candles of the first starter plan tried out side by side, and a room that has taught something. */
final class CureScreens {
    private static final List<String> LETTERS = List.of("A", "B", "C", "D");
    private static final double WAIT = 45;

    private CureScreens() {
    }

    static CurePage tried(Viewer viewer) {
        CureTrials trials = new CureTrials();
        List<Candle> candles = Demo.plans().get(0).candles();
        Map<String, CureTrials.Trial> tried = new LinkedHashMap<>();
        List<CureForm.Column> columns = new ArrayList<>();
        for (int i = 0; i < LETTERS.size(); i++) {
            if (i < candles.size()) {
                tried.put(LETTERS.get(i), trials.of(table(candles.get(i)), RoomFit.untaught()));
            }
            columns.add(new CureForm.Column(LETTERS.get(i), i < candles.size() ? values(candles.get(i)) : Map.of(),
                    Map.of()));
        }
        return CurePage.of(new Shell("Vessels and waxes", "cure", List.of(), "", "", "UTC", viewer.role().token(), ""),
                true, List.of(new CureForm.Choice("evening-pour", "Evening pour")), candles.stream()
                        .map(c -> new CureForm.Choice(c.wax().id(), c.wax().name())).toList(),
                new CureForm("evening-pour", "", "45", "", columns), tried, Optional.of(WAIT), "", RoomFit.untaught(),
                List.of(new RoomWords("loft", "The Tallow Loft, Quay Lane, Marrowby",
                        "Cools about 12 % faster than computed, likely 1 to 24 %.",
                        "A candle counts as ready here with a skin and about 56 % of the wax solid.")));
    }

    private static TableCase table(Candle c) {
        return TableCase.of(c.vessel(), c.wax(), c.fillGrams(), c.fragranceFraction(), c.roomCelsius(),
                c.pourCelsius(), c.tableTop(), 1);
    }

    private static Map<String, String> values(Candle c) {
        return Map.of("material", c.vessel().material().name().toLowerCase(java.util.Locale.ROOT), "wax", c.wax().id(),
                "diameter", number(c.vessel().innerDiameterMillimetres()), "wall",
                number(c.vessel().wallMillimetres()), "brim", number(c.vessel().brimHeightMillimetres()), "fill",
                number(c.fillGrams()), "fragrance", number(100 * c.fragranceFraction()), "room",
                number(c.roomCelsius()), "pour", number(c.pourCelsius()), "draught", "0");
    }

    private static String number(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(Math.round(10 * value) / 10.0);
    }
}
