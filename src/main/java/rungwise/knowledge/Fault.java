package rungwise.knowledge;

/**
 * Something wrong in a knowledge file.
 *
 * @param file   which file
 * @param place  where in it: an item id and a field, or a line
 * @param wrong  what is wrong and why it matters
 * @param remedy what to do
 */
public record Fault(String file, String place, String wrong, String remedy) {
    @Override
    public String toString() {
        return file + (place.isEmpty() ? "" : " at " + place) + ": " + wrong + "; " + remedy;
    }
}
