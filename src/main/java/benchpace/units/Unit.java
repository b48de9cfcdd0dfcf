package benchpace.units;

/** A unit that people write a figure in. Its base is what the house reckons in: gram, millilitre, degree C, watt. */
public sealed interface Unit permits MassUnit, VolumeUnit, TemperatureUnit, PowerUnit {
    /** As it is written after the number: "oz", "US fl oz". */
    String symbol();

    /** From this unit to the base. */
    double toBase(double value);

    /** From the base to this unit. */
    double fromBase(double base);
}
