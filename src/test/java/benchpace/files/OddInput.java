package benchpace.files;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;

/**
 * Nearly sound input: what readers take, changed in one or a few places by something that some reader somewhere gets
 * wrong. From a seed, so that every case can be made again.
 */
public final class OddInput {
    /** What no answer, sentence or page may hold: it is about the machine and not about the input. */
    public static final Pattern LEAKS = Pattern.compile("\\bjava[x.]|jakarta\\.|com\\.fasterxml|io\\.javalin|"
            + "org\\.(eclipse|sqlite|apache)|benchpace\\.[a-z]+[.$]|Exception\\b|\\bError:|IllegalArg|StreamRead|"
            + "JsonNode|Feature\\.|\\(Source|\\[Source|SQLITE_|\\tat |Optional[\\[.]|No enum constant|For input string|"
            + "could not be parsed|must not be null");

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final List<String> TEXTS = List.of("", " ", "\u0000", "a\nb", "\r\n", "\u2028", "\ud83d", "\udc00x",
            "\ufeff", "\u202eabc", "0", "-1", "1e400", "NaN", "null", "true", "2027-03-04T18:30:00Z",
            "2027-02-30T18:30:00Z", "2027-03-04T18:30:60Z", "2027-03-04T24:00:00Z", "-999999999-01-01T00:00:00Z",
            "+999999999-12-31T23:59:59.999999999Z", "2027-03-04T18:30:00+18:00", "2027-03-04", "PT1H", "Ida",
            "<script>", "../../x", "%00", "'; drop table event; --", "${7*7}", "a/b", "A".repeat(65), "create",
            "board.x", "evening-pour", "wicks", "pour", "cure", "labels", "\uD83D\uDD6F\uFE0F", "i\u0307", "\u00df",
            "maple 42", "8 oz", "8 fl oz", "145 \u00b0F", "1/0 oz", "1,361 g", "3 lb 4 oz", "pot",
            "of-total");
    private static final List<String> NUMBERS = List.of("0", "-0", "1", "-1", "2", "60", "61", "1.5", "1e0", "1E+2",
            "-0.0", "0.1e-400", "1e400", "-1e400", "1e999999999", "1e-999999999", "2147483648", "-2147483649",
            "9223372036854775807", "9223372036854775808", "123456789012345678901234567890", "3.0000000000000001");
    private static final List<String> NO_NUMBERS = List.of("NaN", "Infinity", "-Infinity", "+1", "01", "1.", ".5",
            "0x10", "1e", "--1", "1_000", "\u0661", "9".repeat(70), "0." + "3".repeat(200));

    private final Random random;

    public OddInput(Random random) {
        this.random = random;
    }

    @SafeVarargs private <T> T of(T... some) {
        return some[random.nextInt(some.length)];
    }

    private <T> T of(List<T> some) {
        return some.get(random.nextInt(some.size()));
    }

    /** Text that some field takes, or none. */
    public String text() {
        return switch (random.nextInt(12)) {
            case 0 -> "x".repeat(random.nextInt(3) == 0 ? 60_000 : random.nextInt(600));
            case 1 -> random.ints(random.nextInt(20), 0, 0x11_0000).filter(c -> c < 0xD800 || c > 0xDFFF)
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
            case 2 -> of(TEXTS) + of(TEXTS);
            default -> of(TEXTS);
        };
    }

    private JsonNode value() {
        return switch (random.nextInt(10)) {
            case 0 -> NODES.nullNode();
            case 1 -> NODES.booleanNode(random.nextBoolean());
            case 2 -> NODES.arrayNode();
            case 3 -> NODES.objectNode();
            case 4 -> NODES.numberNode(new BigDecimal(of("0", "1", "-1", "1.5", "61", "1e20", "99999999999")));
            case 5 -> NODES.numberNode(random.nextInt(70) - 3);
            case 6 -> NODES.arrayNode().add(value());
            case 7 -> NODES.objectNode().set(of("id", "seat", "kind", "name"), NODES.textNode(text()));
            default -> NODES.textNode(text());
        };
    }

