package rungwise.book;

import static j2html.TagCreator.a;
import static j2html.TagCreator.each;
import static j2html.TagCreator.li;
import static j2html.TagCreator.text;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import rungwise.knowledge.KnowledgeBase;
import rungwise.lint.CheckPage;
import rungwise.rules.RuleInfo;
import rungwise.text.Texts;

/** The first page: everything by chapter, in order of name. */
final class IndexPage {
    private final KnowledgeBase base;
    private final Map<String, RuleInfo> rules;
    private final Links links;

    IndexPage(KnowledgeBase base, Map<String, RuleInfo> rules, Links links) {
        this.base = base;
        this.rules = rules;
        this.links = links;
    }

    Page page() {
        return new Sheet().say(Texts.said("book.index-page"))
                .add(ul(li(a(Texts.said("book.gates")).withHref("gates.html")), li(a(Texts.said("book.tools")).withHref("tools.html")),
                        li(a(Texts.said("book.sources")).withHref("sources.html"))))
                .list(Chapter.CONTAMINANT.title(), chapter(Chapter.CONTAMINANT, base.contaminants().values().stream()
                        .sorted(Comparator.comparing(c -> c.name())).map(c -> c.id()).toList()))
                .list(Chapter.SURFACE.title(), chapter(Chapter.SURFACE, base.surfaces().values().stream()
                        .sorted(Comparator.comparing(s -> s.name())).map(s -> s.id()).toList()))
                .list(Chapter.METHOD.title(), chapter(Chapter.METHOD, base.methods().values().stream()
                        .sorted(Comparator.comparing(m -> m.name())).map(m -> m.id()).toList()))
                .list(Chapter.AGENT.title(), chapter(Chapter.AGENT, base.agents().values().stream()
                        .sorted(Comparator.comparing(a -> a.name())).map(a -> a.id()).toList()))
                .list(Chapter.MECHANISM.title(), base.mechanisms().values().stream().map(m -> each(
                        links.to(Chapter.MECHANISM, m.id()), text(": " + MechanismPage.sentence(m)))).toList())
                .list(Chapter.RULE.title(), rules.values().stream().map(r -> each(links.to(Chapter.RULE, r.id()),
                        text(": " + r.says()))).toList())
                .list(Chapter.DECISION.title(), base.decisions().byId().values().stream().map(d -> each(
                        links.to(Chapter.DECISION, d.id()), text(": " + d.says()))).toList())
                .list(Chapter.ASSUMPTION.title(), base.assumptions().byId().values().stream().map(a -> each(
                        links.to(Chapter.ASSUMPTION, a.id()), text(": " + a.says()))).toList())
                .list(Chapter.CHECK.title(), CheckPage.all().values().stream().map(c -> each(
                        links.to(Chapter.CHECK, c.id()), text(": " + c.says()))).toList())
                .page("index.html", Texts.said("book.rule-book"));
    }

    private List<DomContent> chapter(Chapter chapter, List<String> ids) {
        return ids.stream().map(id -> links.to(chapter, id)).toList();
    }
}
