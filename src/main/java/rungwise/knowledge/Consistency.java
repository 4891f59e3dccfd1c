package rungwise.knowledge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Faults that show only when all entries are seen together. */
final class Consistency {
    private static final double POINTLESS_BELOW = 0.10;

    private final KnowledgeBase base;
    private final Map<String, String> fileOf;
    private final List<Fault> faults = new ArrayList<>();

    Consistency(KnowledgeBase base, Map<String, String> fileOf) {
        this.base = base;
        this.fileOf = fileOf;
    }

    List<Fault> faults() {
        base.methods().values().forEach(this::method);
        base.agents().values().forEach(this::agent);
        base.tools().values().forEach(t -> {
            known("Tool", t.id(), "ppe", t.ppe(), base.ppe().keySet());
            source("Tool", t.id(), t.basis(), t.sources());
        });
        base.contaminants().values().forEach(this::contaminant);
        base.surfaces().values().forEach(this::surface);
        base.observations().values().forEach(this::observation);
        base.gates().values().forEach(g -> source("Gate", g.id(), g.basis(), g.sources()));
        base.families().values().forEach(f -> source("Family", f.id(), f.basis(), f.sources()));
        base.circumstances().values().forEach(c -> source("Circumstance", c.id(), c.basis(), c.sources()));
        unused();
        return faults;
    }

    private void method(Method m) {
        String kind = "Method";
        if (!m.agent().equals("none")) {
            known(kind, m.id(), "agent", List.of(m.agent()), base.agents().keySet());
        }
        if (!m.tool().equals("none")) {
            known(kind, m.id(), "tool", List.of(m.tool()), base.tools().keySet());
        }
        known(kind, m.id(), "family", List.of(m.family()), base.families().keySet());
        known(kind, m.id(), "gates", m.gates(), base.gates().keySet());
        known(kind, m.id(), "afterwards", m.afterwards(), base.methods().keySet());
        known(kind, m.id(), "correction", m.correction(), base.methods().keySet());
        known(kind, m.id(), "waste", List.of(m.waste()), base.wastes().keySet());
        known(kind, m.id(), "level", List.of(m.level()), base.levels().keySet());
        known(kind, m.id(), "ppe", m.ppe(), base.ppe().keySet());
        known(kind, m.id(), "chances", m.chances().keySet(), base.bondClasses().keySet());
        known(kind, m.id(), "softens", m.softens(), base.bondClasses().keySet());
        source(kind, m.id(), m.basis(), m.sources());
        if (m.window().filter(w -> w.from() > 25).isPresent()) {
            fault(kind, m.id(), "window", "it starts above 25 °C, so a hotter panel would add a method",
                    "state the temperature at which it may start, and what it puts on the surface as contactC");
        }
        m.chances().forEach((bond, c) -> {
            if (c.hardened().probability() > c.fresh().probability()) {
                fault(kind, m.id(), "chances/" + bond, "hardened is likelier than fresh",
                        "age never helps within one bond class; swap or mend the two");
            }
        });
        Agent agent = base.agents().get(m.agent());
        if (agent != null && agent.residueRinse() > 0 && m.kind() == MethodKind.REMOVE && m.afterwards().stream()
                .map(base.methods()::get).noneMatch(a -> a != null && Set.of("water", "wash").contains(a.family()))) {
            fault(kind, m.id(), "afterwards", "its agent leaves a residue and nothing rinses it",
                    "add a rinse or a wash");
        }
        if (m.kind() == MethodKind.REMOVE && !m.family().equals("barred_chemistry") && base.contaminants().values()
                .stream().noneMatch(c -> Math.max(c.chances(m).fresh().probability(),
                        c.chances(m).hardened().probability()) >= POINTLESS_BELOW)) {
            fault(kind, m.id(), "chances", "no contaminant needs it",
                    "leave it out, or add the contaminant that it is for");
        }
    }

    private void agent(Agent a) {
        known("Agent", a.id(), "ppe", a.ppe(), base.ppe().keySet());
        known("Agent", a.id(), "family", List.of(a.family()), base.families().keySet());
        source("Agent", a.id(), a.basis(), a.sources());
        a.acidity().filter(r -> r.from() < 0 || r.to() > 14).ifPresent(r -> fault("Agent", a.id(), "acidity",
                "pH " + r + " lies outside 0 to 14", "state the pH as used"));
        if (a.solvents().values().stream().mapToDouble(Double::doubleValue).sum() > 100) {
            fault("Agent", a.id(), "solvents", "they add up to more than 100 %", "state percent by volume as used");
        }
    }

