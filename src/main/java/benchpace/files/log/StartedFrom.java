package benchpace.files.log;

import benchpace.cure.room.RoomFit;
import benchpace.files.Json;
import benchpace.pace.StepPrior;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;

/** What a class started from, as JSON beside its events: what its room and past classes had taught by then. */
public final class StartedFrom {
    private StartedFrom() { }

    /** @param steps by step id, as the events name them */
    public static String write(Optional<RoomFit> room, Map<String, StepPrior> steps) {
        ObjectNode from = Json.object();
        room.ifPresent(fit -> from.putObject("room").put("logLossMean", fit.logLossMean())
                .put("logLossSd", fit.logLossSd()).put("readyMean", fit.readyMean()).put("readySd", fit.readySd())
                .put("observations", fit.observations()));
        ObjectNode told = from.putObject("steps");
        steps.forEach((step, prior) -> {
            ObjectNode one = told.putObject(step).put("meanLogShift", prior.meanLogShift())
                    .put("variance", prior.variance());
            if (!Double.isNaN(prior.noiseVariance())) {
                one.put("noiseVariance", prior.noiseVariance());
            }
        });
        return Json.pretty(from);
    }
}
