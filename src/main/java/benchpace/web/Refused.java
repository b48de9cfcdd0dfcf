package benchpace.web;

/** Carries a problem from wherever it is noticed to the one place that answers with it. */
final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Problem problem;

    Refused(Problem problem) {
        super(problem.detail(), null, false, false);
        this.problem = problem;
    }

    Problem problem() {
        return problem;
    }
}
