/**
 * Floor 2: the day before, in numbers: what a plan, so many seats and a venue ask for. Pure, and facts only: figures
 * that the plan does not say are never guessed; what hangs on one is absent, and a {@link benchpace.prep.PrepProblem}
 * names the figure that is wanting. Sentences are made in {@code benchpace.words}.
 *
 * <p>Here is what all rooms need; {@code wax}, {@code melter}, {@code circuit}, {@code supply} and {@code card} each
 * work out a part, and {@code sheet} puts them together. Start at {@link benchpace.prep.sheet.PrepSheet}.
 */
package benchpace.prep;
