package benchpace.cure.solver;

/**
 * What one solution of a case gives.
 *
 * @param milestones when what is reached
 * @param curves the course between
 */
public record CureRun(CureMilestones milestones, CureCurves curves) { }
