package benchpace.files.plan;

import benchpace.files.BadFile;
import benchpace.plan.Plan;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The organiser's own plans: every {@code *.json} of a folder. */
public final class PlanFolder {
    private PlanFolder() { }

    /**
     * The plans of a folder in the order of their file names; none if there is no such folder.
     *
     * @throws BadFile for the first file that holds no sound plan
     */
    public static List<Plan> read(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<Plan> plans = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                requireFile(file);
                PlanReading reading = PlanFile.read(file);
                plans.add(reading.ifSound().orElseThrow(() ->
                        new BadFile(file + ": " + reading.problems().get(0) + ".")));
            }
        } catch (IOException | UncheckedIOException e) {
            throw new BadFile("The plans in " + folder + " cannot be read: " + e.getMessage() + ".", e);
        }
        return plans;
    }

    /** Neither a folder nor a device: reading one of those may never end. */
    private static void requireFile(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new BadFile(file + ": it is named as a plan and is no file that can be read.");
        }
    }
}
