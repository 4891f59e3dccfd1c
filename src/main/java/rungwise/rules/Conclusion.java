package rungwise.rules;

import java.util.List;
import rungwise.text.Figure;

/** What a rule may assert. Rules only add conclusions; none takes one back. */
public sealed interface Conclusion extends Named permits Advice, Assume, Bar, Caution, Clash, After, Gated, Halt, Hold, FlushFirst, MightBe,
        Moved, Narrow, NeighbourNote, Protect, Step, TreatAs {
    /** What was matched, in words and figures. */
    List<Figure> figures();

    /** All that it says in one text, by which conclusions of one rule are put in order; many of a kind write it cheaply. */
    default String key() {
        return toString();
    }
}
