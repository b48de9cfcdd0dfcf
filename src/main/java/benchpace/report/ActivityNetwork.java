package benchpace.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * Activities that wait for one another, and the critical-path method on them: J. E. Kelley and M. R. Walker,
 * "Critical-path planning and scheduling", Proc. Eastern Joint Computer Conference 1959, 160-173.
 *
 * <p>With d the length of an activity, P those it waits for and S those that wait for it:
 * <pre>
 * ES = max over P of EF, 0 if there are none      EF = ES + d          (forward)
 * LF = min over S of LS, the length if there are none      LS = LF - d (backward)
 * slack = LS - ES
 * </pre>
 *
 * @param <K> what names an activity
 */
final class ActivityNetwork<K> {
    /**
     * One activity.
     *
     * @param length at least 0, in any unit of time
     * @param after what it waits for
     */
    record Activity<K>(K id, double length, Set<K> after) {
        public Activity {
            after = Collections.unmodifiableSet(new LinkedHashSet<>(after));
            if (!(length >= 0 && length < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(id + " takes " + length);
            }
        }
    }

    /** In an order in which each comes after all it waits for. */
    private final Map<K, Activity<K>> activities = new LinkedHashMap<>();
    private final Map<K, Double> finish = new HashMap<>();
    private final Map<K, Double> latest = new HashMap<>();
    private final Set<K> ends;

    /** A network that is over when everything is. */
    ActivityNetwork(Collection<Activity<K>> activities) {
        this(activities, activities.stream().map(Activity::id).toList());
    }

    /**
     * A network that is over when some of it is.
     *
     * @param ends the activities that count, at least one; what no end waits for has endless slack
     * @throws IllegalArgumentException if a name is used twice or unknown, or activities wait for one another in a ring
     */
    ActivityNetwork(Collection<Activity<K>> activities, Collection<K> ends) {
        inOrder(activities);
        this.ends = new LinkedHashSet<>(ends);
        if (ends.isEmpty() || !this.activities.keySet().containsAll(ends)) {
            throw new IllegalArgumentException("the ends " + ends + " are not among the activities");
        }
        finish.putAll(finishes(Activity::length));
        double length = length();
        ends.forEach(e -> latest.put(e, length));
        List<K> backward = new ArrayList<>(this.activities.keySet());
        Collections.reverse(backward);
        for (K id : backward) {
            double start = latestFinish(id) - this.activities.get(id).length();
            this.activities.get(id).after().forEach(before -> latest.merge(before, start, Math::min));
        }
    }

    private void inOrder(Collection<Activity<K>> given) {
        Map<K, Activity<K>> waiting = new LinkedHashMap<>();
        for (Activity<K> activity : given) {
            if (waiting.put(activity.id(), activity) != null) {
                throw new IllegalArgumentException("two activities named " + activity.id());
            }
        }
        while (!waiting.isEmpty()) {
            List<K> next = waiting.values().stream().filter(a -> activities.keySet().containsAll(a.after()))
                    .map(Activity::id).toList();
            if (next.isEmpty()) {
                throw new IllegalArgumentException("these wait for one another or for nobody known: "
                        + waiting.keySet());
            }
            next.forEach(id -> activities.put(id, waiting.remove(id)));
        }
    }

    private Map<K, Double> finishes(ToDoubleFunction<Activity<K>> lengths) {
        Map<K, Double> finishes = new HashMap<>();
        for (Activity<K> activity : activities.values()) {
            double start = activity.after().stream().mapToDouble(finishes::get).max().orElse(0);
            finishes.put(activity.id(), start + lengths.applyAsDouble(activity));
        }
        return finishes;
    }

    private double last(Map<K, Double> finishes) {
        return ends.stream().mapToDouble(finishes::get).max().orElseThrow();
    }

    /** Every activity, each after all it waits for. */
    Set<K> ids() {
        return Collections.unmodifiableSet(activities.keySet());
    }

    /** What an activity waits for. */
    Set<K> after(K id) {
        return activities.get(id).after();
    }

    /** When the last of the ends is over. */
    double length() {
        return last(finish);
    }

    /** When the last of the ends would be over if activities took other times, all else waiting as before. */
    double lengthWith(ToDoubleFunction<Activity<K>> lengths) {
        return last(finishes(lengths));
    }

    double earliestStart(K id) {
        return finish.get(id) - activities.get(id).length();
    }

    double earliestFinish(K id) {
        return finish.get(id);
    }

    double latestStart(K id) {
        return latestFinish(id) - activities.get(id).length();
    }

    double latestFinish(K id) {
        return latest.getOrDefault(id, Double.POSITIVE_INFINITY);
    }

    /** How much later it could be over without anything that counts being later. */
    double slack(K id) {
        return latestFinish(id) - earliestFinish(id);
    }

    /** The activities without slack, from the first to the end they hold; where several ways tie, the first named. */
    List<K> criticalPath() {
        List<K> path = new ArrayList<>();
        K at = latestOf(ends);
        while (at != null) {
            path.add(0, at);
            at = latestOf(activities.get(at).after());
        }
        return path;
    }

    private K latestOf(Collection<K> ids) {
        K latestId = null;
        for (K id : ids) {
            if (latestId == null || finish.get(id) > finish.get(latestId)) {
                latestId = id;
            }
        }
        return latestId;
    }
}
