package benchpace.web.screen;

import java.util.List;

/**
 * What frames a page.
 *
 * @param screen  names its style sheet and its script
 * @param sheets  further style sheets
 * @param classId the class it follows; empty for pages that follow none
 * @param now     the board's time, RFC 3339; empty for pages that follow no class
 */
public record Shell(String title, String screen, List<String> sheets, String classId, String now, String zone,
                    String role, String initials) {

    /** A page that follows no class. */
    static Shell still(String title, Role role) {
        return new Shell(title, "start", List.of(), "", "", "UTC", role.token(), "");
    }

    public boolean live() {
        return !classId.isEmpty();
    }

    public String stream() {
        return "/classes/" + classId + "/" + screen + "/stream";
    }
}
