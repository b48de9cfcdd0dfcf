package benchpace.shelf;

/**
 * One place on a named shelf, as written on the shelf's edge: "Window 3".
 *
 * @param shelf  the shelf's name
 * @param number 1 and up, from the left
 */
public record ShelfPlace(String shelf, int number) implements Comparable<ShelfPlace> {
    public ShelfPlace {
        if (shelf == null || shelf.isBlank() || number < 1) {
            throw new IllegalArgumentException("a shelf place has a shelf's name and a number from 1 on");
        }
    }

    @Override public int compareTo(ShelfPlace o) {
        int byShelf = shelf.compareTo(o.shelf);
        return byShelf != 0 ? byShelf : Integer.compare(number, o.number);
    }

    @Override public String toString() {
        return shelf + " " + number;
    }
}
