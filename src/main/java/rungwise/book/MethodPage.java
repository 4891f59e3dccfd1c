package rungwise.book;

import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.matter.Component;
import rungwise.knowledge.method.Chances;
import rungwise.knowledge.method.Method;

/** How a method is done, what it needs, when to stop, and what it can do. */
final class MethodPage {
    private final KnowledgeBase base;
    private final Links links;

    MethodPage(KnowledgeBase base, Links links) {
        this.base = base;
        this.links = links;
    }

    Page of(Method one) {
        Sheet sheet = new Sheet().say(one.technique()).fact("Also called", String.join(", ", one.alsoCalled()))
                .fact("For", Words.of(one.kind())).fact("Works by", links.to(Chapter.MECHANISM, one.mechanism().id()))
                .fact("Family", base.families().containsKey(one.family()) ? base.families().get(one.family()).name()
                        : Words.of(one.family()))
                .fact("Agent", links.to(Chapter.AGENT, one.agent())).fact("Tool", links.tool(one.tool()))
                .fact("Made for", String.join(", ", one.madeFor().stream().map(Words::of).toList()))
                .fact("Running water", one.floods() ? "needed" : "")
                .fact("Dwell", one.dwell().to() == 0 ? "none" : Words.span(one.dwell().from(), one.dwell().to())
                        + " min, usually " + Figures.text(one.dwell().usual()))
                .fact("Tries", Integer.toString(one.tries()))
                .fact("Panel", one.window().map(w -> w + " °C to start").orElse("any temperature"))
                .fact("Puts on the surface", one.contactC().map(c -> Figures.text(c) + " °C").orElse(""))
                .fact("Pressure", one.pressureBar().map(p -> Figures.text(p) + " bar at the nozzle").orElse(""))
                .fact("Stand-off", one.standOffCm().map(s -> Figures.text(s) + " cm").orElse(""))
                .fact("Grades on sound clear", "mechanical " + one.severity().mechanical() + ", chemical "
                        + one.severity().chemical() + ", thermal " + one.severity().thermal() + ", film "
                        + Figures.text(one.severity().filmMicrons()) + " µm")
                .fact("Marring", Figures.text(one.marringPercent()) + " % on average gloss clear")
                .fact("Work", minutes(one.minutes().spot(), "a spot") + minutes(one.minutes().squareMetre(), "a square metre"))
                .fact("Staff", Words.meaning(base.levels(), one.level()))
                .fact("What it does to a deposit", one.role().map(r -> base.matter().reaches().get(r).says()).orElse(""))
                .fact("Works by", String.join("; ", one.works().stream().map(w -> base.matter().ways().get(w).says()).toList()))
                .fact("One step weaker by", String.join("; ", one.worksLess().stream().map(w -> base.matter().ways().get(w).says()).toList()))
                .fact("Takes well", String.join(", ", base.matter().components().values().stream()
                        .filter(c -> one.works().stream().anyMatch(c.takes().well()::contains)).map(Component::name).toList()))
                .fact("Only after a softener", one.needsSoftener() ? "yes" : "")
                .fact("Softens", String.join(", ", one.softens().stream().map(Words::of).toList()));
        sheet.sentences("Protection", new Protection(base).of(protection(one)))
                .sentences("Stop when", one.stopSigns()).sentences("Risks", one.risks())
                .sentences("Waste", List.of(Words.meaning(base.wastes(), one.waste())))
                .list("Gates", one.gates().stream().map(links::gate).toList())
                .list("What follows", one.afterwards().stream().map(m -> links.to(Chapter.METHOD, m)).toList())
                .list("What puts its marks right", one.correction().stream()
                        .map(m -> links.to(Chapter.METHOD, m)).toList())
                .table("Chance of one correct attempt, by how the deposit holds",
                        List.of("Bond class", "Fresh", "Hardened"), one.chances().entrySet().stream()
                                .map(this::chance).toList())
                .list("Deposits for which its chance differs", base.contaminants().values().stream()
                        .filter(c -> c.overrides().stream().anyMatch(o -> o.methods().contains(one.id())))
                        .map(c -> links.to(Chapter.CONTAMINANT, c.id())).toList());
        return sheet.head("Where this comes from").fact("Basis", links.basis(one.basis(), one.sources()))
                .page(Chapter.METHOD.path(one.id()), one.name());
    }

    private List<DomContent> chance(Map.Entry<String, Chances> one) {
        return List.of(text(Words.of(one.getKey())), text(Words.of(one.getValue().fresh())),
                text(Words.of(one.getValue().hardened())));
    }

    /** What agent and tool ask for counts as well. */
    private List<String> protection(Method one) {
        return Stream.of(one.ppe(), base.agentOf(one).ppe(), base.toolOf(one).ppe()).flatMap(List::stream).toList();
    }

    private static String minutes(OptionalDouble minutes, String per) {
        return minutes.isPresent() ? Figures.text(minutes.getAsDouble()) + " min " + per + ". " : "";
    }
}
