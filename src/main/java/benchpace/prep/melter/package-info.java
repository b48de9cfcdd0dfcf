/** Floor 2: how long a melter takes, how often it is filled, and what cold wax does to what is molten. */
package benchpace.prep.melter;
