package rungwise.workup;

import java.util.Optional;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.matter.DepositForm;
import rungwise.knowledge.method.Mechanism;
import rungwise.knowledge.method.MechanismWord;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.SurfaceKind;

/** What is seen where a method works: by how the deposit lies on this material, or by the way of working where that shows more. */
public final class Sight {
    private Sight() {
    }

    /** Of a deposit that is known by name on a surface. */
    public static String of(KnowledgeBase base, Method method, Contaminant deposit, Surface surface, boolean hardened) {
        MechanismWord word = base.mechanismOf(method);
        return word.ownSign() ? word.see() : deposit.on(surface).makeup().filter(m -> m.reaches(method, hardened))
                .flatMap(m -> method.role().flatMap(r -> Optional.ofNullable(m.reaches().get(r)))
                        .flatMap(r -> r.seen(lies(method, m.lies(hardened)), surface.mayBe(SurfaceKind.TEXTILE)))).orElse(word.see());
    }

    /** A vacuum takes what lies loose, however the rest may lie. */
    private static DepositForm lies(Method method, DepositForm form) {
        return method.mechanism() == Mechanism.SUCTION ? DepositForm.LOOSE_DUST : form;
    }
}
