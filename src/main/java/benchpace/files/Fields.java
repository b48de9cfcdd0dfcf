package benchpace.files;

import benchpace.live.Era;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * One JSON object while it is read by hand. Each field is asked for by name and type; what is wrong goes to a listener,
 * with its place, and the answer is then empty. A listener may collect, or throw at once. A field that is {@code null}
 * counts as left out.
 */
public final class Fields {
    public static final String TOO_FAR = "must lie between the years 2000 and 2199";
    /** Sixty days: more than any field takes, and safe to convert. */
    private static final double MOST_MINUTES = 86_400;
    private static final int MOST_CHOICES = 20;
    private static final int MOST_SLIPS = 50;

    private final JsonNode object;
    private final String pointer;
    private final Consumer<Finding> problems;
    private final Set<String> known = new LinkedHashSet<>();
    private final boolean readable;
    private boolean sound = true;

    public Fields(JsonNode object, String pointer, Consumer<Finding> problems) {
        this.object = object;
        this.pointer = pointer;
        this.problems = problems;
        this.readable = object.isObject();
        if (!readable) {
            tell(new Finding(pointer, "must be an object in braces, not " + sort(object)));
        }
    }

    /** Whether nothing was wrong so far, in here or in what was read from here. */
    public boolean sound() {
        return sound;
    }

    private void tell(Finding problem) {
        sound = false;
        problems.accept(problem);
    }

    public void tell(String field, String sentence) {
        tell(new Finding(place(field), sentence));
    }

    private String place(String field) {
        return pointer + "/" + field.replace("~", "~0").replace("/", "~1");
    }

    private Optional<JsonNode> optional(String field) {
        known.add(field);
        JsonNode node = object.get(field);
        return node == null || node.isNull() ? Optional.empty() : Optional.of(node);
    }

    private Optional<JsonNode> required(String field) {
        Optional<JsonNode> node = optional(field);
        if (node.isEmpty() && readable) {
            tell(field, "is missing");
        }
        return node;
    }

    // ---- texts

    public Optional<String> text(String field) {
        return required(field).flatMap(n -> text(field, n));
    }

    public Optional<String> text(String field, String otherwise) {
        return optional(field).map(n -> text(field, n)).orElse(Optional.of(otherwise));
    }

    private Optional<String> text(String field, JsonNode node) {
        if (!node.isTextual()) {
            tell(field, "must be text in quotes, not " + sort(node));
            return Optional.empty();
        }
        if (halfCharacters(node.textValue())) {
            tell(field, "holds half a character (an unpaired surrogate)");
            return Optional.empty();
        }
        return Optional.of(node.textValue());
    }

    /** Such text cannot be stored as UTF-8 and read back equal. */
    public static boolean halfCharacters(String text) {
        return text.codePoints().anyMatch(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE);
    }

    /** A text of one line. @param least 0 if it may be left out or empty */
    public Optional<String> line(String field, int least, int most) {
        return (least == 0 ? text(field, "") : text(field)).filter(text -> {
            if (text.length() > most) {
                tell(field, "is longer than " + most + " characters");
            } else if (text.strip().length() < least) {
                tell(field, "must not be empty");
            } else if (text.chars().anyMatch(Character::isISOControl)) {
                tell(field, "holds a control character");
            } else {
                return true;
            }
            return false;
        });
    }

    public <E extends Enum<E>> Optional<E> choice(String field, Class<E> type) {
        return text(field).flatMap(word -> choice(field, type, word));
    }

    public <E extends Enum<E>> Optional<E> choice(String field, Class<E> type, E otherwise) {
        return text(field, Words.of(otherwise)).flatMap(word -> choice(field, type, word));
    }

    private <E extends Enum<E>> Optional<E> choice(String field, Class<E> type, String word) {
        Optional<E> constant = Words.constant(type, word);
        if (constant.isEmpty()) {
            List<String> all = Words.all(type);
            tell(field, "must be one of " + Words.quoted(all) + ", not " + shown(word)
                    + Words.suggestion(word, all));
        }
        return constant;
    }

