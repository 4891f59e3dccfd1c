package rungwise.book;

import static j2html.TagCreator.a;
import static j2html.TagCreator.each;
import static j2html.TagCreator.join;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Basis;
import rungwise.rules.RuleInfo;
import rungwise.rules.said.Because;
import rungwise.text.Texts;

/** Links from the pages of one folder. What has no page stays plain text, so that no link leads nowhere. */
final class Links {
    private final KnowledgeBase base;
    private final Map<String, RuleInfo> rules;
    private final String root;

    Links(KnowledgeBase base, Map<String, RuleInfo> rules, String root) {
        this.base = base;
        this.rules = rules;
        this.root = root;
    }

    DomContent to(Chapter chapter, String id) {
        return name(chapter, id).map(n -> (DomContent) a(n).withHref(root + chapter.path(id)))
                .orElseGet(() -> text(Words.of(id)));
    }

    DomContent all(Chapter chapter, Collection<String> ids) {
        return listed(ids.stream().map(id -> to(chapter, id)).toList());
    }

    DomContent gate(String id) {
        return base.gates().containsKey(id) ? a(base.gates().get(id).name()).withHref(root + "gates.html#" + id)
                : text(Words.of(id));
    }

    DomContent tool(String id) {
        return base.tools().containsKey(id) ? a(base.tools().get(id).name()).withHref(root + "tools.html#" + id)
                : text(Words.of(id));
    }

    DomContent sources(Collection<String> ids) {
        return listed(ids.stream().map(id -> base.sources().containsKey(id)
                ? (DomContent) a(id).withHref(root + "sources.html#" + id) : text(id)).toList());
    }

    /** Where a statement comes from. */
    DomContent basis(Basis basis, Collection<String> ids) {
        String word = basis == Basis.MEMORY ? Texts.said("book.recalled") : Words.of(basis);
        return ids.isEmpty() ? text(word) : join(Texts.said("book.basis-sources", "basis", word), sources(ids));
    }

    /** What was said, each with a link to the rule or entry that says it. */
    DomContent reasons(List<Because> reasons) {
        return listed(reasons.stream().map(this::reason).toList(), " ");
    }

    private DomContent reason(Because because) {
        String says = Texts.chosen().fill(because.says(), because.figures());
        return Chapter.in(because.id().substring(0, because.id().indexOf('/')))
                .filter(chapter -> name(chapter, because.name()).isPresent())
                .map(chapter -> (DomContent) a(says).withHref(root + chapter.path(because.name()))).orElseGet(() -> text(says));
    }

    /** To what has this id, of whatever kind it is. */
    DomContent named(String id) {
        return Stream.of(Chapter.RULE, Chapter.CONTAMINANT, Chapter.SURFACE, Chapter.METHOD, Chapter.AGENT, Chapter.DECISION,
                        Chapter.ASSUMPTION).filter(chapter -> name(chapter, id).isPresent()).findFirst()
                .map(chapter -> to(chapter, id)).orElseGet(() -> text(Words.of(id)));
    }

    static DomContent listed(List<DomContent> parts) {
        return listed(parts, ", ");
    }

    private static DomContent listed(List<DomContent> parts, String between) {
        List<DomContent> all = new ArrayList<>();
        for (DomContent part : parts) {
            if (!all.isEmpty()) {
                all.add(text(between));
            }
            all.add(part);
        }
        return each(all, one -> one);
    }

    private Optional<String> name(Chapter chapter, String id) {
        return switch (chapter) {
            case CONTAMINANT -> Optional.ofNullable(base.contaminants().get(id)).map(c -> c.name());
            case SURFACE -> Optional.ofNullable(base.surfaces().get(id)).map(s -> s.name());
            case METHOD -> Optional.ofNullable(base.methods().get(id)).map(m -> m.name());
            case AGENT -> Optional.ofNullable(base.agents().get(id)).map(a -> a.name());
            case RULE -> Optional.ofNullable(rules.get(id)).map(RuleInfo::id);
            case MECHANISM -> Optional.ofNullable(base.mechanisms().get(id)).map(m -> Words.of(m.id()));
            case DECISION -> Optional.ofNullable(base.decisions().byId().get(id)).map(d -> Words.of(d.id()));
            case ASSUMPTION -> Optional.ofNullable(base.assumptions().byId().get(id)).map(a -> Words.of(a.id()));
            case CHECK -> Optional.of(id);
        };
    }
}
