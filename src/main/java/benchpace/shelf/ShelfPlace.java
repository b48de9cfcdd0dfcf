package benchpace.shelf;

/**
 * One place on a named shelf, as written on the shelf's edge: "Window 3".
 *
 * @param shelf  the shelf's name
 * @param number 1 and up, from the left
 */
public record ShelfPlace(String shelf, int number) {
    public ShelfPlace {
        if (shelf == null || shelf.isBlank() || number < 1) {
            throw new IllegalArgumentException("a shelf place has a shelf's name and a number from 1 on");
        }
    }

    @Override public String toString() {
        return shelf + " " + number;
    }
}
