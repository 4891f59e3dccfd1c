package rungwise.answer;

import java.util.HashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.MethodKind;
import rungwise.ladder.Ladder;
import rungwise.ladder.Situation;
import rungwise.ladder.Surroundings;
import rungwise.ladder.Verdict;
import rungwise.question.Question;
import rungwise.question.Touched;
import rungwise.rules.said.Concluded;

/** What a ladder came by on its way to an answer, so that the facts it met on none of it can be told. */
final class CameBy {
    /** A rule that looks at a sign says so by a figure of this name. */
    private static final String SEEN = "seen";

    private final KnowledgeBase base;
    private final Ladder ladder;
    private final Surroundings around;
    private final Question question;

    private CameBy(Ladder ladder, Surroundings around) {
        this.base = ladder.revision().base();
        this.ladder = ladder;
        this.around = around;
        this.question = ladder.situation().question();
    }

    static Touched of(Ladder ladder, Surroundings around) {
        CameBy way = new CameBy(ladder, around);
        Situation situation = ladder.situation();
        return new Touched(situation.isStopped(), situation.surface(), way.contaminant(), way.gates(), way.methods(), way.signs(),
                around.doneWords(), around.figures());
    }

    private Contaminant contaminant() {
        return base.contaminants().get(question.contaminant().filter(base.contaminants()::containsKey)
                .orElseGet(() -> ladder.belief().keySet().iterator().next()));
    }

    /** Those that are offered, passed over or barred in it, and those of the steps around its rungs. */
    private Set<String> methods() {
        Set<String> methods = new TreeSet<>(ladder.verdicts().all().keySet());
        methods.addAll(around.methods());
        question.consent().refused().stream().filter(this::wouldBePassedOver).forEach(methods::add);
        return methods;
    }

    /** A remover that was not judged is passed over as pointless, unless it is barred or refused. */
    private boolean wouldBePassedOver(String word) {
        Verdict here = onSurface().get(word);
        return Optional.ofNullable(base.methods().get(word)).filter(m -> m.kind() == MethodKind.REMOVE).isPresent()
                && (here == null || here.bars().isEmpty());
    }

    private Map<String, Verdict> onSurface() {
        return ladder.revision().standingOn(ladder.situation().surface());
    }

    /** A refusal bars whatever its gate stands before; any other gate matters only before what is not barred anyway. */
    private Set<String> gates() {
        Set<String> refused = Set.copyOf(question.consent().refused());
        Set<String> gates = new TreeSet<>();
        ladder.verdicts().all().values().forEach(v -> of(v).filter(g -> v.isUnbarred() || refused.contains(g)).forEach(gates::add));
        around.methods().stream().map(onSurface()::get).filter(Objects::nonNull).flatMap(CameBy::of).filter(refused::contains)
                .forEach(gates::add);
        return gates;
    }

    private static Stream<String> of(Verdict verdict) {
        return verdict.gates().stream().map(g -> g.conclusion().gate());
    }

    private Set<String> signs() {
        Set<Object> seen = new HashSet<>();
        Stream.concat(ladder.verdicts().all().values().stream().flatMap(CameBy::said), around.methods().stream().flatMap(m ->
                around.barsOf(m).stream())).flatMap(c -> c.because().figures().stream())
                .filter(f -> f.name().equals(SEEN)).forEach(f -> seen.add(f.value()));
        return question.observations().stream().filter(o -> seen.contains(base.observations().get(o).says()))
                .collect(Collectors.toSet());
    }

    private static Stream<Concluded<?>> said(Verdict v) {
        return Stream.of(v.bars(), v.gates(), v.moves(), v.narrows(), v.cautions(), v.protects(), v.spared(), v.marrings())
                .flatMap(c -> c.stream());
    }
}