    /** A text that a value's own rules accept or refuse in one sentence. */
    public <T> Optional<T> named(String field, Function<String, T> value) {
        return text(field).flatMap(text -> {
            try {
                return Optional.of(value.apply(text));
            } catch (IllegalArgumentException refused) {
                tell(field, refused.getMessage());
                return Optional.empty();
            }
        });
    }

    // ---- numbers, times and yes or no

    public Optional<Long> whole(String field, long least, long most) {
        return required(field).flatMap(node -> {
            if (!node.isIntegralNumber()) {
                tell(field, "must be a whole number, not " + sort(node));
            } else if (!node.canConvertToLong() || node.longValue() < least || node.longValue() > most) {
                tell(field, "must be " + (most == Long.MAX_VALUE ? least + " or more" : least + " to " + most)
                        + ", not " + shorter(node.asText()));
            } else {
                return Optional.of(node.longValue());
            }
            return Optional.empty();
        });
    }

    public Optional<Double> number(String field, double least, double most) {
        return required(field).flatMap(n -> number(field, n, least, most));
    }

    /** A number that may be left out and whose own value's rules say how large it may be. */
    public Optional<Double> figure(String field) {
        return optional(field).flatMap(n -> number(field, n, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
    }

    private Optional<Double> number(String field, JsonNode node, double least, double most) {
        if (!node.isNumber()) {
            tell(field, "must be a number, not " + sort(node));
        } else if (!(node.doubleValue() >= least && node.doubleValue() <= most)) {
            tell(field, "must be " + plain(least) + " to " + plain(most) + ", not " + shorter(node.asText()));
        } else {
            return Optional.of(node.doubleValue() + 0.0); // -0 is 0, and is written as that
        }
        return Optional.empty();
    }

    /** A length in minutes, parts of a minute allowed; kept to the millisecond. */
    public Optional<Duration> minutes(String field) {
        return required(field).flatMap(n -> minutes(field, n));
    }

    public Optional<Duration> minutes(String field, Duration otherwise) {
        return optional(field).map(n -> minutes(field, n)).orElse(Optional.of(otherwise));
    }

    private Optional<Duration> minutes(String field, JsonNode node) {
        return number(field, node, -MOST_MINUTES, MOST_MINUTES)
                .map(minutes -> Duration.ofMillis(Math.round(minutes * 60_000)));
    }

    /** A moment, kept to the millisecond. */
    public Optional<Instant> instant(String field) {
        return text(field).flatMap(text -> {
            try {
                Instant instant = Instant.parse(text);
                if (Era.holds(instant)) {
                    return Optional.of(Instant.ofEpochMilli(instant.toEpochMilli()));
                }
                tell(field, TOO_FAR);
            } catch (DateTimeException notATime) {
                tell(field, "must be a time such as \"2027-03-04T18:30:00Z\", not " + shown(text));
            }
            return Optional.empty();
        });
    }

    public Optional<Instant> instant(String field, Instant otherwise) {
        return optional(field).isEmpty() ? Optional.of(otherwise) : instant(field);
    }

    public Optional<Boolean> yesOrNo(String field, boolean otherwise) {
        return optional(field).isEmpty() ? Optional.of(otherwise) : yesOrNo(field);
    }

    public Optional<Boolean> yesOrNo(String field) {
        return required(field).flatMap(node -> {
            if (!node.isBoolean()) {
                tell(field, "must be true or false, not " + sort(node));
                return Optional.empty();
            }
            return Optional.of(node.booleanValue());
        });
    }

    // ---- objects and lists within

    public boolean has(String field) {
        return optional(field).isPresent();
    }

    public boolean isText(String field) {
        return optional(field).filter(JsonNode::isTextual).isPresent();
    }

    /** A text that is read, and told of, elsewhere; empty if there is none. */
    public Optional<String> glimpse(String field) {
        return optional(field).filter(JsonNode::isTextual).map(JsonNode::textValue);
    }

    /** A number that is read, and told of, elsewhere; empty if there is none. */
    public Optional<Double> glimpseNumber(String field) {
        return optional(field).filter(JsonNode::isNumber).map(JsonNode::doubleValue);
    }

    public Optional<Fields> inner(String field) {
        return required(field).map(n -> new Fields(n, place(field), this::tell)).filter(f -> f.readable);
    }

    /** The tree of a field that somebody else reads, who tells problems with their full place. */
    public <T> Optional<T> tree(String field, TreeReader<T> reader) {
        return required(field).flatMap(n -> reader.read(n, place(field), this::tell));
    }

    /** Reads a tree that stands somewhere in a larger one. */
    public interface TreeReader<T> {
        Optional<T> read(JsonNode node, String pointer, Consumer<Finding> problems);
    }

    /**
     * Hands each entry that is an object to {@code reader}, in order; the others are told of.
     *
     * @param least 0 if the list may be left out
     * @return how many entries the list has; 0 if it is none
     */
    public int eachObject(String field, int least, int most, Consumer<Fields> reader) {
        return entries(field, least, most, (node, place) -> {
            Fields entry = new Fields(node, place, this::tell);
            if (entry.readable) {
                reader.accept(entry);
            }
        });
    }

    public <E extends Enum<E>> Set<E> choices(String field, Class<E> type) {
        Set<E> chosen = EnumSet.noneOf(type);
        List<String> all = Words.all(type);
        entries(field, 0, MOST_CHOICES, (node, place) -> Words.constant(type, node.textValue()).ifPresentOrElse(
                chosen::add,
                () -> tell(new Finding(place, "must be one of " + Words.quoted(all) + ", not "
                        + (node.isTextual() ? shown(node.textValue()) + Words.suggestion(node.textValue(), all)
                        : sort(node))))));
        return chosen;
    }

    private int entries(String field, int least, int most, BiConsumer<JsonNode, String> reader) {
        JsonNode list = (least == 0 ? optional(field) : required(field)).orElse(null);
        if (list == null) {
            return 0;
        }
        if (!list.isArray()) {
            tell(field, "must be a list in brackets, not " + sort(list));
            return 0;
        }
        if (list.size() < least || list.size() > most) {
            tell(field, "must have " + least + " to " + most + " entries, not " + list.size());
            return 0;
        }
        for (int i = 0; i < list.size(); i++) {
            reader.accept(list.get(i), place(field) + "/" + i);
        }
        return list.size();
    }

    /** Tells of the fields that nobody asked for: most are slips of the fingers. So many are not, and are counted. */
    public void noOthers() {
        int others = 0;
        for (Iterator<String> names = object.fieldNames(); names.hasNext();) {
            String name = names.next();
            if (!known.contains(name) && ++others <= MOST_SLIPS) {
                tell(name, "is not a field here" + Words.suggestion(name, known));
            }
        }
        if (others > MOST_SLIPS) {
            tell(new Finding(pointer, "has " + (others - MOST_SLIPS) + " fields more that are not fields here"));
        }
    }

    // ---- words for what was found instead

    private static String sort(JsonNode node) {
        return switch (node.getNodeType()) {
            case STRING -> "the text " + shown(node.textValue());
            case NUMBER -> "the number " + shorter(node.asText());
            case BOOLEAN -> node.asText();
            case ARRAY -> "a list";
            case OBJECT -> "an object";
            case NULL, MISSING -> "nothing";
            case BINARY, POJO -> "something else";
        };
    }

    private static String shown(String text) {
        return "\"" + shorter(text) + "\"";
    }

    public static String shorter(String text) {
        return Finding.onOneLine(text, 40);
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }
}
