package rungwise.rules;

/**
 * A step around the rungs.
 *
 * @param place  before, after
 * @param order  place among its like
 * @param name   method id, or a plain word where no method is meant (shade, mask, wait)
 * @param done   word by which the question says that it was done; empty = never skipped
 */
public record Step(String place, int order, String name, String text, String done, String figures)
        implements Conclusion {
}
