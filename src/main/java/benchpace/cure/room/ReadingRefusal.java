package benchpace.cure.room;

/**
 * Why a thermometer reading is not believed.
 *
 * @param celsius the reading
 * @param lowestCelsius lowest reading that would be believed
 * @param highestCelsius highest reading that would be believed
 */
public record ReadingRefusal(double celsius, double lowestCelsius, double highestCelsius) { }
