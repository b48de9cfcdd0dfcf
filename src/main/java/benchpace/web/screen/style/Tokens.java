package benchpace.web.screen.style;

import benchpace.plan.colour.Light;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What style sheets say of the root of a page or of a shadow tree: every named letter, colour and measure, by day and
 * by night.
 *
 * @param day   name without dashes to value, in the sheets' order
 * @param night the same by night
 */
public record Tokens(Map<String, String> day, Map<String, String> night) {
    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
    private static final Pattern BLOCK = Pattern.compile(
            "(@media \\(prefers-color-scheme: dark\\) \\{\\s*)?:root(?:, :host)? \\{([^}]*)}");
    private static final Pattern TOKEN = Pattern.compile("--([a-z-]+):\\s*([^;]+);");

    /** @param sheets the text of style sheets, the later ones over the earlier */
    public static Tokens of(String sheets) {
        Map<String, String> day = new LinkedHashMap<>();
        Map<String, String> night = new LinkedHashMap<>();
        Matcher block = BLOCK.matcher(COMMENT.matcher(sheets).replaceAll(""));
        while (block.find()) {
            Matcher token = TOKEN.matcher(block.group(2));
            while (token.find()) {
                night.put(token.group(1), token.group(2).strip());
                if (block.group(1) == null) {
                    day.put(token.group(1), token.group(2).strip());
                }
            }
        }
        return new Tokens(day, night);
    }

    /** A sheet that holds a page to one light, whatever the device prefers. */
    public String sheet(Light light) {
        return (light == Light.DAY ? day : night).entrySet().stream()
                .map(token -> "  --" + token.getKey() + ": " + token.getValue() + ";\n")
                .collect(Collectors.joining("", ":root, :host {\n  color-scheme: "
                        + (light == Light.DAY ? "light" : "dark") + ";\n", "}\n"));
    }
}
