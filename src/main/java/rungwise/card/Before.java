package rungwise.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Gate;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.text.Texts;

/** What is done before the spot is touched, line by line; all that has to be agreed in one of them. */
public record Before(KnowledgeBase base, Optional<SurfaceKind> kind, boolean solvent) {
    private static final Set<SurfaceKind> CLOTH = Set.of(SurfaceKind.TEXTILE, SurfaceKind.LEATHER, SurfaceKind.WOOD);
    private static final Set<SurfaceKind> AT_ONCE = Set.of(SurfaceKind.PAINT, SurfaceKind.METAL, SurfaceKind.GLASS, SurfaceKind.WHEEL);

    public static Before of(KnowledgeBase base, Answer answer, Answer.Rung rung) {
        List<SurfaceKind> kinds = answer.question().surface().stream().map(base.surfaces()::get).filter(Objects::nonNull).map(Surface::kind).distinct().toList();
        return new Before(base, kinds.size() == 1 ? Optional.of(kinds.get(0)) : Optional.empty(),
                rung.agent().map(a -> base.agents().get(a.id())).filter(a -> !a.solvents().isEmpty()).isPresent());
    }

    /**
     * The lines.
     *
     * @param due     in the order in which it is done
     * @param missing gates of the method that are still to be met
     */
    public List<String> lines(List<Answer.Due> due, List<Answer.GateState> missing) {
        Map<String, String> texts = new LinkedHashMap<>();
        List<Gate> agreements = new ArrayList<>();
        due.forEach(d -> add(d.step(), d.text(), texts, agreements));
        missing.stream().filter(g -> !base.gates().get(g.id()).asks()).sorted(Comparator.comparingInt(g -> base.gates().get(g.id()).turn()))
                .forEach(g -> add(g.id(), g.obtain(), texts, agreements));
        if (!agreements.isEmpty()) {
            texts.put(agreements.get(0).id(), agreements.size() == 1 ? agreements.get(0).obtain()
                    : Texts.said("card.agree", "what", list(agreements.stream().map(Gate::agrees).toList())));
        }
        return texts.values().stream().distinct().toList();
    }

    private void add(String step, String text, Map<String, String> texts, List<Gate> agreements) {
        Gate gate = base.gates().get(step);
        if (gate != null && gate.opens().testPassed()) {
            texts.putIfAbsent(step, kind.map(this::test).orElse(text));
        } else if (gate == null || !gate.needsAgreement()) {
            texts.putIfAbsent(step, text);
        } else if (!agreements.contains(gate)) {
            agreements.add(gate);
            texts.putIfAbsent(agreements.get(0).id(), "");
        }
    }

    /** The hidden test as it is on this material alone. */
    private String test(SurfaceKind on) {
        return Texts.said("card.test", "size", Texts.said(solvent ? "card.test-size-solvent" : "card.test-size"), "wait",
                Texts.said(CLOTH.contains(on) ? "card.test-wait-cloth" : AT_ONCE.contains(on) ? "card.test-wait-paint" : "card.test-wait-plastic"));
    }

    private static String list(List<String> all) {
        return Texts.said("card.agree-and", "most", String.join("; ", all.subList(0, all.size() - 1)), "last", all.get(all.size() - 1));
    }
}
