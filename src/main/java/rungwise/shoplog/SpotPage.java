package rungwise.shoplog;

import java.util.List;

/**
 * Some spots, those kept first first.
 *
 * @param next where to go on, also later when there is more
 * @param more whether there is more now
 */
public record SpotPage(List<KeptSpot> items, Cursor next, boolean more) {
}
