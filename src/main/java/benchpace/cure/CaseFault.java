package benchpace.cure;

/**
 * Why a set of numbers is not a cooling case.
 *
 * @param field the case file's name of the quantity at fault, such as {@code waxMassG}
 * @param reason what is wrong with it, as the end of a sentence that starts with the field's name
 */
public record CaseFault(String field, String reason) { }
