package benchpace.files.plan;

import benchpace.files.Finding;
import benchpace.files.Json;
import benchpace.files.SizedText;
import benchpace.plan.Plan;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Plans as JSON. Reading tells every problem with its place, a field that is not known here included; what was written
 * reads back equal. Lengths are minutes and may have parts.
 *
 * <p>Plans also stand in the first event of every class, so a field once read stays readable, and a new one has a
 * default.
 */
public final class PlanFile {
    private PlanFile() { }

    /** Reads a plan that is the whole of a document. */
    public static PlanReading read(JsonNode node) {
        List<Finding> problems = new ArrayList<>();
        Optional<Plan> plan = PlanReader.read(node, "", problems::add);
        return plan.isPresent() && problems.isEmpty()
                ? new PlanReading.Sound(plan.get()) : new PlanReading.Unsound(problems);
    }

    /** @throws IOException if the stream cannot be read; what is too large or no JSON is a problem like others */
    public static PlanReading read(InputStream in) throws IOException {
        try {
            return read(Json.read(SizedText.read(in, SizedText.PLAN)));
        } catch (SizedText.TooLarge e) {
            return unsound(new Finding("", e.getMessage() + " of a plan"));
        } catch (CharacterCodingException e) {
            return unsound(new Finding("", "is not text in UTF-8"));
        } catch (JsonProcessingException e) {
            return unsound(Json.problem(e));
        }
    }

    private static PlanReading unsound(Finding problem) {
        return new PlanReading.Unsound(List.of(problem));
    }

    /** @throws IOException if the file cannot be read */
    public static PlanReading read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return read(in);
        }
    }

    /** The plan as JSON, every field written out. */
    public static ObjectNode write(Plan plan) {
        return PlanWriter.write(plan);
    }
}
