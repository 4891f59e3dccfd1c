package rungwise.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.check.LoadingChecks;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.deposit.Nature;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.surface.Trait;
import rungwise.rules.said.Bar;
import rungwise.text.Near;
import rungwise.text.Texts;

/**
 * Holds the words of rule texts against knowledge: an id in quotes that names nothing would be a rule that never speaks, or
 * a gate that nobody can open; a trait or nature that no rule reads would be an entry that changes nothing.
 */
public final class RuleWords {
    private static final Pattern RULE = Pattern.compile("^rule\\s+\"([^\"]*)\"(.*?)^end\\b", Pattern.MULTILINE | Pattern.DOTALL);
    private static final Pattern ID = Pattern.compile("^\\s*@id\\(\\s*\"?([^\")]*)\"?\\s*\\)", Pattern.MULTILINE);
    private static final Pattern ANNOTATION = Pattern.compile("^\\s*@\\w+\\(.*\\)\\s*$", Pattern.MULTILINE);
    private static final Pattern COMMENT = Pattern.compile("(\"[^\"\\n]*\")|//.*");
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");
    /** The first argument of a conclusion, which is the method it speaks of. */
    private static final String OF_A_METHOD = "\\(\\s*[^\",]*?,\\s*";
    private static final String COMPARED = "\\s*(?:==|!=|not\\s+in|in)\\s*(\"[^\"]*\"|\\([^)]*\\))";

    /**
     * Where in a rule ids of one kind stand.
     *
     * @param kind  what they are; the message file has the word
     * @param where its first group holds one id in quotes, or several
     */
    private record Place(String kind, Pattern where, Function<KnowledgeBase, Set<String>> known) {
        static Place of(String kind, String where, Function<KnowledgeBase, Set<String>> known) {
            return new Place(kind, Pattern.compile(where, Pattern.DOTALL), known);
        }

        Stream<MatchResult> words(String rule) {
            return where.matcher(rule).results().flatMap(found -> {
                Matcher words = QUOTED.matcher(rule).region(found.start(1), found.end(1));
                return words.results();
            }).filter(word -> !word.group(1).isEmpty());
        }
    }

