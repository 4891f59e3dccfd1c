package rungwise.book;

import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.MechanismWord;
import rungwise.text.Figure;
import rungwise.text.Texts;

/** What a way of working does, and which methods work by it. */
final class MechanismPage {
    private final KnowledgeBase base;
    private final Links links;

    MechanismPage(KnowledgeBase base, Links links) {
        this.base = base;
        this.links = links;
    }

    Page of(MechanismWord one) {
        return new Sheet().say(sentence(one)).fact("cause", one.cause()).fact("see", one.see()).fact("basis", links.basis(one.basis(), one.sources()))
                .list("methods-by-it", base.methods().values().stream().filter(m -> m.mechanism().id().equals(one.id()))
                        .map(m -> links.to(Chapter.METHOD, m.id())).toList())
                .page(Chapter.MECHANISM.path(one.id()), Texts.said("book.mechanism", "name", Words.of(one.id())));
    }

    /** Of no agent, tool and deposit in particular. */
    static String sentence(MechanismWord one) {
        return Texts.chosen().fill(one.says(), java.util.List.of("agent", "tool", "deposit").stream()
                .map(name -> Figure.of(name, Texts.said("mechanism." + name))).toList());
    }
}
