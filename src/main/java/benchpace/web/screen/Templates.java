package benchpace.web.screen;

import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** Turns a template and what it shows into HTML. */
final class Templates {
    private static final int USUAL_LENGTH = 2048;

    private final TemplateEngine engine;

    Templates(TemplateEngine engine) {
        this.engine = engine;
    }

    /** Of a template that takes one thing. */
    String render(String template, Object of) {
        StringOutput output = new StringOutput(USUAL_LENGTH);
        engine.render(template, of, output);
        return output.toString();
    }

    /** Of one that takes several, by their names. */
    String renderParts(String template, Map<String, Object> parts) {
        StringOutput output = new StringOutput(USUAL_LENGTH);
        engine.render(template, parts, output);
        return output.toString();
    }
}
