package benchpace.prep.card;

import benchpace.plan.Candle;
import benchpace.prep.Whole;
import benchpace.units.MassUnit;

/**
 * The figures of a label that follow from the candle itself; what it weighs is rounded down, so as not to be
 * overstated.
 *
 * @param netGrams             whole grams
 * @param netTenthsOfAnOunce   whole tenths of an ounce (avoirdupois)
 * @param panelSquareInches    of the principal display panel of a cylinder: 40 % of height times circumference (16 CFR
 *                             500.21(a)(2), read)
 * @param typeSixteenthsOfInch least height of the net quantity's letters on such a panel: 1 up to 5 square inches, 2
 *                             up to 25, 3 up to 100, 4 up to 400, then 8 (16 CFR 500.21(b), the steps from memory)
 * @param markMillimetres      least height of the nominal quantity's figures: 2 up to 50 g, 3 up to 200, 4 up to 1000,
 *                             then 6 (Directive 76/211/EEC, annex I 3.1, from memory)
 */
public record LabelFigures(long netGrams, long netTenthsOfAnOunce, double panelSquareInches, int typeSixteenthsOfInch,
                           int markMillimetres) {
    private static final double MILLIMETRES_PER_INCH = 25.4;

    public static LabelFigures of(Candle candle) {
        double outside = candle.vessel().innerDiameterMillimetres() + 2 * candle.vessel().wallMillimetres();
        double panel = panel(outside / MILLIMETRES_PER_INCH,
                candle.vessel().brimHeightMillimetres() / MILLIMETRES_PER_INCH);
        return new LabelFigures(Whole.down(candle.fillGrams()),
                Whole.down(MassUnit.OUNCE.fromBase(candle.fillGrams()) * 10),
                panel, typeSixteenths(panel), mark(candle.fillGrams()));
    }

    static double panel(double diameterInches, double heightInches) {
        return 0.4 * heightInches * Math.PI * diameterInches;
    }

    static int typeSixteenths(double squareInches) {
        return squareInches <= 5 ? 1 : squareInches <= 25 ? 2 : squareInches <= 100 ? 3 : squareInches <= 400 ? 4 : 8;
    }

    static int mark(double grams) {
        return grams <= 50 ? 2 : grams <= 200 ? 3 : grams <= 1000 ? 4 : 6;
    }
}
