package rungwise.rules;

/** What a rule may assert. Rules only add conclusions; none takes one back. */
public sealed interface Conclusion permits Advice, Assume, Bar, Caution, Clash, After, Gated, Halt, Hold, FlushFirst, MightBe,
        Moved, Narrow, NeighbourNote, Protect, Step, TreatAs {
    /** What was matched, in words and figures. */
    String figures();
}
