package rungwise.knowledge.check;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Entry;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.method.MechanismWord;
import rungwise.knowledge.method.Method;
import rungwise.text.Texts;

/** A method has the agent and the tool that the sentence of its mechanism names. */
final class MechanismCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        Map<String, MechanismWord> words = draft.items(Kind.MECHANISM, MechanismWord.class);
        return draft.each(Kind.METHOD, Method.class, (entry, method) -> {
            MechanismWord word = words.get(method.mechanism().id());
            if (word == null) {
                return Stream.empty();
            }
            return Stream.concat(missing(entry, word, "agent", word.namesAgent() && method.agent().equals("none")),
                    missing(entry, word, "tool", word.namesTool() && method.tool().equals("none")));
        });
    }

    private static Stream<Fault> missing(Entry entry, MechanismWord word, String what, boolean is) {
        return is ? Stream.of(entry.fault("mechanism", Texts.said("fault.no-such-part", "mechanism", word.id(), "part", what),
                Texts.said("fault.no-such-part.do", "part", what))) : Stream.empty();
    }
}