    private static final List<Place> PLACES = List.of(
            Place.of("gate", "new\\s+Gated" + OF_A_METHOD + "(\"[^\"]*\")", base -> base.gates().keySet()),
            Place.of("decision", "\\bvalue\\(\\s*(\"[^\"]*\")", base -> base.decisions().byId().keySet()),
            Place.of("gate", "new\\s+MightBe\\(\\s*\"[^\"]*\"\\s*,\\s*(\"[^\"]*\")", base -> base.gates().keySet()),
            Place.of("gate", "\\bgate" + COMPARED, base -> base.gates().keySet()),
            Place.of("gate", "\\bgates\\s+(?:not\\s+)?contains\\s+(\"[^\"]*\")", base -> base.gates().keySet()),
            Place.of("item-of-protection", "\\bppe\\s+contains\\s+(\"[^\"]*\")", base -> base.ppe().keySet()),
            Place.of("surface", "new\\s+(?:TreatAs|MightBe)\\(\\s*(\"[^\"]*\")", base -> base.surfaces().keySet()),
            Place.of("surface", "\\bsurface\\.id" + COMPARED, base -> base.surfaces().keySet()),
            Place.of("item-of-protection", "new\\s+Protect" + OF_A_METHOD + "(?:java\\.util\\.)?(?:List|Set)\\.of\\(([^)]*)\\)",
                    base -> base.ppe().keySet()),
            Place.of("method", "new\\s+FlushFirst\\(\\s*(\"[^\"]*\")", base -> base.methods().keySet()),
            Place.of("what-lifts-a-bar", "\\bBar\\.(?:notNow|usedUp)\\([^;]*,\\s*(\"[^\"]*\")\\s*\\)", base -> Bar.LIFTED_BY),
            Place.of("sentence", "new\\s+Next\\(\\s*Action\\.\\w+\\s*,[^,]*,\\s*(\"[^\"]*\")", base -> sentences("next.")),
            Place.of("method", "\\bBar\\.\\w+\\(\\s*(\"[^\"]*\")", base -> base.methods().keySet()),
            Place.of("method", "(?:new\\s+(?:Gated|Moved|Narrow|Caution|Protect|After)|Caution\\.toPeople)\\(\\s*(\"[^\"]*\")", base -> base.methods().keySet()),
            Place.of("method", "new\\s+After" + OF_A_METHOD + "(\"[^\"]*\")", base -> base.methods().keySet()),
            Place.of("method", "new\\s+Clash\\([^;]*?(?:java\\.util\\.)?List\\.of\\(([^)]*)\\)", base -> base.methods().keySet()),
            Place.of("method", "\\b(?:firstAid)\\(\\s*(\"[^\"]*\")", base -> base.methods().keySet()),
            Place.of("method", "\\bmethod" + COMPARED, base -> base.methods().keySet()),
            Place.of("method", "\\bwayOut" + COMPARED, base -> base.methods().keySet()),
            Place.of("method", "\\b(?:method\\.id|use\\.name\\(\\))" + COMPARED, base -> base.methods().keySet()),
            Place.of("method", "new\\s+Next\\(\\s*Action\\.\\w+\\s*,\\s*(\"[^\"]*\")", base -> base.methods().keySet()),
            Place.of("method-or-step", "Step\\.\\w+\\(\\s*\\d+\\s*,\\s*(\"[^\"]*\")",
                    base -> union(base.methods().keySet(), base.steps().keySet())),
            Place.of("method-or-step", "new\\s+Step\\(\\s*\"[^\"]*\"\\s*,\\s*\\d+\\s*,\\s*(\"[^\"]*\")",
                    base -> union(base.methods().keySet(), base.steps().keySet())),
            Place.of("family-of-methods", "\\bisFamily\\(\\s*(\"[^\"]*\")", RuleWords::families),
            Place.of("family-of-methods", "\\bmethod(?:\\(\\))?\\.family(?:\\(\\))?" + COMPARED, RuleWords::families),
            Place.of("family-of-agents", "\\bagent(?:\\(\\))?\\.family(?:\\(\\))?" + COMPARED, RuleWords::agentFamilies),
            Place.of("class-of-components", "\\b(?:isOf|share)\\(\\s*(\"[^\"]*\")", base -> base.matter().classes().keySet()),
            Place.of("component", "\\b(?:has|part)\\(\\s*(\"[^\"]*\")", base -> base.matter().components().keySet()),
            Place.of("way-of-a-method", "\\bworks\\(\\s*(\"[^\"]*\")", base -> base.matter().ways().keySet()),
            Place.of("method", "new\\s+Needless" + OF_A_METHOD + "(\"[^\"]*\")", base -> base.methods().keySet()),
            Place.of("hazard", "\\b(?:hasHazard\\(|hazards(?:\\(\\))?\\s+(?:not\\s+)?contains)\\s*(\"[^\"]*\")", RuleWords::hazards),
            Place.of("bond-class", "\\b(?:fresh|hardened)" + COMPARED, base -> base.bondClasses().keySet()),
            Place.of("sign", "\\bobservation\\.id" + COMPARED, base -> base.observations().keySet()),
            Place.of("circumstance", "\\bcircumstance\\.id" + COMPARED, base -> base.circumstances().keySet()),
            Place.of("contaminant", "\\bcontaminant\\.id" + COMPARED, base -> base.contaminants().keySet()),
            Place.of("agent", "\\bagent\\.id" + COMPARED, base -> base.agents().keySet()),
            Place.of("tool", "\\btool\\.id" + COMPARED, base -> base.tools().keySet()));

    private RuleWords() {
    }

    /** Every word of a rule that names nothing, and every trait and nature that nothing reads or that no entry has. */
    public static List<Fault> faults(Map<String, String> texts, KnowledgeBase base) {
        List<Fault> faults = new ArrayList<>();
        rules(texts).forEach((rule, text) -> PLACES.forEach(place -> place.words(text).map(word -> word.group(1)).distinct()
                .filter(word -> !place.known().apply(base).contains(word))
                .forEach(word -> faults.add(new Fault("rules", rule, Texts.said("rule.no-word", "kind",
                        Texts.said("rule.kind." + place.kind()), "word", word),
                        Near.to(word, place.known().apply(base))).by(LoadingChecks.RULE_WORD.id())))));
        String all = String.join("\n", rules(texts).values());
        faults.addAll(idle(all, Trait.class, read(base), base.surfaces().values().stream().flatMap(s -> s.traits().stream())
                .collect(Collectors.toSet()), "surfaces"));
        faults.addAll(idle(all, Nature.class, Set.of(), base.contaminants().values().stream().flatMap(c -> c.nature().stream())
                .collect(Collectors.toSet()), "contaminants"));
        Set<String> byCode = Arrays.stream(DecisionId.values()).map(DecisionId::id).collect(Collectors.toSet());
        base.decisions().byId().keySet().stream().filter(id -> !byCode.contains(id) && !all.contains("value(\"" + id + "\")"))
                .forEach(id -> faults.add(new Fault("decisions.yaml", id, Texts.said("rule.asked-by-none"),
                        Texts.said("rule.asked-by-none.do")).by(LoadingChecks.RULE_UNREAD.id())));
        return faults;
    }