    private void contaminant(Contaminant c) {
        String kind = "Contaminant";
        known(kind, c.id(), "bond", List.of(c.bond().fresh(), c.bond().hardened()), base.bondClasses().keySet());
        known(kind, c.id(), "ppe", c.ppe(), base.ppe().keySet());
        known(kind, c.id(), "gainsWithAge", c.gainsWithAge(), base.methods().keySet());
        c.emergency().ifPresent(e -> known(kind, c.id(), "emergency/method", List.of(e.method()),
                base.methods().keySet()));
        c.refersTo().ifPresent(r -> known(kind, c.id(), "refersTo", List.of(r), base.methods().keySet()));
        source(kind, c.id(), c.basis(), c.sources());
        for (Contaminant.Override o : c.overrides()) {
            known(kind, c.id(), "overrides/methods", o.methods(), base.methods().keySet());
            source(kind, c.id(), o.basis(), o.sources());
        }
        if (c.hardens().hot() > c.hardens().cool() || c.marks().hot() > c.marks().cool()) {
            fault(kind, c.id(), "hardens", "it takes longer on a hot panel than on a cool one", "swap the two figures");
        }
        TreeSet<String> gains = new TreeSet<>();
        base.methods().values().forEach(m -> {
            Chances chances = c.chances(m);
            if (chances.hardened().probability() > chances.fresh().probability()) {
                gains.add(m.id());
            }
        });
        if (!gains.equals(new TreeSet<>(c.gainsWithAge()))) {
            fault(kind, c.id(), "gainsWithAge", "it lists " + new TreeSet<>(c.gainsWithAge())
                    + " but the chances rise for " + gains, "list exactly the methods that gain, or mend the chances");
        }
    }

    private void surface(Surface s) {
        known("Surface", s.id(), "wayOut", List.of(s.wayOut()), base.methods().keySet());
        source("Surface", s.id(), s.basis(), s.sources());
        for (SolventColumn column : SolventColumn.values()) {
            Limit limit = s.solvents().get(column);
            if (limit == null) {
                fault("Surface", s.id(), "solvents", "it says nothing of " + column.name().toLowerCase(),
                        "state all five columns");
            } else {
                known("Surface", s.id(), "solvents/sources", limit.sources(), base.sources().keySet());
            }
        }
    }

    private void observation(Observation o) {
        o.treatAs().ifPresent(t -> known("Observation", o.id(), "treatAs", List.of(t), base.surfaces().keySet()));
        known("Observation", o.id(), "pointsTo", o.pointsTo(), base.contaminants().keySet());
        known("Observation", o.id(), "against", o.against(), base.contaminants().keySet());
        source("Observation", o.id(), o.basis(), o.sources());
    }

    private void unused() {
        Set<String> agents = new TreeSet<>(base.agents().keySet());
        Set<String> tools = new TreeSet<>(base.tools().keySet());
        Set<String> families = new TreeSet<>(base.families().keySet());
        base.methods().values().forEach(m -> {
            agents.remove(m.agent());
            tools.remove(m.tool());
            families.remove(m.family());
        });
        base.agents().values().forEach(a -> families.remove(a.family()));
        agents.forEach(a -> fault("Agent", a, "", "no method uses it", "add the method or leave it out"));
        tools.forEach(t -> fault("Tool", t, "", "no method uses it", "add the method or leave it out"));
        families.forEach(f -> fault("Family", f, "", "nothing belongs to it", "leave it out"));
    }

    private void source(String kind, String id, Basis basis, List<String> sources) {
        if (basis == Basis.PUBLISHED && sources.isEmpty()) {
            fault(kind, id, "basis", "it is called published but names no source",
                    "name the source, or say memory or common_practice");
        }
        known(kind, id, "sources", sources, base.sources().keySet());
    }

    private void known(String kind, String id, String field, Collection<String> named, Set<String> known) {
        for (String one : named) {
            if (!known.contains(one)) {
                fault(kind, id, field, "\"" + one + "\" does not exist", Near.to(one, known));
            }
        }
    }

    private void fault(String kind, String id, String field, String wrong, String remedy) {
        faults.add(new Fault(fileOf.getOrDefault(kind + " " + id, kind), field.isEmpty() ? id : id + " " + field,
                wrong, remedy));
    }
}
