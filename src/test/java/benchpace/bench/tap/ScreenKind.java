package benchpace.bench.tap;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What hangs and lies about in a shop while a class runs. */
public enum ScreenKind {
    TABLE("instructor"), WALL("wall"), HELPER("helper");

    private final String page;

    ScreenKind(String page) {
        this.page = page;
    }

    /** Where a class's own stream of this kind is. */
    String stream(String classId) {
        return "/classes/" + classId + "/" + page + "/stream";
    }

    /**
     * So many screens as a shop has them: the instructor's table first, then a wall; of the rest every second is a
     * helper's, every fourth a further table, every fourth a guest's phone, which shows what the wall shows.
     */
    public static List<ScreenKind> mix(int screens) {
        List<ScreenKind> mix = new ArrayList<>();
        for (int n = 0; n < screens; n++) {
            mix.add(n == 0 ? TABLE : n == 1 ? WALL : n % 2 == 0 ? HELPER : n % 4 == 3 ? TABLE : WALL);
        }
        return mix;
    }

    /** How many of each, in words. */
    public static String told(List<ScreenKind> mix) {
        Map<ScreenKind, Long> counts = mix.stream().collect(Collectors.groupingBy(kind -> kind, TreeMap::new,
                Collectors.counting()));
        return counts.entrySet().stream().map(e -> e.getValue() + " " + e.getKey().name().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
    }
}
