package rungwise.spot;

import java.util.List;

/**
 * Some spots, those kept first first.
 *
 * @param next cursor to go on from, also later when there is more
 * @param more whether there is more now
 */
public record SpotsListed(List<SpotListed> items, String next, boolean more) {
}
