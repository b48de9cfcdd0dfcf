package benchpace.shelf;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The shelves of the shop, in the order in which they are to be filled. */
public record ShelfLayout(List<Board> boards) {
    /** One shelf. @param places 1 to 200 */
    public record Board(String name, int places) {
        public Board {
            if (name == null || name.isBlank() || name.length() > 30
                    || name.chars().anyMatch(Character::isISOControl)) {
                throw new IllegalArgumentException("a shelf needs a name of at most 30 characters");
            }
            if (places < 1 || places > 200) {
                throw new IllegalArgumentException("shelf \"" + name + "\" must have 1 to 200 places, not " + places);
            }
        }
    }

    public ShelfLayout {
        boards = List.copyOf(boards);
        Set<String> names = new HashSet<>();
        for (Board board : boards) {
            if (!names.add(board.name())) {
                throw new IllegalArgumentException("two shelves are called \"" + board.name() + "\"");
            }
        }
        if (boards.isEmpty()) {
            throw new IllegalArgumentException("the layout has no shelf");
        }
    }

    /** All places, shelf by shelf from the left. */
    public Stream<ShelfPlace> places() {
        return boards.stream().flatMap(b -> IntStream.rangeClosed(1, b.places())
                .mapToObj(n -> new ShelfPlace(b.name(), n)));
    }

    public boolean has(ShelfPlace place) {
        return boards.stream().anyMatch(b -> b.name().equals(place.shelf()) && place.number() <= b.places());
    }
}
