package rungwise.lint;

import java.util.List;
import rungwise.knowledge.method.Mechanism;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;
import rungwise.text.Texts;

/** A surface on which every remover is barred: a limit that is too narrow, or a rule that is too wide. */
final class ClosedSurface implements LadderCheck {
    @Override
    public List<Finding> findings(Probes probes) {
        List<Method> removers = probes.known().methods().values().stream()
                // waiting for the sun touches nothing
                .filter(m -> m.kind() == MethodKind.REMOVE && m.mechanism() != Mechanism.FADE).toList();
        return probes.known().surfaces().keySet().stream()
                .filter(surface -> removers.stream().noneMatch(m -> probes.advisor().barsOn(surface, m.id()).isEmpty()))
                .map(surface -> Finding.of("surfaces/" + surface + ".yaml", surface, "",
                        Texts.said("lint.closed", "many", removers.size()),
                        Texts.said("lint.closed.do"))).toList();
    }
}
