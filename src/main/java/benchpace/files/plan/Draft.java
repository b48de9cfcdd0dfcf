package benchpace.files.plan;

import benchpace.files.Fields;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * A value in the making, whose own constructor is the only rule. It starts sound; each field that was read is put in on
 * trial, and one that the constructor refuses is told of at its place and taken out again, so that one fault never
 * hides another.
 */
abstract class Draft<T> implements Supplier<T> {
    private final Fields fields;

    Draft(Fields fields) {
        this.fields = fields;
    }

    /** @param put puts a value in; @param sound what stood there before */
    final <V> void put(String field, Optional<V> read, V sound, Consumer<V> put) {
        read.ifPresent(value -> {
            put.accept(value);
            try {
                get();
            } catch (IllegalArgumentException refused) {
                fields.tell(field, refused.getMessage());
                put.accept(sound);
            }
        });
    }

    /** The value, if nothing was wrong with it or in it. */
    final Optional<T> finished() {
        fields.noOthers();
        return fields.sound() ? Optional.of(get()) : Optional.empty();
    }
}
