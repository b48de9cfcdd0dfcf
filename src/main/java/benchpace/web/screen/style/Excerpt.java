package benchpace.web.screen.style;

import gg.jte.Content;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is seen of a page, to stand inside another: its own sheets and what they dress. It is put into a shadow tree, so
 * that no sheet of one screen reaches another.
 *
 * @param title  what is to be seen in it
 * @param screen of which screen it is
 * @param sheets the addresses of its style sheets
 * @param now    the instant at which it was made, RFC 3339; empty if nothing ticks in it
 * @param html   what they dress
 */
public record Excerpt(String title, String screen, List<String> sheets, String now, String html) {
    private static final Pattern SHEET = Pattern.compile("<link rel=\"stylesheet\" href=\"([^\"]+)\">");
    private static final Pattern SCREEN = Pattern.compile("<body class=\"screen screen--([a-z-]+)\"");
    private static final Pattern BODY = Pattern.compile("<div class=\"live\"[^>]*>(.*)</div>\\s*"
            + "(<div id=\"traits\".*)?<div class=\"messages\"", Pattern.DOTALL);

    /** Of a whole page. @throws IllegalArgumentException if it is none that {@code shell/page.jte} made */
    public static Excerpt of(String title, String page, String now) {
        Matcher screen = SCREEN.matcher(page);
        Matcher body = BODY.matcher(page);
        if (!screen.find() || !body.find()) {
            throw new IllegalArgumentException("not a page of the board: " + title);
        }
        return new Excerpt(title, screen.group(1), SHEET.matcher(page).results().map(m -> m.group(1)).toList(), now,
                "<div class=\"live\">" + body.group(1) + "</div>");
    }

    public Content content() {
        return output -> output.writeContent(html);
    }
}
