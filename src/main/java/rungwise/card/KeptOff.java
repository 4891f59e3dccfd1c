package rungwise.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Sentence;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.rules.said.Because;
import rungwise.text.Texts;

/** What is kept off the spot, in the order in which a hand would reach for it, and by which reasons. */
public final class KeptOff {
    private static final int NAMES = 4;
    /** What bars fewer is about those few, and no reason why nothing is tried. */
    private static final int SEVERAL = 3;
    /** So much more is a method reached for that the deposit itself forbids. */
    private static final double FORBIDDEN_BY_DEPOSIT = 0.5;

    private final KnowledgeBase base;
    private final Answer answer;
    private final Lying lying;

    public KeptOff(KnowledgeBase base, Answer answer) {
        this.base = base;
        this.answer = answer;
        this.lying = Lying.of(base, answer);
    }

    /** A family of which all is kept off for one reason goes by its own name. */
    public String names(List<Answer.Barred> barred) {
        List<Answer.Barred> real = barred.stream().filter(this::isReachedFor).sorted(Comparator.comparingDouble(this::reach).reversed()
                .thenComparing(Comparator.comparingInt(this::harm).reversed())).toList();
        Map<String, List<Answer.Barred>> groups = new LinkedHashMap<>();
        Set<String> elsewhere = elsewhere(barred);
        real.forEach(b -> groups.computeIfAbsent(group(b, real, elsewhere), g -> new ArrayList<>()).add(b));
        List<String> names = List.copyOf(groups.keySet());
        List<String> shown = names.subList(0, Math.min(NAMES, names.size()));
        int more = real.size() - shown.stream().mapToInt(n -> groups.get(n).size()).sum();
        return String.join(", ", shown) + (more == 0 ? "" : " " + Texts.said("card.and-more", "many", more));
    }

    /** What was made for another material no hand brings here, whatever harm it would do. */
    private boolean isReachedFor(Answer.Barred one) {
        Set<SurfaceKind> made = base.methods().get(one.method()).madeFor();
        return !one.madeForOther() && (made.isEmpty() || lying.surface().isEmpty() || made.stream().anyMatch(lying.surface().get()::mayBe));
    }

    private String group(Answer.Barred one, List<Answer.Barred> real, Set<String> elsewhere) {
        String family = family(one.method());
        List<Answer.Barred> kin = real.stream().filter(b -> family(b.method()).equals(family)).toList();
        if (kin.size() == 1 || elsewhere.contains(family)
                || !kin.stream().allMatch(b -> b.because().get(0).id().equals(one.because().get(0).id()))) {
            return one.name();
        }
        String name = base.families().get(family).name();
        return offered().anyMatch(m -> family(m).equals(family)) ? Texts.said("card.others", "family", Sentence.within(name)) : name;
    }

    private String family(String method) {
        return base.methods().get(method).family();
    }

    private Stream<String> offered() {
        return Stream.concat(answer.rungs().stream().map(Answer.Rung::method), answer.alternatives().stream().map(Answer.Alternative::method));
    }

    /** Families of which something stands in another list: their name would say too much. */
    private Set<String> elsewhere(List<Answer.Barred> barred) {
        Set<String> here = barred.stream().map(Answer.Barred::method).collect(Collectors.toSet());
        return Stream.concat(answer.passedOver().stream().map(Answer.PassedOver::method), answer.barred().stream().map(Answer.Barred::method))
                .filter(m -> !here.contains(m)).map(this::family).collect(Collectors.toSet());
    }

    /** Why nothing is tried: what keeps off those that would be thought of first, a reason of its own before a mere limit. */
    public Optional<String> reason() {
        Map<String, List<Because>> byReason = new LinkedHashMap<>();
        Map<String, Double> reached = new HashMap<>();
        Stream.concat(answer.never().stream(), answer.notNow().stream()).filter(b -> !b.madeForOther()).forEach(b -> b.because().forEach(why -> {
            byReason.computeIfAbsent(why.id(), i -> new ArrayList<>()).add(why);
            reached.merge(why.id(), reach(b), Double::sum);
        }));
        return byReason.values().stream().filter(w -> w.size() >= SEVERAL)
                .max(Comparator.comparing((List<Because> w) -> !isLimit(w.get(0))).thenComparingInt(List::size)
                        .thenComparingDouble(w -> reached.get(w.get(0).id())))
                .map(w -> Texts.chosen().fill(w.get(0).says(), w.get(0).figures()));
    }

    /** Whether it is a figure of the surface, as its pH or its hardness, and not what the surface is for. */
    private static boolean isLimit(Because why) {
        return why.figures().stream().anyMatch(f -> f.limit().isPresent());
    }

    private double reach(Answer.Barred one) {
        return lying.chance(base.methods().get(one.method())) + (one.because().get(0).figures().stream().anyMatch(f -> f.name().equals("deposit")) ? FORBIDDEN_BY_DEPOSIT : 0);
    }

    private int harm(Answer.Barred one) {
        Method method = base.methods().get(one.method());
        return method.severity().mechanical() + method.severity().chemical();
    }
}
