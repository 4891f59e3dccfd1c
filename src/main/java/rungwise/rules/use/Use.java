package rungwise.rules.use;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.chemistry.SolventColumn;
import rungwise.knowledge.common.Range;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Mechanism;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.Tool;
import rungwise.knowledge.method.ToolKind;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.knowledge.surface.Trait;
import rungwise.text.Figure;
import rungwise.text.Texts;

/** A method with its agent and tool on a surface. */
public record Use(Method method, Agent agent, Tool tool, Surface surface) {
    public String name() {
        return method.id();
    }

    public boolean on(Trait trait) {
        return surface.is(trait);
    }

    public boolean holds(Reactive group) {
        return agent.holds(group);
    }

    public boolean toolIs(ToolKind kind) {
        return tool.kind() == kind;
    }

    public boolean acidityOutside() {
        return agent.acidity().filter(r -> !surface.acidity().meets(r)).isPresent();
    }

    public boolean acidityStraddles() {
        return agent.acidity().filter(r -> surface.acidity().meets(r) && !surface.acidity().contains(r)).isPresent();
    }

    /** Lowest pH as used; 7 where the agent holds no water. */
    public double lowestAcidity() {
        return agent.acidity().map(Range::from).orElse(7.0);
    }

    /** Highest pH as used; 7 where the agent holds no water. */
    public double highestAcidity() {
        return agent.acidity().map(Range::to).orElse(7.0);
    }

    public List<Figure> acidityFigures() {
        return Figure.all(figures(), agent.acidity().map(r -> List.of(Figure.against("acidity", r, "", surface.acidity())))
                .orElse(List.of()));
    }

    public int mechanicalGrade() {
        return method.severity().mechanical();
    }

    public int chemicalGrade() {
        return method.severity().chemical();
    }

    /** The harsher of its mechanical and chemical grades. */
    public int worstGrade() {
        return Math.max(mechanicalGrade(), chemicalGrade());
    }

    public int freeGrade() {
        return surface.mechanical().free();
    }

    public int agreedGrade() {
        return surface.mechanical().agreed();
    }

    public List<Figure> mechanicalFigures() {
        return Figure.all(figures(), List.of(Figure.against("mechanicalGrade", mechanicalGrade(), "", freeGrade()),
                Figure.of("agreedGrade", agreedGrade())));
    }

    public List<Figure> hardnessFigures() {
        return List.of(Figure.of("tool", tool.name()), Figure.of("surface", surface.name()),
                Figure.against("toolHardness", tool.hardness(), "", surface.hardness()));
    }

    /** Degrees by which the heat it puts on the surface is above what that bears; it may put none. */
    public double heatOver() {
        return method.contactC().map(c -> c - surface.maxC()).orElse(Double.NEGATIVE_INFINITY);
    }

    public List<Figure> heatFigures() {
        return Figure.all(figures(), method.contactC().map(c -> List.of(Figure.against("heat", c, "°C", surface.maxC())))
                .orElse(List.of()));
    }

    /** Bar by which its jet is above what the surface bears; it may have none. */
    public double pressureOver() {
        return method.pressureBar().map(p -> p - surface.maxPressureBar()).orElse(Double.NEGATIVE_INFINITY);
    }

    public List<Figure> pressureFigures() {
        return Figure.all(figures(), method.pressureBar().map(p -> List.of(Figure.against("jet", p, "bar", surface.maxPressureBar())))
                .orElse(List.of()));
    }

    /** Whether it only moves water or a neutral wash over the surface. */
    public boolean isWashOnly() {
        return (!agent.isChemistry() || agent.family().equals("wash")) && !tool.kind().abrades()
                && tool.kind() != ToolKind.CLAY;
    }

    /** Minutes that a wet pack lies on it; 0 where none does. */
    public double packMinutes() {
        return method.mechanism() == Mechanism.HYDRATE ? method.dwell().to() : 0;
    }

    /** Water is run over it, shot at it, or driven in and sucked out again. */
    public boolean runsWater() {
        return agent.isWet() && (method.floods() || toolIs(ToolKind.JET) || toolIs(ToolKind.SUCTION) || toolIs(ToolKind.HEAT));
    }

    /** The most of one solvent of a column, in percent, however little: less than counts as a solvent among it. */
    public double mostPercent(SolventColumn column) {
        return agent.solvents().entrySet().stream().filter(s -> s.getKey().column() == column)
                .mapToDouble(Map.Entry::getValue).max().orElse(0);
    }

    /** Whether it acts in this way on what a deposit is made of. */
    public boolean works(String way) {
        return method.works().contains(way) || method.worksLess().contains(way);
    }

    /** Whether water may run over the surface and off. */
    public boolean waterRuns() {
        return !on(Trait.NO_RUNNING_WATER);
    }

    /** Whether what lies there is rinsed off rather than taken up dry: water runs, and no weave holds it. */
    public boolean isRinsedOff() {
        return waterRuns() && surface.kind() != SurfaceKind.TEXTILE;
    }

    public boolean isFamily(String family) {
        return method.family().equals(family);
    }

    public boolean isMadeForThis() {
        return method.madeFor().isEmpty() || method.madeFor().containsAll(surface.kinds());
    }

    public List<Figure> madeForFigures() {
        return Figure.all(figures(), List.of(Figure.of("madeFor", method.madeFor().stream()
                .map(k -> k.name().toLowerCase(Locale.ROOT).replace('_', ' ')).collect(Collectors.joining(", ")))));
    }

    public List<Figure> shareFigures(SolventColumn column) {
        return Figure.all(figures(), List.of(Figure.of("solvent", column.name().toLowerCase(Locale.ROOT).replace("_", Texts.said("list.or"))),
                Figure.of("share", mostPercent(column), "%")));
    }

    public List<Figure> agentFigures() {
        return List.of(Figure.of("agent", agent.name()));
    }

    public List<Figure> toolFigures() {
        return List.of(Figure.of("tool", tool.name()));
    }

    public List<Figure> methodFigures() {
        return List.of(Figure.of("method", method.name()));
    }

    /** How much film it takes, and what the surface is made of. */
    public List<Figure> filmFigures() {
        return Figure.all(figures(), List.of(Figure.of("filmTaken", method.severity().filmMicrons(), "µm"), Figure.of("film", surface.film())));
    }

    public List<Figure> figures() {
        return List.of(Figure.of("method", method.name()), Figure.of("surface", surface.name()));
    }
}
