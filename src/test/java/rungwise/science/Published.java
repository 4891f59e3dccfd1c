package rungwise.science;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Solute;
import rungwise.knowledge.chemistry.Substance;
import rungwise.knowledge.load.Mappers;
import tools.jackson.databind.JsonNode;

/** Published examples as data, and handbook substances as components. */
final class Published {
    static final KnowledgeBase KNOWN = Base.advisor().knowledge();

    private Published() {
    }

    static List<JsonNode> in(String file) {
        try {
            return List.copyOf(Mappers.yaml().readTree(Files.readString(Path.of("src/test/resources/science", file)))
                    .values());
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    static Hansen hansen(JsonNode three) {
        return new Hansen(three.path(0).asDouble(), three.path(1).asDouble(), three.path(2).asDouble());
    }

    static Substance substance(String id) {
        return KNOWN.substances().get(id);
    }

    static List<Sphere> spheres(String solute) {
        return KNOWN.solutes().get(solute).spheres().stream().map(Solute.Fit::sphere).toList();
    }

    /** Vapour pressure in kPa, of a cut by Raoult over what stands for it. */
    static double kpa(String id, double celsius) {
        Substance s = substance(id);
        if (s.evaporatesAs().isEmpty()) {
            return s.antoine().orElseThrow().kpa(celsius);
        }
        Map<String, Double> parts = new TreeMap<>(s.evaporatesAs());
        return Evaporation.raoultKpa(parts.keySet().stream().map(p -> substance(p).antoine().orElseThrow()).toList(),
                List.copyOf(parts.values()), celsius);
    }

    /** Thickness lost a second in moving air, by the bare flux, against n-butyl acetate. */
    static double rate(String id, double celsius) {
        return speed(id, celsius) / speed("n_butyl_acetate", celsius);
    }

    private static double speed(String id, double celsius) {
        Substance s = substance(id);
        if (s.evaporatesAs().isEmpty()) {
            return Evaporation.flux(1, s.molarMassGrams(), kpa(id, celsius), celsius) / s.densityGramsPerCm3();
        }
        return s.evaporatesAs().entrySet().stream().mapToDouble(e -> Evaporation.flux(1,
                substance(e.getKey()).molarMassGrams(), e.getValue() * kpa(e.getKey(), celsius), celsius)).sum()
                / s.densityGramsPerCm3();
    }
}
