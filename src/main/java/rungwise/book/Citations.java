package rungwise.book;

import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import rungwise.rules.RuleInfo;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Who cites which source: every entry of every kind is walked, so that a citation deep inside one counts too. */
final class Citations {
    private static final ObjectMapper MAPPER = Mappers.json();

    private final Map<String, List<DomContent>> bySource = new TreeMap<>();

    Citations(KnowledgeBase base, Map<String, RuleInfo> rules, Links links) {
        Map<Chapter, Map<String, ?>> paged = new LinkedHashMap<>();
        paged.put(Chapter.CONTAMINANT, base.contaminants());
        paged.put(Chapter.SURFACE, base.surfaces());
        paged.put(Chapter.METHOD, base.methods());
        paged.put(Chapter.AGENT, base.agents());
        paged.put(Chapter.RULE, rules);
        paged.put(Chapter.MECHANISM, base.mechanisms());
        paged.put(Chapter.DECISION, base.decisions().byId());
        paged.put(Chapter.ASSUMPTION, base.assumptions().byId());
        paged.forEach((chapter, entries) -> entries.forEach((id, entry) -> cite(entry, links.to(chapter, id))));
        base.gates().forEach((id, gate) -> cite(gate, links.gate(id)));
        base.tools().forEach((id, tool) -> cite(tool, links.tool(id)));
        plain("family", base.families());
        plain("circumstance", base.circumstances());
        plain("sign", base.observations());
        plain("exposure", base.exposures());
        plain("glove-chart", base.gloves());
        plain("respirator", base.respirators());
        plain("substance", base.substances());
        plain("sphere", base.solutes());
        plain("check", base.signs().checks());
        plain("strength-of-evidence", base.signs().strengths());
        plain("frequency", base.signs().frequencies());
    }

    List<DomContent> of(String source) {
        return bySource.getOrDefault(source, List.of());
    }

    private void plain(String kind, Map<String, ?> entries) {
        entries.forEach((id, entry) -> cite(entry, text(Texts.said("book.cites." + kind, "name", Words.of(id)))));
    }

    private void cite(Object entry, DomContent who) {
        TreeSet<String> cited = new TreeSet<>();
        walk(MAPPER.valueToTree(entry), cited);
        cited.forEach(s -> bySource.computeIfAbsent(s, k -> new ArrayList<>()).add(who));
    }

    private static void walk(JsonNode node, TreeSet<String> cited) {
        node.path("sources").forEach(s -> cited.add(s.asString()));
        node.forEach(child -> walk(child, cited));
    }
}
