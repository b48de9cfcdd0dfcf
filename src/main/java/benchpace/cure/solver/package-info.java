/**
 * How a case is answered: enthalpy on a graded grid, its milestones and curves, and the candle cut open. Start at
 * {@link benchpace.cure.solver.CureSolver}.
 */
package benchpace.cure.solver;
