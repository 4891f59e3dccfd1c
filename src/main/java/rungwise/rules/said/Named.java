package rungwise.rules.said;

import java.util.List;
import java.util.Map;

/** Something that names entries of knowledge by their id, so that the ids can be held against what is there. */
public interface Named {
    /** What kind of entry an id is of. */
    enum Entry {
        METHOD,
        /** A method, or a plain word where a step needs none. */
        STEP,
        SURFACE,
        GATE,
        AGENT,
        /** What comes after an agent: another agent, or a tool. */
        AGENT_OR_TOOL,
        /** An item of protection. */
        PPE
    }

    /** The ids it names, by the kind of entry; a word that stands for every method is none. */
    Map<Entry, List<String>> named();
}
