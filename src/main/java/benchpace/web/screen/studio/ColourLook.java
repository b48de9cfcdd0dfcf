package benchpace.web.screen.studio;

import benchpace.files.Json;
import benchpace.plan.colour.Lead;
import benchpace.plan.colour.Light;
import benchpace.plan.colour.Srgb;
import benchpace.words.StudioWords;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** How a colour that is chosen will look in either light, as JSON, for {@code static/js/studio}. */
public final class ColourLook {
    private ColourLook() { }

    /** @param chosen nothing where the usual one will do */
    public static ObjectNode of(Optional<Srgb> chosen) {
        ObjectNode look = Json.object().put("colour", chosen.orElse(Light.DAY.usual().lead()).hex());
        look.set("day", inLight(Lead.of(chosen, Light.DAY), Light.DAY));
        look.set("night", inLight(Lead.of(chosen, Light.NIGHT), Light.NIGHT));
        look.put("told", StudioWords.kept(chosen));
        chosen.flatMap(StudioWords::apart).ifPresent(apart -> look.put("apart", apart));
        return look;
    }

    private static ObjectNode inLight(Lead lead, Light light) {
        return Json.object().put("paper", light.paper().hex()).put("card", light.card().hex())
                .put("ink", light.ink().hex()).put("lead", lead.lead().hex()).put("onLead", lead.onLead().hex());
    }
}
