package rungwise.knowledge.overlay;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.SolventColumn;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.common.Near;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.OverlayFile;
import rungwise.knowledge.method.Dwell;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.Limit;
import rungwise.knowledge.surface.Surface;

/** Narrower limits of methods and surfaces; what would loosen one is a fault. */
final class Narrowing {
    private static final String NEVER_LOOSER = "an overlay only narrows; give a narrower figure or leave it out";

    private final KnowledgeBase base;
    private final Map<String, Method> methods;
    private final Map<String, Surface> surfaces;

    Narrowing(KnowledgeBase base) {
        this.base = base;
        this.methods = new TreeMap<>(base.methods());
        this.surfaces = new TreeMap<>(base.surfaces());
    }

    KnowledgeBase narrowed() {
        return base.overlaid(surfaces, methods, base.agents());
    }

    List<Fault> narrow(String file, OverlayFile.Tightening by) {
        List<Fault> faults = new ArrayList<>();
        if (by.method().isPresent() == by.surface().isPresent()) {
            faults.add(new Fault(file, "tighten", "it must name a method or a surface, and not both",
                    "write one entry for each"));
            return faults;
        }
        boolean isMethod = by.method().isPresent();
        Map<String, ?> known = isMethod ? methods : surfaces;
        if (!known.containsKey(by.target())) {
            faults.add(new Fault(file, "tighten " + by.target(), "\"" + by.target() + "\" is not a known "
                    + (isMethod ? "method" : "surface"), Near.to(by.target(), known.keySet())));
            return faults;
        }
        boolean ofSurface = by.acidity().isPresent() || by.maxC().isPresent() || !by.maxPercent().isEmpty();
        boolean ofMethod = by.window().isPresent() || by.tries().isPresent() || by.dwellMinutes().isPresent()
                || !by.gates().isEmpty();
        if (isMethod ? ofSurface : ofMethod) {
            faults.add(new Fault(file, "tighten " + by.target(), isMethod ? "acidity, maxC and maxPercent belong to a surface"
                    : "window, tries, dwellMinutes and gates belong to a method", "move them to an entry of their own"));
        } else if (isMethod) {
            methods.computeIfPresent(by.target(), (id, m) -> method(file, m, by, faults));
        } else {
            surfaces.computeIfPresent(by.target(), (id, s) -> surface(file, s, by, faults));
        }
        return faults;
    }

    private Method method(String file, Method m, OverlayFile.Tightening by, List<Fault> faults) {
        String at = "tighten " + m.id() + " ";
        by.window().filter(w -> m.window().filter(old -> !old.contains(w)).isPresent()).ifPresent(w -> faults.add(
                new Fault(file, at + "window", w + " °C is not within the known " + m.window().orElseThrow() + " °C",
                        NEVER_LOOSER)));
        by.window().filter(w -> w.from() > 25).ifPresent(w -> faults.add(new Fault(file, at + "window",
                "it starts above 25 °C, so a hotter panel would add a method", "let it start at 25 °C or below")));
        by.tries().filter(t -> t > m.tries()).ifPresent(t -> faults.add(new Fault(file, at + "tries", t
                + " is more than the known " + m.tries(), NEVER_LOOSER)));
        by.dwellMinutes().filter(d -> d > m.dwell().to()).ifPresent(d -> faults.add(new Fault(file, at + "dwellMinutes",
                Figures.text(d) + " min is longer than the known " + Figures.text(m.dwell().to()) + " min", NEVER_LOOSER)));
        by.gates().stream().filter(g -> !base.gates().containsKey(g)).forEach(g -> faults.add(new Fault(file, at + "gates",
                "\"" + g + "\" is not a known gate", Near.to(g, base.gates().keySet()))));
        Set<String> gates = new LinkedHashSet<>(m.gates());
        gates.addAll(by.gates());
        double to = Math.min(m.dwell().to(), by.dwellMinutes().orElse(m.dwell().to()));
        Dwell dwell = new Dwell(Math.min(to, m.dwell().from()), to, Math.min(to, m.dwell().usual()));
        return new Method(m.id(), m.name(), m.kind(), m.family(), m.mechanism(), m.role(), m.works(), m.worksLess(), m.agent(), m.tool(), m.madeFor(),
                m.floods(), m.technique(), dwell, Math.min(m.tries(), by.tries().orElse(m.tries())),
                by.window().or(m::window), m.contactC(), m.pressureBar(), m.standOffCm(), m.severity(),
                m.marringPercent(), m.minutes(), m.level(), m.chances(), m.softens(), m.needsSoftener(), m.doneBy(),
                m.stopSigns(), m.afterwards(), m.correction(), List.copyOf(gates), m.waste(), m.ppe(), m.risks(),
                m.note(), m.basis(), m.sources(), m.alsoCalled());
    }

    private Surface surface(String file, Surface s, OverlayFile.Tightening by, List<Fault> faults) {
        String at = "tighten " + s.id() + " ";
        by.acidity().filter(a -> !s.acidity().contains(a)).ifPresent(a -> faults.add(new Fault(file, at + "acidity",
                "pH " + a + " is not within the known " + s.acidity(), NEVER_LOOSER)));
        by.maxC().filter(c -> c > s.maxC()).ifPresent(c -> faults.add(new Fault(file, at + "maxC", Figures.text(c)
                + " °C is more than the known " + Figures.text(s.maxC()) + " °C", NEVER_LOOSER)));
        Map<SolventColumn, Limit> limits = new EnumMap<>(s.solvents());
        by.maxPercent().forEach((column, percent) -> {
            Limit old = s.limit(column);
            if (percent > old.maxPercent() || old.verdict().forbids()) {
                faults.add(new Fault(file, at + "maxPercent/" + column.name().toLowerCase(java.util.Locale.ROOT),
                        old.verdict().forbids() ? "the surface does not take this kind of solvent at all"
                                : Figures.text(percent) + " % is more than the known " + Figures.text(old.maxPercent()) + " %",
                        NEVER_LOOSER));
            }
            limits.put(column, new Limit(old.verdict(), Math.min(percent, old.maxPercent()), old.why(), old.basis(),
                    old.sources()));
        });
        return new Surface(s.id(), s.name(), s.description(), s.kind(), by.acidity().orElse(s.acidity()), limits,
                Math.min(s.maxC(), by.maxC().orElse(s.maxC())), s.mechanical(), s.hardness(), s.maxPressureBar(),
                s.traits(), s.film(), s.never(), s.cautions(), s.polymers(), s.wayOut(), s.basis(), s.sources(),
                s.kinds(), s.alsoCalled(), s.tell());
    }
}
