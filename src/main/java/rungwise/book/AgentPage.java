package rungwise.book;

import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.List;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.method.Agent;
import rungwise.text.Texts;

/** What an agent is, as used, and which methods use it. */
final class AgentPage {
    private final KnowledgeBase base;
    private final Links links;

    AgentPage(KnowledgeBase base, Links links) {
        this.base = base;
        this.links = links;
    }

    Page of(Agent one) {
        Sheet sheet = new Sheet().fact("form", Words.of(one.form()))
                .fact("family", base.families().containsKey(one.family()) ? base.families().get(one.family()).name()
                        : Words.of(one.family()))
                .fact("ph-as-used", one.acidity().map(Object::toString).orElse(say("agent.no-acidity")))
                .fact("reactive", String.join(", ", one.reactive().stream().map(Words::of).toList()))
                .fact("dilution", one.dilution()).fact("mix", one.mix())
                .fact("rinse", one.residueRinse() == 0 ? say("agent.no-residue")
                        : say("agent.rinse", "minutes", one.residueRinse()))
                .fact("sensitisers", String.join(", ", one.sensitisers().stream().map(Words::of).toList()))
                .fact("always-at-hand", Words.yes(one.alwaysAtHand()))
                .fact("sits-on-the-panel", one.layer().map(l -> say("agent.layer", "microns", l.appliedMicrons())).orElse(""));
        sheet.sentences("protection", new Protection(base).of(one.ppe()))
                .sentences("risks", one.risks())
                .table("organic-solvents-as-used", List.of("kind", "by-volume"), one.solvents().entrySet().stream()
                        .map(e -> List.<DomContent>of(text(Words.of(e.getKey())),
                                text(Figures.text(e.getValue())))).toList())
                .table("composition-as-used", List.of("substance", "by-volume"), one.composition().entrySet()
                        .stream().map(e -> List.<DomContent>of(text(base.substances().get(e.getKey())
                                .name()), text(Figures.text(e.getValue())))).toList())
                .list("methods-that-use-it", base.methods().values().stream().filter(m -> m.agent().equals(one.id()))
                        .map(m -> links.to(Chapter.METHOD, m.id())).toList());
        return sheet.head("where-this-comes-from").fact("basis", links.basis(one.basis(), one.sources()))
                .page(Chapter.AGENT.path(one.id()), one.name());
    }

    private static String say(String id, Object... named) {
        return Texts.said("book." + id, named);
    }
}
