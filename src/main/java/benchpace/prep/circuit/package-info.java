/**
 * Floor 2: what is plugged in against what the venue's circuits carry, by rules of thumb of the regions. The venue and
 * a licensed electrician decide; this only adds up. Start at {@link benchpace.prep.circuit.CircuitRule}.
 */
package benchpace.prep.circuit;
