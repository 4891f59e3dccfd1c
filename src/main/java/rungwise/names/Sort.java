package rungwise.names;

import java.util.Locale;

/** The sorts of thing that a person looks up. */
public enum Sort {
    DEPOSITS, SURFACES, METHODS, SIGNS;

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