    /** Quoted words that stand where nothing looks at them, by rule. */
    static Map<String, Set<String>> unlooked(Map<String, String> texts) {
        Map<String, Set<String>> unlooked = new TreeMap<>();
        rules(texts).forEach((rule, text) -> {
            Set<Integer> looked = PLACES.stream().flatMap(place -> place.words(text)).map(MatchResult::start)
                    .collect(Collectors.toSet());
            unlooked.put(rule, QUOTED.matcher(text).results().filter(word -> !looked.contains(word.start()))
                    .map(word -> word.group(1)).collect(Collectors.toCollection(TreeSet::new)));
        });
        return unlooked;
    }

    /** What each rule does, by its id: without what it says of itself, and without comments. */
    private static Map<String, String> rules(Map<String, String> texts) {
        Map<String, String> rules = new TreeMap<>();
        texts.values().forEach(text -> RULE.matcher(text).results().forEach(rule -> {
            Matcher id = ID.matcher(rule.group(2));
            String does = ANNOTATION.matcher(rule.group(2)).replaceAll("").replaceAll("ruleflow-group\\s+\"[^\"]*\"", "");
            rules.put(id.find() ? id.group(1) : rule.group(1), COMMENT.matcher(does).replaceAll(found ->
                    found.group(1) == null ? "" : Matcher.quoteReplacement(found.group(1))));
        }));
        return rules;
    }

    private static <E extends Enum<E>> List<Fault> idle(String rules, Class<E> words, Set<E> readElsewhere, Set<E> used, String kept) {
        List<Fault> faults = new ArrayList<>();
        for (E word : words.getEnumConstants()) {
            String name = word.name().toLowerCase(Locale.ROOT);
            boolean read = readElsewhere.contains(word)
                    || Pattern.compile("\\b" + words.getSimpleName() + "\\." + word.name() + "\\b").matcher(rules).find();
            if (!read) {
                faults.add(new Fault("rules", name, Texts.said("rule.read-by-none", "kind",
                        words.getSimpleName().toLowerCase(Locale.ROOT)), Texts.said("rule.read-by-none.do"))
                        .by(LoadingChecks.RULE_UNREAD.id()));
            }
            if (!used.contains(word)) {
                faults.add(new Fault("rules", name, Texts.said("rule.had-by-none", "kind", kept), Texts.said("rule.had-by-none.do"))
                        .by(LoadingChecks.RULE_UNREAD.id()));
            }
        }
        return faults;
    }

    /** By a check that leaves such a surface alone. */
    private static Set<Trait> read(KnowledgeBase base) {
        Set<Trait> read = EnumSet.noneOf(Trait.class);
        base.signs().checks().values().forEach(check -> read.addAll(check.notOn()));
        return read;
    }

    /** Ids of the message files below a word, without it. */
    private static Set<String> sentences(String below) {
        return Texts.chosen().all().keySet().stream().filter(id -> id.startsWith(below)).map(id -> id.substring(below.length()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> families(KnowledgeBase base) {
        return union(base.families().keySet(), base.methods().values().stream().map(m -> m.family()).toList());
    }

    private static Set<String> agentFamilies(KnowledgeBase base) {
        return union(base.agents().values().stream().map(a -> a.family()).toList(), List.of("none"));
    }

    private static Set<String> hazards(KnowledgeBase base) {
        return base.contaminants().values().stream().flatMap(c -> c.hazards().stream()).collect(Collectors.toCollection(TreeSet::new));
    }

    @SafeVarargs
    private static Set<String> union(Collection<String>... parts) {
        return Arrays.stream(parts).flatMap(Collection::stream).collect(Collectors.toCollection(TreeSet::new));
    }
}
