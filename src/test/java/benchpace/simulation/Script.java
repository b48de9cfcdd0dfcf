package benchpace.simulation;

import benchpace.files.Json;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A simulated class written down: its setting, then a line for each thing that happens. */
record Script(Setting setting, List<Act> acts) {
    Script {
        acts = List.copyOf(acts);
    }

    String text() {
        StringBuilder text = new StringBuilder(Json.text(setting.line())).append('\n');
        acts.forEach(act -> text.append(Json.text(act.line())).append('\n'));
        return text.toString();
    }

    static Script read(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        List<Act> acts = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            acts.add(Act.read(json(line)));
        }
        return new Script(Setting.read(json(lines.get(0))), acts);
    }

    private static com.fasterxml.jackson.databind.JsonNode json(String line) {
        try {
            return Json.read(line);
        } catch (JsonProcessingException e) {
            throw new AssertionError("no line of a script: " + line, e);
        }
    }
}
