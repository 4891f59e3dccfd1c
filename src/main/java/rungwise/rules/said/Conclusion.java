package rungwise.rules.said;

import java.util.List;
import rungwise.text.Figure;

/** What a rule may assert. Rules only add conclusions; none takes one back. */
public sealed interface Conclusion extends Named permits Advice, After, Assume, Bar, Caution, Clash, Cleared,
        Climbed, Finer, FlushFirst, Gated, Halt, Hold, Leavable, Marring, MightBe, Moved, Narrow, Needless, NeighbourNote, Next, Protect, Pushes, Repeated,
        Replaces, Spared, Step, TreatAs {
    /** What was matched, in words and figures. */
    List<Figure> figures();

    /** All that it says in one text, by which conclusions of one rule are put in order; many of a kind write it cheaply. */
    default String key() {
        return toString();
    }
}
