package benchpace.web.request;

/** Carries a problem from wherever it is noticed to the one place that answers with it. */
public final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Problem problem;

    public Refused(Problem problem) {
        super(problem.detail(), null, false, false);
        this.problem = problem;
    }

    public Problem problem() {
        return problem;
    }
}
