package rungwise.ladder;

import rungwise.knowledge.KnowledgeBase;

/** What is worked out once for a knowledge base, as it depends on no question. */
record Worked(Volatiles volatiles, Gases gases, Fumes fumes, GloveChoice gloves, Rinses rinses) {
    Worked(KnowledgeBase base) {
        this(new Volatiles(base), new Gases(base), new Fumes(base), new GloveChoice(base), new Rinses(base));
    }
}
