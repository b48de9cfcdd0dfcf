/** Floor 2: wax and fragrance: per candle, in total with the allowance for spills, and against what is allowed. */
package benchpace.prep.wax;
