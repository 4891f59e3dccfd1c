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
import rungwise.text.Texts;

/** How a method is done, what it needs, when to stop, and what it can do. */
final class MethodPage {
    private final KnowledgeBase base;
    private final Links links;

    MethodPage(KnowledgeBase base, Links links) {
        this.base = base;
        this.links = links;
    }

    Page of(Method one) {
        Sheet sheet = new Sheet().say(one.inOneGo()).fact("also-called", String.join(", ", one.alsoCalled()))
                .fact("for", Words.of(one.kind())).fact("works-by", links.to(Chapter.MECHANISM, one.mechanism().id()))
                .fact("family", base.families().containsKey(one.family()) ? base.families().get(one.family()).name()
                        : Words.of(one.family()))
                .fact("agent", links.to(Chapter.AGENT, one.agent())).fact("tool", links.tool(one.tool()))
                .fact("made-for", String.join(", ", one.madeFor().stream().map(Words::of).toList()))
                .fact("running-water", one.floods() ? say("method.needed") : "")
                .fact("dwell", one.dwell().to() == 0 ? say("method.no-dwell") : say("method.dwell", "span",
                        Words.span(one.dwell().from(), one.dwell().to()), "usual", one.dwell().usual()))
                .fact("tries", Integer.toString(one.tries()))
                .fact("panel", one.window().map(w -> say("method.window", "window", w)).orElseGet(() -> say("method.any-window")))
                .fact("puts-on-the-surface", one.contactC().map(c -> Figures.text(c) + " °C").orElse(""))
                .fact("pressure", one.pressureBar().map(p -> say("method.pressure", "bar", p)).orElse(""))
                .fact("stand-off", one.standOffCm().map(s -> Figures.text(s) + " cm").orElse(""))
                .fact("grades-on-sound-clear", say("grades-are", "mechanical", one.severity().mechanical(), "chemical",
                        one.severity().chemical(), "thermal", one.severity().thermal(), "film", one.severity().filmMicrons()))
                .fact("marring", say("method.marring", "percent", one.marringPercent()))
                .fact("work", minutes("method.minutes-a-spot", one.minutes().spot()) + minutes("method.minutes-a-square-metre",
                        one.minutes().squareMetre()))
                .fact("staff", Words.meaning(base.levels(), one.level()))
                .fact("role", one.role().map(r -> base.matter().reaches().get(r).says()).orElse(""))
                .fact("works-by", String.join("; ", one.works().stream().map(w -> base.matter().ways().get(w).says()).toList()))
                .fact("one-step-weaker-by", String.join("; ", one.worksLess().stream().map(w -> base.matter().ways().get(w).says()).toList()))
                .fact("takes-well", String.join(", ", base.matter().components().values().stream()
                        .filter(c -> one.works().stream().anyMatch(c.takes().well()::contains)).map(Component::name).toList()))
                .fact("only-after-a-softener", one.needsSoftener() ? Words.yes(true) : "")
                .fact("softens", String.join(", ", one.softens().stream().map(Words::of).toList()));
        sheet.sentences("protection", new Protection(base).of(protection(one)))
                .sentences("stop-when", one.stopSigns()).sentences("risks", one.risks())
                .sentences("waste", List.of(Words.meaning(base.wastes(), one.waste())))
                .list("gates", one.gates().stream().map(links::gate).toList())
                .list("what-follows", one.afterwards().stream().map(m -> links.to(Chapter.METHOD, m)).toList())
                .list("correction", one.correction().stream()
                        .map(m -> links.to(Chapter.METHOD, m)).toList())
                .table("chances",
                        List.of("bond-class", "fresh", "hardened"), one.chances().entrySet().stream()
                                .map(this::chance).toList())
                .list("remarked-on", base.contaminants().values().stream()
                        .filter(c -> c.remark(one.id()).isPresent())
                        .map(c -> links.to(Chapter.CONTAMINANT, c.id())).toList());
        return sheet.head("where-this-comes-from").fact("basis", links.basis(one.basis(), one.sources()))
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

    private static String minutes(String id, OptionalDouble minutes) {
        return minutes.isPresent() ? say(id, "minutes", minutes.getAsDouble()) + " " : "";
    }

    private static String say(String id, Object... named) {
        return Texts.said("book." + id, named);
    }
}
