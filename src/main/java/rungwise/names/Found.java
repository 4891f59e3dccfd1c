package rungwise.names;

import java.util.List;

/**
 * What words may stand for, sort by sort.
 *
 * @param asked what was looked for
 * @param found in the order of sorts, the likeliest first
 */
public record Found(String revision, String asked, List<One> found) {
    public Found {
        found = List.copyOf(found);
    }

    /** How it was found. */
    public enum How {
        /** It is called so. */
        CALLED,
        /** The word is too wide, and it is one of what it may mean. */
        MAY_BE,
        /** Each word is one by which it is called. */
        PARTLY,
        /** Nothing is called so, and this is near. */
        NEAR;

        public String id() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * One thing.
     *
     * @param tell how to tell it from what it is taken for; empty where nothing says
     */
    public record One(String sort, String id, String name, String how, String tell) {
    }
}
