/**
 * Benchpace, a live pacing board for hands-on candle classes. Only {@link benchpace.Main}, the command line that wires
 * the parts together, lives here. Read {@code DEVELOPERS.md} for the map of the house.
 */
package benchpace;
