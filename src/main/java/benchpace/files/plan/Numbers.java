package benchpace.files.plan;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** Numbers as people write them into these files: whole ones whole. */
final class Numbers {
    private Numbers() { }

    static void put(ObjectNode node, String field, double value) {
        if (value == Math.rint(value)) {
            node.put(field, (long) value);
        } else {
            node.put(field, value);
        }
    }

    /** Of a figure that is zero if it is left out. */
    static void unlessZero(ObjectNode node, String field, double value) {
        if (value != 0) {
            put(node, field, value);
        }
    }
}
