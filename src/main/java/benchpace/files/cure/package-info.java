/**
 * Cases for the {@code cure} command. Start at {@link benchpace.files.cure.CureCaseFile}.
 */
package benchpace.files.cure;
