package rungwise.http;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import rungwise.answer.Advisor;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Source;
import rungwise.knowledge.decision.Assumption;
import rungwise.knowledge.decision.Decision;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.deposit.Inspection;
import rungwise.knowledge.deposit.Observation;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.MechanismWord;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.Surface;
import rungwise.rules.RuleInfo;
import rungwise.text.Near;

/** What is known, by collection: short in the lists, whole by id. */
final class Shelves {
    static final List<String> NAMES = List.of("contaminants", "surfaces", "methods", "agents", "rules", "sources",
            "observations", "checks", "decisions", "assumptions", "mechanisms");

    private final String revision;
    private final Map<String, Map<String, ?>> whole;
    private final Map<String, Listed> lists = new TreeMap<>();

    /** An item in a list. */
    record Item(String id, String name) {
    }

    record Listed(String revision, List<Item> items) {
    }

    Shelves(Advisor advisor) {
        KnowledgeBase base = advisor.knowledge();
        Map<String, RuleInfo> rules = advisor.rules().rules();
        revision = base.revision();
        whole = new TreeMap<>(Map.of("contaminants", base.contaminants(), "surfaces", base.surfaces(), "methods", base.methods(),
                "agents", base.agents(), "rules", rules, "sources", base.sources()));
        whole.put("observations", base.observations());
        whole.put("checks", base.signs().checks());
        whole.put("mechanisms", base.mechanisms());
        whole.put("decisions", base.decisions().byId());
        whole.put("assumptions", base.assumptions().byId());
        list("contaminants", base.contaminants(), Contaminant::name);
        list("surfaces", base.surfaces(), Surface::name);
        list("methods", base.methods(), Method::name);
        list("agents", base.agents(), Agent::name);
        list("rules", rules, RuleInfo::says);
        list("observations", base.observations(), Observation::says);
        list("checks", base.signs().checks(), Inspection::name);
        list("mechanisms", base.mechanisms(), MechanismWord::says);
        list("decisions", base.decisions().byId(), Decision::says);
        list("assumptions", base.assumptions().byId(), Assumption::says);
        list("sources", base.sources(), Source::title);
    }

    private <T> void list(String collection, Map<String, T> things, Function<T, String> name) {
        lists.put(collection, new Listed(revision, things.entrySet().stream()
                .map(e -> new Item(e.getKey(), name.apply(e.getValue()))).toList()));
    }

    Listed list(String collection) {
        return lists.get(collection);
    }

    Object one(String collection, String id) {
        Object found = whole.get(collection).get(id);
        if (found == null) {
            throw Refused.said(Kind.NOT_FOUND, "not-on-the-shelf", "id", id, "shelf", collection, "near",
                    Near.to(id, whole.get(collection).keySet()));
        }
        return found;
    }
}