    /** Sound JSON with one to three of its values changed, left out, moved or said again. */
    public JsonNode tree(JsonNode sound) {
        JsonNode tree = sound.deepCopy();
        for (int i = random.nextInt(3); i >= 0 && tree instanceof ContainerNode; i--) {
            change(tree);
        }
        return random.nextInt(40) == 0 ? value() : tree;
    }

    private void change(JsonNode tree) {
        List<JsonNode> containers = new ArrayList<>();
        collect(tree, containers);
        JsonNode where = of(containers);
        if (where instanceof ObjectNode object) {
            List<String> names = new ArrayList<>();
            object.fieldNames().forEachRemaining(names::add);
            String name = names.isEmpty() ? "x" : of(names);
            switch (random.nextInt(6)) {
                case 0 -> object.remove(name);
                case 1 -> object.set(text(), value());
                case 2 -> object.set(name.toUpperCase(java.util.Locale.ROOT), value());
                default -> object.set(name, value());
            }
        } else if (where instanceof ArrayNode array) {
            int at = array.isEmpty() ? 0 : random.nextInt(array.size());
            switch (random.nextInt(array.isEmpty() ? 1 : 5)) {
                case 0 -> array.insert(at, value());
                case 1 -> array.remove(at);
                case 2 -> array.insert(at, array.get(at).deepCopy());
                case 3 -> array.removeAll();
                default -> array.set(at, value());
            }
        }
    }

    private static void collect(JsonNode node, List<JsonNode> into) {
        if (node.isContainerNode()) {
            into.add(node);
            node.forEach(child -> collect(child, into));
        }
    }

    /** The same as bytes, half of the time broken as text, too. */
    public byte[] json(JsonNode sound) {
        String text = Json.text(tree(sound));
        return random.nextBoolean() ? text.getBytes(StandardCharsets.UTF_8) : broken(text);
    }

    /** Any text with something in it that belongs to no text of its kind. */
    public byte[] broken(String text) {
        int at = text.isEmpty() ? 0 : random.nextInt(text.length());
        String odd = switch (random.nextInt(12)) {
            case 0 -> text.substring(0, at);
            case 1 -> text.substring(at);
            case 2 -> "\uFEFF" + text;
            case 3 -> text + of(",", "}", "]", "{}", "\u0000", "//", "\n\n" + text);
            case 4 -> text.replaceFirst("\"([a-zA-Z]+)\":", "\"$1\":1,\"$1\":");
            case 5 -> text.replaceFirst(":\\s*-?[0-9.]+", ":" + of(random.nextBoolean() ? NUMBERS : NO_NUMBERS));
            case 6 -> text.substring(0, at) + of("[", "{\"a\":").repeat(of(5, 45, 5_000)) + text.substring(at);
            case 7 -> text.substring(0, at) + of("\u0001", "\t", "\\u", "\\ud83d", "\\x", "'", "\"", "\\")
                    + text.substring(at);
            case 8 -> text.replace('"', '\'');
            case 9 -> text.substring(0, at) + "9".repeat(of(20, 70, 3_000)) + text.substring(at);
            case 10 -> text.substring(0, at) + text() + text.substring(at);
            default -> text.replaceFirst(":\"[^\"]*\"", ":" + of(NUMBERS));
        };
        return random.nextInt(4) == 0 ? noText(odd) : odd.getBytes(StandardCharsets.UTF_8);
    }

    /** With bytes that are no UTF-8 (RFC 3629: overlong, surrogates, cut off, beyond the last plane). */
    private byte[] noText(String text) {
        byte[] sound = text.getBytes(StandardCharsets.UTF_8);
        int at = sound.length == 0 ? 0 : random.nextInt(sound.length);
        ByteArrayOutputStream odd = new ByteArrayOutputStream();
        odd.write(sound, 0, at);
        odd.writeBytes(of(new byte[] {(byte) 0xC0, (byte) 0x80}, new byte[] {(byte) 0xED, (byte) 0xA0, (byte) 0x80},
                new byte[] {(byte) 0xE2, (byte) 0x82}, new byte[] {(byte) 0xF5, (byte) 0x80}, new byte[] {(byte) 0xFF},
                new byte[] {(byte) 0xC3, 0x28}));
        odd.write(sound, at, sound.length - at);
        return odd.toByteArray();
    }
}
