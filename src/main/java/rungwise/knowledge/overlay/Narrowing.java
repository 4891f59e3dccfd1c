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
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.OverlayFile;
import rungwise.knowledge.method.Dwell;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.Limit;
import rungwise.knowledge.surface.Surface;
import rungwise.text.Near;
import rungwise.text.Texts;

/** Narrower limits of methods and surfaces; what would loosen one is a fault. */
final class Narrowing {
    private static final String TIGHTEN = "tighten ";

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
            faults.add(new Fault(file, "tighten", Texts.said("overlay.not-one-thing"),
                    Texts.said("overlay.not-one-thing.do")));
            return faults;
        }
        boolean isMethod = by.method().isPresent();
        Map<String, ?> known = isMethod ? methods : surfaces;
        if (!known.containsKey(by.target())) {
            faults.add(new Fault(file, TIGHTEN + by.target(), isMethod
                    ? Texts.said("overlay.no-method", "method", by.target()) : Texts.said("overlay.no-surface", "surface", by.target()),
                            Near.to(by.target(), known.keySet())));
            return faults;
        }
        boolean ofSurface = by.acidity().isPresent() || by.maxC().isPresent() || !by.maxPercent().isEmpty();
        boolean ofMethod = by.window().isPresent() || by.tries().isPresent() || by.dwellMinutes().isPresent()
                || !by.gates().isEmpty();
        if (isMethod ? ofSurface : ofMethod) {
            faults.add(new Fault(file, TIGHTEN + by.target(), isMethod ? Texts.said("overlay.of-a-surface")
                    : Texts.said("overlay.of-a-method"), Texts.said("overlay.of-the-other.do")));
        } else if (isMethod) {
            methods.computeIfPresent(by.target(), (id, m) -> method(file, m, by, faults));
        } else {
            surfaces.computeIfPresent(by.target(), (id, s) -> surface(file, s, by, faults));
        }
        return faults;
    }

    private Method method(String file, Method m, OverlayFile.Tightening by, List<Fault> faults) {
        String at = TIGHTEN + m.id() + " ";
        by.window().filter(w -> m.window().filter(old -> !old.contains(w)).isPresent()).ifPresent(w -> faults.add(
                new Fault(file, at + "window", Texts.said("overlay.wider-window", "window", w, "known", m.window().orElseThrow()),
                        neverLooser())));
        by.window().filter(w -> w.from() > 25).ifPresent(w -> faults.add(new Fault(file, at + "window",
                Texts.said("overlay.starts-hot"), Texts.said("overlay.starts-hot.do"))));
        by.tries().filter(t -> t > m.tries()).ifPresent(t -> faults.add(new Fault(file, at + "tries", Texts.said("overlay.more-tries",
                "tries", t, "known", m.tries()), neverLooser())));
        by.dwellMinutes().filter(d -> d > m.dwell().to()).ifPresent(d -> faults.add(new Fault(file, at + "dwellMinutes",
                Texts.said("overlay.longer", "minutes", d, "known", m.dwell().to()), neverLooser())));
        by.gates().stream().filter(g -> !base.gates().containsKey(g)).forEach(g -> faults.add(new Fault(file, at + "gates",
                Texts.said("overlay.no-gate", "gate", g), Near.to(g, base.gates().keySet()))));
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
        String at = TIGHTEN + s.id() + " ";
        by.acidity().filter(a -> !s.acidity().contains(a)).ifPresent(a -> faults.add(new Fault(file, at + "acidity",
                Texts.said("overlay.wider-acidity", "acidity", a, "known", s.acidity()), neverLooser())));
        by.maxC().filter(c -> c > s.maxC()).ifPresent(c -> faults.add(new Fault(file, at + "maxC", Texts.said("overlay.warmer", "celsius",
                c, "known", s.maxC()), neverLooser())));
        Map<SolventColumn, Limit> limits = new EnumMap<>(s.solvents());
        by.maxPercent().forEach((column, percent) -> {
            Limit old = s.limit(column);
            if (percent > old.maxPercent() || old.verdict().forbids()) {
                faults.add(new Fault(file, at + "maxPercent/" + column.name().toLowerCase(java.util.Locale.ROOT),
                        old.verdict().forbids() ? Texts.said("overlay.solvent-forbidden")
                                : Texts.said("overlay.more-percent", "percent", percent, "known", old.maxPercent()),
                        neverLooser()));
            }
            limits.put(column, new Limit(old.verdict(), Math.min(percent, old.maxPercent()), old.why(), old.basis(),
                    old.sources()));
        });
        return new Surface(s.id(), s.name(), s.description(), s.kind(), by.acidity().orElse(s.acidity()), limits,
                Math.min(s.maxC(), by.maxC().orElse(s.maxC())), s.mechanical(), s.hardness(), s.maxPressureBar(),
                s.traits(), s.film(), s.never(), s.cautions(), s.polymers(), s.wayOut(), s.basis(), s.sources(),
                s.kinds(), s.alsoCalled(), s.tell());
    }

    private static String neverLooser() {
        return Texts.said("overlay.only-narrows");
    }
}
