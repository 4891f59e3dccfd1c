package rungwise.book;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rungwise.answer.Advisor;
import rungwise.knowledge.KnowledgeBase;
import rungwise.lint.CheckPage;
import rungwise.rules.RuleInfo;

/** All pages of one revision. The same revision and cases give the same bytes. */
public final class Book {
    private final Advisor advisor;
    private final Optional<RuleCases> cases;

    public Book(Advisor advisor, Optional<RuleCases> cases) {
        this.advisor = advisor;
        this.cases = cases;
    }

    /** Texts by path within the book, the stylesheet among them. */
    public Map<String, String> texts() {
        Binding binding = new Binding(advisor.knowledge().revision());
        Map<String, String> texts = new TreeMap<>();
        pages().forEach(page -> texts.put(page.path(), binding.bind(page)));
        texts.put(Binding.STYLE, style());
        return texts;
    }

    private List<Page> pages() {
        KnowledgeBase base = advisor.knowledge();
        Map<String, RuleInfo> rules = advisor.rules().rules();
        Links first = new Links(base, rules, "");
        Links within = new Links(base, rules, "../");
        ReferenceLadders ladders = new ReferenceLadders(advisor);
        List<Page> pages = new ArrayList<>();
        pages.add(new IndexPage(base, rules, first).page());
        pages.add(GatesPage.of(base, first));
        pages.add(ToolsPage.of(base, first));
        pages.add(SourcesPage.of(base, new Citations(base, rules, first)));
        ContaminantPage contaminant = new ContaminantPage(base, within);
        base.contaminants().values().forEach(c -> pages.add(contaminant.of(c, ladders.of(c))));
        SurfacePage surface = new SurfacePage(base, within);
        base.surfaces().values().forEach(s -> pages.add(surface.of(s)));
        MethodPage method = new MethodPage(base, within);
        base.methods().values().forEach(m -> pages.add(method.of(m)));
        AgentPage agent = new AgentPage(base, within);
        base.agents().values().forEach(a -> pages.add(agent.of(a)));
        RulePage rule = new RulePage(within);
        rules.values().forEach(r -> pages.add(rule.of(r, cases.map(c -> c.of(r.id())))));
        MechanismPage mechanism = new MechanismPage(base, within);
        base.mechanisms().values().forEach(m -> pages.add(mechanism.of(m)));
        FigurePage figure = new FigurePage(within);
        base.decisions().byId().values().forEach(d -> pages.add(figure.of(d)));
        base.assumptions().byId().values().forEach(a -> pages.add(figure.of(a)));
        CheckedPage check = new CheckedPage(base, within);
        CheckPage.all().values().forEach(c -> pages.add(check.of(c)));
        return pages;
    }

    private static String style() {
        try (InputStream in = Book.class.getResourceAsStream("/book/" + Binding.STYLE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
