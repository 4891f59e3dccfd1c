package rungwise.card;

import java.util.Optional;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.Surface;
import rungwise.workup.Sight;

/**
 * What the answer says of the deposit and of where it lies.
 *
 * @param deposit  empty where it is not known by name
 * @param surface  empty where it may be several
 * @param hardened whether it is more likely hardened than not
 */
public record Lying(Optional<Contaminant> deposit, Optional<Surface> surface, boolean hardened) {
    private static final double LIKELIER = 0.5;

    public static Lying of(KnowledgeBase base, Answer answer) {
        return new Lying(answer.question().contaminant().map(base.contaminants()::get),
                Optional.of(answer.question().surface()).filter(told -> told.size() == 1).map(told -> base.surfaces().get(told.get(0))),
                answer.ladder().filter(l -> l.belief().hardened() >= LIKELIER).isPresent());
    }

    /** What is seen where a method works on it: by how it lies, where all of that is known. */
    public Optional<String> seen(KnowledgeBase base, Method method) {
        return deposit.flatMap(d -> surface.map(s -> Sight.of(base, method, d, s, hardened)));
    }

    /** The chance of a method on it; none where it is not known by name. */
    double chance(Method method) {
        return deposit.map(d -> surface.map(d::on).orElse(d).chances(method).of(hardened).probability()).orElse(0.0);
    }
}
