package rungwise.rules;

import java.util.Locale;
import java.util.stream.Collectors;
import rungwise.knowledge.Agent;
import rungwise.knowledge.Figures;
import rungwise.knowledge.Mechanism;
import rungwise.knowledge.Method;
import rungwise.knowledge.Range;
import rungwise.knowledge.Reactive;
import rungwise.knowledge.SolventColumn;
import rungwise.knowledge.Surface;
import rungwise.knowledge.SurfaceKind;
import rungwise.knowledge.Tool;
import rungwise.knowledge.ToolKind;
import rungwise.knowledge.Trait;

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

    public String acidityFigures() {
        return "pH " + agent.acidity().map(Range::toString).orElse("-") + ", window " + surface.acidity();
    }

    public int mechanicalGrade() {
        return method.severity().mechanical();
    }

    public int chemicalGrade() {
        return method.severity().chemical();
    }

    public int freeGrade() {
        return surface.mechanical().free();
    }

    public int agreedGrade() {
        return surface.mechanical().agreed();
    }

    public String mechanicalFigures() {
        return "mechanical grade " + mechanicalGrade() + "; " + surface.name() + " bears " + freeGrade()
                + ", with agreement " + agreedGrade();
    }

    public boolean tooHard() {
        return tool.hardness() > surface.hardness();
    }

    public String hardnessFigures() {
        return tool.name() + " hardness " + tool.hardness() + ", surface takes " + surface.hardness();
    }

    public double heatOver() {
        return method.contactC().map(c -> c - surface.maxC()).orElse(Double.NEGATIVE_INFINITY);
    }

    public String heatFigures() {
        return "puts " + method.contactC().map(Figures::text).orElse("no") + " °C on a surface that takes "
                + Figures.text(surface.maxC()) + " °C";
    }

    public double pressureOver() {
        return method.pressureBar().map(p -> p - surface.maxPressureBar()).orElse(Double.NEGATIVE_INFINITY);
    }

    public String pressureFigures() {
        return "jet of " + method.pressureBar().map(Figures::text).orElse("no") + " bar, surface takes "
                + Figures.text(surface.maxPressureBar()) + " bar";
    }

    /** Whether it only moves water or a neutral wash over the surface. */
    public boolean isWashOnly() {
        return (!agent.isChemistry() || agent.family().equals("wash")) && !tool.kind().abrades()
                && tool.kind() != ToolKind.CLAY;
    }

    /** Whether there is paint here, or a film with paint beneath it. */
    public boolean isOnPaint() {
        return surface.mayBe(SurfaceKind.PAINT) || surface.mayBe(SurfaceKind.FILM);
    }

    /** Water, steam or chemistry goes on with it; powder and warm air do not wet. */
    public boolean isWet() {
        return agent.isWet();
    }

    /** Wets through: floods, jets, extracts, steams, or lies wet for more than half an hour. */
    public boolean soaks() {
        return isWet() && (method.floods() || toolIs(ToolKind.JET) || toolIs(ToolKind.SUCTION)
                || toolIs(ToolKind.HEAT) || method.mechanism() == Mechanism.HYDRATE && method.dwell().to() > 30);
    }

    /** A fifth or more of it is petroleum. */
    public boolean isPetroleum() {
        return agent.percentIn(SolventColumn.ALIPHATIC) >= 20;
    }

    /** However little alcohol, less than counts as a solvent among it. */
    public boolean holdsAnyAlcohol() {
        return agent.solvents().entrySet().stream()
                .anyMatch(s -> s.getKey().column() == SolventColumn.ALCOHOL && s.getValue() > 0);
    }

    /** Takes off by grinding or dragging; a polish that evens a mark is not meant. */
    public boolean scours() {
        return toolIs(ToolKind.CLAY) || tool.kind().abrades() && !toolIs(ToolKind.POLISH);
    }

    public boolean isWetChemistry() {
        return agent.isChemistry();
    }

    public boolean wears(Trait first, Trait second) {
        return on(first) || on(second);
    }

    public boolean leavesMarks() {
        return surface.is(Trait.SHOWS_MARRING) || surface.is(Trait.SEEN_THROUGH) || surface.is(Trait.ANODISED)
                || surface.is(Trait.TEXTURE_IS_FINISH);
    }

    public boolean isFamily(String family) {
        return method.family().equals(family);
    }

    public boolean isMadeForThis() {
        return method.madeFor().isEmpty() || method.madeFor().containsAll(surface.kinds());
    }

    public String madeForFigures() {
        return "made for " + method.madeFor().stream().map(k -> k.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .collect(Collectors.joining(", ")) + "; this is " + surface.name();
    }

    public String figures() {
        return method.name() + " on " + surface.name();
    }
}
