package rungwise.workup;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Substance;
import rungwise.knowledge.method.Agent;
import rungwise.science.Antoine;
import rungwise.science.Evaporation;
import rungwise.science.Units;
import rungwise.science.WetTime;

/** What of each agent evaporates. Worked out once for a knowledge base, as it depends on no question. */
public final class Volatiles {
    private static final String REFERENCE = "n_butyl_acetate";

    private final KnowledgeBase base;
    private final Map<String, Evaporation.Component> components = new HashMap<>();
    private final Map<String, List<Piece>> byAgent = new HashMap<>();

    /**
     * Something that evaporates.
     *
     * @param of   the substance named in the composition; a cut evaporates as several others
     * @param part with its percent by volume of the agent
     */
    public record Piece(Substance of, WetTime.Part part) {
    }

    public Volatiles(KnowledgeBase base) {
        this.base = base;
        base.substances().values().forEach(s -> component(s).ifPresent(c -> components.put(s.id(), c)));
        base.agents().values().forEach(a -> byAgent.put(a.id(), pieces(a)));
    }

    /** What listed evaporation rates are measured against; empty where knowledge leaves it out. */
    public Optional<Evaporation.Component> reference() {
        return Optional.ofNullable(components.get(REFERENCE));
    }

    public Evaporation.Component water() {
        return components.get("water");
    }

    /** A cut of petroleum as the substances that stand for it. */
    public List<Piece> of(Agent agent) {
        return byAgent.getOrDefault(agent.id(), List.of());
    }

    /** A liquid that leaves no vapour to speak of, or nobody told. */
    public boolean isSilent(Substance substance) {
        return substance.evaporatesAs().isEmpty() && !components.containsKey(substance.id());
    }

    private List<Piece> pieces(Agent agent) {
        List<Piece> pieces = new ArrayList<>();
        agent.composition().forEach((id, percent) -> {
            Substance substance = base.substances().get(id);
            double volumes = substance.evaporatesAs().entrySet().stream().mapToDouble(e -> e.getValue()
                    * base.substances().get(e.getKey()).molarVolumeCm3()).sum();
            substance.evaporatesAs().forEach((part, moles) -> {
                Substance stands = base.substances().get(part);
                if (components.containsKey(part)) {
                    pieces.add(new Piece(substance, new WetTime.Part(components.get(part),
                            percent * moles * stands.molarVolumeCm3() / volumes)));
                }
            });
            if (components.containsKey(id)) {
                pieces.add(new Piece(substance, new WetTime.Part(components.get(id), percent)));
            }
        });
        return List.copyOf(pieces);
    }

    private static Optional<Evaporation.Component> component(Substance s) {
        Optional<Antoine> vapour = s.antoine().or(() -> s.vapourKpa20C().flatMap(kpa -> s.boilingC()
                .map(boiling -> Antoine.through(20, kpa, boiling, Units.ATMOSPHERE_KPA))));
        return vapour.map(v -> new Evaporation.Component(s.molarMassGrams(), s.densityGramsPerCm3(), v,
                s.evaporationRate().orElse(0.0), s.id().equals("water"), s.besideWater()));
    }
}
