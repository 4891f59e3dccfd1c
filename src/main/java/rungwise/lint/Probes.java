package rungwise.lint;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import rungwise.answer.Advisor;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.method.Gate;
import rungwise.knowledge.method.MethodKind;
import rungwise.knowledge.method.Method;
import rungwise.question.QuestionReader;
import rungwise.rules.RuleInfo;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Conclusion;
import rungwise.rules.said.Conclusions;
import tools.jackson.databind.node.ObjectNode;

/** Reference ladders: every contaminant on the surfaces where it is usually met, fresh, half hardened and hardened. */
final class Probes {
    /** A week: what is asked of a deposit that never hardens. */
    private static final double NEVER_HARDENS_HOURS = 168;
    private static final String PLAIN = "{airC: 20, panelC: 20, sun: shade, outdoors: true}";
    private static final String THICK = "{totalFilmMicrons: {min: 150, max: 155}, clearMicrons: 60, vehicleYear: 2015,"
            + " refinished: false, paintAgeDays: 3000}";
    /** Days that make rules of today speak; they serve the comparison of rules alone. */
    private static final List<String> DAYS = List.of(
            "{setting: {airC: 31, sun: direct, humidity: 0.7, outdoors: true}, facts: {colour: dark, vehicleYear: 1968}}",
            "{setting: {airC: 20, panelC: 20, sun: shade, indoors: {volumeM3: 60, airChangesPerHour: 0.5}},"
                    + " workers: [{level: L1, sensitisedTo: [terpene]}], extent: {areaM2: 2}}",
            "{setting: {airC: 4, panelC: 4, sun: shade, outdoors: true}, facts: {totalFilmMicrons: {min: 82, max: 88}}}",
            "{setting: {airC: 22, panelC: 38, sun: shade, outdoors: true}, facts: {clearMicrons: 28, refinished: true,"
                    + " paintAgeDays: 20}, consent: {refused: [g02]}, shelf: []}");

    private final Advisor advisor;
    private final List<Contaminant> asked = new ArrayList<>();
    private final List<Probe> plain = new ArrayList<>();
    private final List<List<Concluded<? extends Conclusion>>> runs = new ArrayList<>();
    private final List<Concluded<? extends Conclusion>> heard = new ArrayList<>();

    private Probes(Advisor advisor) {
        this.advisor = new Advisor(advisor.knowledge(), advisor.rules().heardBy(this::hear));
    }

    static Probes of(Advisor advisor, Predicate<Contaminant> which) {
        Probes probes = new Probes(advisor);
        KnowledgeBase known = advisor.knowledge();
        int day = 0;
        known.contaminants().values().stream().filter(which).forEach(probes.asked::add);
        for (Contaminant one : probes.asked) {
            for (String surface : one.usualSurfaces()) {
                for (Probe.Age age : Probe.Age.values()) {
                    probes.plain.add(probes.ask(one, surface, age, "{setting: " + PLAIN + "}"));
                }
                String today = DAYS.get(day++ % DAYS.size());
                if (known.gates().containsKey("g02") || !today.contains("g02")) {
                    probes.ask(one, surface, Probe.Age.HARDENED, today);
                }
            }
        }
        known.surfaces().keySet().forEach(surface -> known.methods().keySet().stream().findFirst()
                .ifPresent(method -> probes.advisor.barsOn(surface, method)));
        return probes;
    }

    private void hear(Conclusions said) {
        runs.add(said.all());
        heard.addAll(said.all());
    }

    /** Asks one more; where the shelf is not empty, nothing else is at hand. */
    Probe ask(Contaminant one, String surface, Probe.Age age, String rest) {
        heard.clear();
        double first = one.emergency().map(Contaminant.Emergency::untilHours).orElse(0.0);
        double hours = age == Probe.Age.HARDENED ? Math.max(first * 2, hardens(one) * age.share) : hardens(one) * age.share;
        ObjectNode question = (ObjectNode) Mappers.question().readTree(rest);
        question.put("contaminant", one.id()).put("surface", surface)
                .put("age", "PT" + Math.max(1, Math.round(hours * 60)) + "M");
        ObjectNode facts = question.path("facts").isObject() ? (ObjectNode) question.get("facts") : question.putObject("facts");
        facts.put("warmestPanelC", 20);
        return new Probe(one, surface, age, advisor.answer(QuestionReader.read(question, advisor.knowledge())),
                List.copyOf(heard));
    }

    private static double hardens(Contaminant one) {
        return one.hardens().isNever() ? NEVER_HARDENS_HOURS : one.hardens().cool();
    }

    /**
     * A plain day with one method alone at hand, on thick sound paint that has been read, and everything agreed to. Others of its
     * family are refused, as what is always at hand, and a shop's own products are, stands on no list.
     */
    String alone(Method method) {
        return "{setting: " + PLAIN + ", shelf: [" + method.id() + "], canWaitMinutes: 2880, facts: " + THICK
                + ", consent: {granted: [" + String.join(", ", known().gates().values().stream()
                .filter(Gate::needsAgreement).map(Gate::id).toList()) + "], refused: [" + String.join(", ", known().methods().values()
                .stream().filter(m -> m.kind() == MethodKind.REMOVE && m.family().equals(method.family()) && m != method)
                .map(Method::id).toList()) + "]}}";
    }

    /** Those that were asked about. */
    List<Contaminant> asked() {
        return asked;
    }

    KnowledgeBase known() {
        return advisor.knowledge();
    }

    Map<String, RuleInfo> rules() {
        return advisor.rules().rules();
    }

    Advisor advisor() {
        return advisor;
    }

    /** Those of a plain day, with everything at hand. */
    Collection<Probe> plain() {
        return plain;
    }

    /** Those of one deposit on one surface, at its three ages. */
    List<Probe> plain(Contaminant one, String surface) {
        return plain.stream().filter(p -> p.contaminant().equals(one) && p.surface().equals(surface)).toList();
    }

    /** What each run of a phase concluded, those of every surface and of the order of methods among them. */
    List<List<Concluded<? extends Conclusion>>> runs() {
        return runs;
    }
}
