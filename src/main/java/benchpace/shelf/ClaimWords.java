package benchpace.shelf;

import java.util.List;
import java.util.Set;

/**
 * Draws claim words: everyday things of garden, kitchen and weather, short, easily spelt after hearing, none the
 * start of another, rhyming pairs left out, none that could hurt anybody. Our own list.
 */
public final class ClaimWords {
    private static final List<String> WORDS = List.of(
            "acorn", "almond", "anchor", "apple", "apricot", "autumn", "badger", "bamboo", "banjo", "basil",
            "basket", "beaver", "birch", "biscuit", "blanket", "bottle", "breeze", "bridge", "bronze", "butter",
            "button", "cactus", "canoe", "canvas", "caramel", "carpet", "carrot", "castle", "cedar", "cherry",
            "cinnamon", "clover", "cobalt", "coconut", "copper", "coral", "cotton", "cricket", "crystal", "curtain",
            "daisy", "dolphin", "dragon", "eagle", "ember", "engine", "falcon", "feather", "fennel", "fiddle",
            "flannel", "forest", "fountain", "garden", "garlic", "ginger", "giraffe", "guitar", "hammock", "harbour",
            "hazel", "hedgehog", "honey", "igloo", "island", "ivory", "jacket", "jasmine", "jigsaw", "juniper",
            "kettle", "ladder", "lagoon", "lantern", "laurel", "lavender", "lemon", "lilac", "lizard", "lobster",
            "magnet", "mango", "maple", "marble", "meadow", "melon", "mirror", "mitten", "muffin",
            "napkin", "nectar", "nutmeg", "ocean", "olive", "onion", "orange", "orchid", "otter", "panda",
            "parsley", "pebble", "pelican", "pencil", "pepper", "piano", "planet", "pocket", "poppy", "pumpkin",
            "puzzle", "rabbit", "radish", "rainbow", "raven", "ribbon", "river", "saddle", "saffron", "salmon",
            "sandal", "scarf", "shadow", "silver", "sparrow", "spinach", "spoon", "squirrel", "sunset", "teapot",
            "thimble", "thistle", "thunder", "tiger", "timber", "toffee", "tomato", "trumpet", "tulip", "turtle",
            "umbrella", "valley", "vanilla", "velvet", "violet", "waffle", "walnut", "willow", "window",
            "winter", "yellow", "zebra");

    private ClaimWords() { }

    /** All words of the list. */
    static List<String> all() {
        return WORDS;
    }

    /**
     * A claim word that is not taken. The word alone is also avoided while there are unused words, so that a misheard
     * number still finds one candle.
     *
     * @param seed  any number; the same seed and taken words give the same claim word
     * @param taken the claim words now on the shelf; fewer than all there are
     */
    public static ClaimWord draw(long seed, Set<ClaimWord> taken) {
        int all = WORDS.size() * 90;
        int start = (int) Math.floorMod(mix(seed), (long) all);
        for (int pass = 0; pass < 2; pass++) {
            for (int i = 0; i < all; i++) {
                // 7919 is prime and no divisor of the count, so the walk meets every claim word once
                int at = (int) ((start + 7919L * i) % all);
                ClaimWord word = new ClaimWord(WORDS.get(at % WORDS.size()), 10 + at / WORDS.size());
                boolean wordUsed = taken.stream().anyMatch(t -> t.word().equals(word.word()));
                if (!taken.contains(word) && (pass == 1 || !wordUsed)) {
                    return word;
                }
            }
        }
        throw new IllegalArgumentException("all " + all + " claim words are taken");
    }

    /** Spreads neighbouring seeds: the finaliser of splitmix64 (Steele, Lea and Flood 2014; from memory). */
    private static long mix(long seed) {
        long z = seed + 0x9E3779B97F4A7C15L;
        z = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
        z = (z ^ z >>> 27) * 0x94D049BB133111EBL;
        return z ^ z >>> 31;
    }
}
