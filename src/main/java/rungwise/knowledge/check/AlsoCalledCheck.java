package rungwise.knowledge.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Entry;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.words.Spelling;
import rungwise.knowledge.words.Spoken;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;

/** A word that names two entries of a kind: which of them is meant would be a guess. */
final class AlsoCalledCheck implements Check {
    private static final List<List<Kind>> TOGETHER = List.of(List.of(Kind.CONTAMINANT, Kind.WIDE_DEPOSIT),
            List.of(Kind.SURFACE, Kind.WIDE_SURFACE), List.of(Kind.METHOD, Kind.WIDE_METHOD));

    @Override
    public List<Fault> faults(Draft draft) {
        Spoken spoken = new Spoken(draft.items(Kind.SPELLING, Spelling.class).values());
        return TOGETHER.stream().flatMap(kinds -> faults(draft, kinds, spoken)).toList();
    }

    private static Stream<Fault> faults(Draft draft, List<Kind> kinds, Spoken spoken) {
        List<Fault> faults = new ArrayList<>();
        Map<String, Entry> byForm = new HashMap<>();
        List<Entry> entries = kinds.stream().flatMap(draft::entries).filter(Entry::hasId).toList();
        // ids and names first, so that it is the other word that is at fault
        entries.forEach(entry -> names(entry).forEach(name -> byForm.putIfAbsent(spoken.form(name), entry)));
        for (Entry entry : entries) {
            for (String said : otherWords(entry)) {
                Entry first = byForm.putIfAbsent(spoken.form(said), entry);
                if (first != null && !(first.id().equals(entry.id()) && first.kind() == entry.kind())) {
                    faults.add(entry.fault("alsoCalled", Texts.said("fault.called-already", "word", said, "entry", first.id()),
                            Texts.said("fault.called-already.do")));
                }
            }
        }
        return faults.stream();
    }

    private static boolean isWide(Entry entry) {
        return entry.node().has("mayBe");
    }

    private static Stream<String> names(Entry entry) {
        JsonNode name = entry.node().path("name");
        return isWide(entry) ? Stream.empty() : Stream.concat(Stream.of(entry.id()),
                name.isString() ? Stream.of(name.stringValue()) : Stream.empty());
    }

    /** A wide word names nothing of its own, so that its id is a word as any other. */
    private static Set<String> otherWords(Entry entry) {
        Set<String> words = new LinkedHashSet<>(isWide(entry) ? List.of(entry.id()) : List.of());
        entry.node().path("alsoCalled").values().stream().filter(JsonNode::isString).forEach(w -> words.add(w.stringValue()));
        return words;
    }
}
