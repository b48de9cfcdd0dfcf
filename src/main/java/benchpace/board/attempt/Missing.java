package benchpace.board.attempt;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;

/**
 * What of a class cannot be worked out just now.
 *
 * @param models in their own order
 */
public record Missing(Set<Model> models) {
    public static final Missing NOTHING = new Missing(EnumSet.noneOf(Model.class));

    public Missing {
        models = Collections.unmodifiableSet(new TreeSet<>(models));
    }

    public static Missing of(Collection<Model> models) {
        return models.isEmpty() ? NOTHING : new Missing(Set.copyOf(models));
    }

    public Missing and(Missing others) {
        Set<Model> both = new TreeSet<>(models);
        both.addAll(others.models);
        return of(both);
    }

    public Missing without(Model model) {
        return of(models.stream().filter(m -> m != model).toList());
    }

    public boolean has(Model model) {
        return models.contains(model);
    }
}
