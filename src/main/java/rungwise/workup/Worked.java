package rungwise.workup;

import rungwise.knowledge.KnowledgeBase;

/** What is worked out once for a knowledge base, as it depends on no question. */
public record Worked(Volatiles volatiles, Gases gases, Fumes fumes, GloveChoice gloves, Rinses rinses) {
    public Worked(KnowledgeBase base) {
        this(base, new Gases(base));
    }

    private Worked(KnowledgeBase base, Gases gases) {
        this(new Volatiles(base), gases, new Fumes(base, gases), new GloveChoice(base), new Rinses(base));
    }
}
