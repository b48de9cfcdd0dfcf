/** Floor 2: what is laid out, packed, bought and used up, and what that costs. */
package benchpace.prep.supply;
