package rungwise.knowledge.check;

import java.util.Locale;
import java.util.stream.Stream;

/** What is looked at while files are read, before any check sees entries together. */
public enum LoadingChecks {
    /** It is YAML. */
    READABLE,
    /** It lies where something reads it. */
    PLACE,
    /** It fits its schema. */
    SCHEMA,
    /** What a shop lays over the knowledge. */
    OVERLAY,
    /** Rules compile, and say of themselves what they must. */
    RULE,
    /** Rules name sources that exist. */
    RULE_SOURCE,
    /** Rules name ids that exist. */
    RULE_WORD,
    /** Every trait and nature is read by something, and some entry has it. */
    RULE_UNREAD;

    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Ids of all checks of this package. */
    public static Stream<String> ids() {
        return Stream.concat(Stream.of(values()).map(LoadingChecks::id), Check.ALL.stream().map(Check::id));
    }
}
