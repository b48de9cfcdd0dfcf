package benchpace.pace;

import java.util.HashMap;
import java.util.Map;

/** tmp */
public final class PaceEngine {
    public static final double TICK_MINUTES = 0.5;

    private final PacePriors priors;

    public PaceEngine(PacePriors priors) {
        this.priors = priors;
    }
}
