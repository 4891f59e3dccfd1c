package rungwise.rules.said;

import java.util.Locale;

/** What may be done next, the most urgent first: of several that the rules conclude the first of these counts. */
public enum Action {
    HOLD, FLUSH, STOP, DONE, WAIT, REASSESS, LEAVE, REFER, PREPARE, TEST, REPEAT, TRY;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether it ends all work for now, so that nothing else may be named beside it. */
    public boolean stops() {
        return this == HOLD || this == FLUSH || this == STOP;
    }
}
