package rungwise.knowledge;

/**
 * Something published that was read.
 *
 * @param strength how far to trust it, where that was judged: strong, medium, weak
 */
public record Source(String id, String title, String publisher, String year, String section, String url,
                     String strength) {
}
