package benchpace.files.log;

import benchpace.files.BadField;
import benchpace.files.Fields;
import benchpace.files.Finding;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.function.Consumer;

/**
 * Commands as clients send them: {@code {"commandId","type","at"?, fields of the event}}. Ids that are the board's own
 * are refused, so that no client's tap is ever taken for a repetition of one of them.
 */
public final class CommandJson {
    private CommandJson() { }

    /**
     * @param by  who sent it, as the access check found
     * @param now when it was made if it does not say so
     * @throws BadField for anything that is no command; nothing else is thrown
     */
    public static Command read(JsonNode body, String by, Instant now) {
        Consumer<Finding> thrown = problem -> {
            throw BadField.of(problem);
        };
        Fields fields = new Fields(body, "", thrown);
        String id = fields.line("commandId", 1, Command.LONGEST_ID).orElseThrow();
        if (Command.isOwn(id)) {
            throw new BadField("commandId", "must not be \"create\" nor begin with \"board.\": the board gives itself "
                    + "such ids");
        }
        String type = fields.text("type").orElseThrow();
        if (type.equals("create") || type.equals("set-up")) {
            throw new BadField("type", "\"" + type + "\" is not a command: a class is set up on its own address");
        }
        if (type.equals("shift-clock")) {
            throw new BadField("type", "\"shift-clock\" is not a command: which clock is right is said at /api/clock");
        }
        Instant at = fields.instant("at", now).orElseThrow();
        ClassEvent wish = EventJson.read(type, body);
        return new Command(id, by, at, wish);
    }
}
