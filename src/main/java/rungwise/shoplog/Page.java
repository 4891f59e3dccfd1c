package rungwise.shoplog;

import java.util.List;

/**
 * Some attempts, oldest in the log first.
 *
 * @param next where to go on, also later when there is more
 * @param more whether there is more now
 */
public record Page(List<Attempt> items, Cursor next, boolean more) {
}
