package rungwise.book;

import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.List;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.method.Agent;

/** What an agent is, as used, and which methods use it. */
final class AgentPage {
    private final KnowledgeBase base;
    private final Links links;

    AgentPage(KnowledgeBase base, Links links) {
        this.base = base;
        this.links = links;
    }

    Page of(Agent one) {
        Sheet sheet = new Sheet().fact("Form", Words.of(one.form()))
                .fact("Family", base.families().containsKey(one.family()) ? base.families().get(one.family()).name()
                        : Words.of(one.family()))
                .fact("pH as used", one.acidity().map(Object::toString).orElse("no water to speak of, or not known"))
                .fact("Reactive", String.join(", ", one.reactive().stream().map(Words::of).toList()))
                .fact("Dilution", one.dilution()).fact("Mix", one.mix())
                .fact("Rinse", one.residueRinse() == 0 ? "leaves nothing behind"
                        : Figures.text(one.residueRinse()) + " min of rinsing clear it")
                .fact("Sensitisers", String.join(", ", one.sensitisers().stream().map(Words::of).toList()))
                .fact("Always at hand", Words.yes(one.alwaysAtHand()))
                .fact("Sits on the panel", one.layer().map(l -> l.appliedMicrons() + " µm thick as put on").orElse(""));
        sheet.sentences("Protection", new Protection(base).of(one.ppe()))
                .sentences("Risks", one.risks())
                .table("Organic solvents as used", List.of("Kind", "% by volume"), one.solvents().entrySet().stream()
                        .map(e -> List.<DomContent>of(text(Words.of(e.getKey())),
                                text(Figures.text(e.getValue())))).toList())
                .table("Composition as used", List.of("Substance", "% by volume"), one.composition().entrySet()
                        .stream().map(e -> List.<DomContent>of(text(base.substances().get(e.getKey())
                                .name()), text(Figures.text(e.getValue())))).toList())
                .list("Methods that use it", base.methods().values().stream().filter(m -> m.agent().equals(one.id()))
                        .map(m -> links.to(Chapter.METHOD, m.id())).toList());
        return sheet.head("Where this comes from").fact("Basis", links.basis(one.basis(), one.sources()))
                .page(Chapter.AGENT.path(one.id()), one.name());
    }
}
