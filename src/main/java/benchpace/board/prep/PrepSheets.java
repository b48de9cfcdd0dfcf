package benchpace.board.prep;

import benchpace.prep.sheet.PrepSheet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** Every sheet that was asked for of late, worked out once. Safe for use by many threads. */
public final class PrepSheets {
    private static final int MOST = 32;

    private final Function<Occasion, PrepSheet> work;
    private final Map<Occasion, PrepSheet> known = new LinkedHashMap<>(MOST, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override protected boolean removeEldestEntry(Map.Entry<Occasion, PrepSheet> eldest) {
            return size() > MOST;
        }
    };

    public PrepSheets() {
        this(Occasion::sheet);
    }

    /** @param work how a sheet is worked out */
    public PrepSheets(Function<Occasion, PrepSheet> work) {
        this.work = work;
    }

    /** The sheet of an occasion. Whatever its work throws is thrown, each time anew. */
    public PrepSheet of(Occasion occasion) {
        synchronized (known) {
            PrepSheet sheet = known.get(occasion);
            if (sheet != null) {
                return sheet;
            }
        }
        PrepSheet made = work.apply(occasion);
        synchronized (known) {
            known.put(occasion, made);
        }
        return made;
    }
}
