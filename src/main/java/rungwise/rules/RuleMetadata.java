package rungwise.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.kie.api.KieBase;
import org.kie.api.definition.KiePackage;
import org.kie.api.definition.rule.Rule;
import rungwise.knowledge.common.Basis;
import rungwise.text.Texts;

/** Reads what each rule says of itself, and refuses a book in which one says too little. */
final class RuleMetadata {
    private static final Set<String> GROUPS = Set.copyOf(Arrays.stream(Phase.values()).map(Phase::group).toList());

    private RuleMetadata() {
    }

    static Map<String, RuleInfo> read(KieBase base) {
        Map<String, RuleInfo> byName = new HashMap<>();
        Set<String> ids = new HashSet<>();
        List<String> faults = new ArrayList<>();
        for (KiePackage kiePackage : base.getKiePackages()) {
            for (Rule rule : kiePackage.getRules()) {
                RuleInfo info = info(rule, faults);
                if (!ids.add(info.id())) {
                    faults.add(Texts.said("rule.id-taken", "rule", rule.getName(), "id", info.id()));
                }
                byName.put(rule.getName(), info);
            }
        }
        if (byName.isEmpty()) {
            faults.add(Texts.said("rule.none"));
        }
        if (!faults.isEmpty()) {
            throw new BadRules(faults);
        }
        return Map.copyOf(byName);
    }

    private static RuleInfo info(Rule rule, List<String> faults) {
        Map<String, Object> meta = rule.getMetaData();
        for (String key : List.of("id", "says", "cause", "basis")) {
            if (text(meta, key).isBlank()) {
                faults.add(Texts.said("rule.no-annotation", "name", rule.getName(), "key", key));
            }
        }
        String group = ((org.drools.base.definitions.rule.impl.RuleImpl) rule).getRuleFlowGroup();
        if (group == null || !GROUPS.contains(group)) {
            faults.add(Texts.said("rule.no-phase", "rule", rule.getName(), "group", group, "phases", GROUPS.stream().sorted().toList()));
        }
        List<String> sources = text(meta, "source").isBlank() ? List.of() : List.of(text(meta, "source").split("\\s+"));
        Basis basis = basis(text(meta, "basis"), rule, faults);
        if (basis == Basis.PUBLISHED && sources.isEmpty()) {
            faults.add(Texts.said("rule.published-by-none", "name", rule.getName()));
        }
        return new RuleInfo(text(meta, "id"), text(meta, "says"), text(meta, "cause"), sources, basis,
                group == null ? "" : group);
    }

    private static Basis basis(String word, Rule rule, List<String> faults) {
        try {
            return Basis.valueOf(word.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            faults.add(Texts.said("rule.no-basis", "name", rule.getName(), "word", word));
            return Basis.MEMORY;
        }
    }

    /** The executable model keeps the quotes of a quoted value. */
    private static String text(Map<String, Object> meta, String key) {
        Object value = meta.get(key);
        if (value == null) {
            return "";
        }
        String text = value.toString().trim();
        return text.length() > 1 && text.startsWith("\"") && text.endsWith("\"")
                ? text.substring(1, text.length() - 1) : text;
    }
}
