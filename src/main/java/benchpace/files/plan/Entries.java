package benchpace.files.plan;

import benchpace.files.Fields;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * A list of things that have ids, as it was read.
 *
 * @param sound those with nothing wrong, in order; of two with one id the first
 * @param ids   of all entries, unsound ones too: what names one of those is not at fault for that
 */
record Entries<T>(List<T> sound, Set<String> ids) {

    /**
     * @param one   what an entry is, in a word
     * @param read  reads an entry
     * @param idOf  the id of one that was read
     */
    static <T> Entries<T> read(Fields fields, String list, int most, String one, Function<Fields, Optional<T>> read,
                               Function<T, String> idOf) {
        List<T> sound = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        Set<String> ids = new HashSet<>();
        fields.eachObject(list, 0, most, object -> {
            object.glimpse("id").ifPresent(ids::add);
            read.apply(object).ifPresent(entry -> {
                if (seen.add(idOf.apply(entry))) {
                    sound.add(entry);
                } else {
                    object.tell("id", "\"" + idOf.apply(entry) + "\" is the id of an earlier " + one + " already");
                }
            });
        });
        return new Entries<>(sound, ids);
    }
}
