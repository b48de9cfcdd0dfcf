package benchpace.plan.kit;

/**
 * What a percentage of fragrance is counted on. No standards body fixes it and makers use both, so a percentage is
 * never kept without it.
 */
public enum LoadConvention {
    /** Of the wax alone: fragrance = p x wax. */
    OF_WAX,
    /** Of all that is poured: fragrance = p x (wax + fragrance). */
    OF_TOTAL;

    /** The share of all that is poured, from a percentage in this convention. @param percent 0 or more */
    public double fractionOfTotal(double percent) {
        double p = percent / 100;
        return this == OF_WAX ? p / (1 + p) : p;
    }

    /** The percentage in this convention. @param fractionOfTotal share of all that is poured, 0 to below 1 */
    public double percent(double fractionOfTotal) {
        return 100 * (this == OF_WAX ? fractionOfTotal / (1 - fractionOfTotal) : fractionOfTotal);
    }
}
