package rungwise.shoplog;

/**
 * An attempt that is in the log for good.
 *
 * @param again whether it was there before under the same key
 */
public record Kept(Attempt attempt, boolean again) {
}
