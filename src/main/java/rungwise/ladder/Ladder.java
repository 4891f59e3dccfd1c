package rungwise.ladder;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;
import rungwise.question.Question;
import rungwise.rules.Phase;
import rungwise.rules.fact.Bared;
import rungwise.rules.said.Because;
import rungwise.rules.said.Cleared;
import rungwise.rules.said.Climbed;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Conclusions;
import rungwise.rules.said.Reason;
import rungwise.rules.said.Repeated;
import rungwise.rules.use.Earlier;
import rungwise.rules.use.Placed;
import rungwise.text.Figure;

/**
 * The ladder of one spot: over all that the deposit may be, in one order, after everything that was tried. A named deposit is
 * a belief of one. Once the deposit is off and a mark shows it is the ladder of the mark.
 *
 * @param subject  what it is of
 * @param order    every method that could have been a rung before the first try, in the fixed order
 * @param rungs    still worth trying
 * @param slow     gentle but slow, and not chosen
 * @param passed   permitted and not offered, by method
 * @param weights  belief in each hidden state, after the tries
 * @param still    the same, and how stubborn the spot is by the tries
 * @param failed   rungs that changed nothing
 * @param repeated rungs that helped and may be used once more
 * @param cost     expected worker minutes, referral included
 */
public record Ladder(Revision revision, Subject subject, Situation situation, Verdicts verdicts, States states, List<Choice> order,
                     List<Choice> rungs, List<Choice> slow, Map<String, PassedOver> passed, double[] weights, Still still, Set<String> failed, Set<String> repeated,
                     Optional<Because> cleared, double cost) {

    /** An order that has not settled by then never will; the last one counts. */
    private static final int ROUNDS = 6;

    /**
     * Builds it.
     *
     * @param all   judge every remover, also those that could never matter for this deposit
     * @param table for what is worth trying; what is permitted and in which order stays with the priors
     */
    public static Ladder of(Revision revision, Question question, Suspects suspects, boolean all, ChanceTable table) {
        Subject subject = Subject.of(question, suspects, revision.base());
        Situation situation = Situation.of(revision, subject);
        if (subject.bared().isPresent()) {
            // what holds all work at the deposit holds it at the mark
            Subject deposit = Subject.deposit(question, suspects);
            Situation there = Situation.of(revision, deposit);
            subject = there.isStopped() ? deposit : subject;
            situation = there.isStopped() ? there : situation;
        }
        return of(revision, subject, situation, all, table);
    }

    private static Ladder of(Revision revision, Subject subject, Situation situation, boolean all, ChanceTable table) {
        Question question = situation.question();
        Verdicts verdicts = new Verdicts(revision, situation, all);
        States priors = new States(situation, revision.base(), ChanceTable.PRIOR);
        States states = new States(situation, revision.base(), table);
        double pointless = revision.base().decisions().value(DecisionId.POINTLESS);
        List<Choice> able = verdicts.all().keySet().stream().filter(verdicts::isPermittedEver).map(id -> verdicts.choice(id, priors))
                .filter(c -> c.bestChance() >= pointless).toList();
        Order order = Order.among(revision, situation, able);
        verdicts.bar(order.bars().stream().filter(b -> Situation.bars(b, situation.suspects(), revision.base().decisions()))
                .map(b -> new Concluded<>(b.conclusion(), b.because())).distinct().toList());
        List<Choice> permitted = able.stream().filter(c -> verdicts.isPermittedEver(c.id())).toList();
        Set<String> pushing = permitted.stream().map(Choice::id).collect(Collectors.toSet());
        Worth worth = new Worth(revision.base().decisions(), revision.sequence(), question.canWaitMinutes());
        // what moves another back is a rung by what knowledge says, so that no log and no try moves the order; which these are
        // depends on the order in turn, and settles within a round or two
        List<Choice> ordered = order.of(permitted, pushing);
        Worth.Offer known = worth.choose(ordered, priors.prior(), Set.of());
        for (int round = 0; round < ROUNDS; round++) {
            Set<String> rungs = known.rungs().stream().map(Choice::id).collect(Collectors.toSet());
            if (rungs.equals(pushing)) {
                break;
            }
            pushing = rungs;
            ordered = order.of(permitted, pushing);
            known = worth.choose(ordered, priors.prior(), Set.of());
        }
        if (table != ChanceTable.PRIOR) {
            double ofWork = revision.base().decisions().value(DecisionId.MINUTE_OF_WORK);
            ordered = ordered.stream().map(c -> learned(c, states).paced(table.pace(c.method()), ofWork)).toList();
            known = (states.isLearned(ordered) ? worth.of(states.still()) : worth).choose(ordered, states.prior(), Set.of());
        }
        return new Climb(revision, subject, situation, verdicts, states, ordered, known, worth).ladder();
    }

    private static Choice learned(Choice choice, States states) {
        List<Likely> likely = states.likely(choice.method());
        return choice.with(likely, states.chances(choice.method(), likely));
    }

    /** What is left after the tries. */
    private static final class Climb {
        private final Revision revision;
        private final Subject subject;
        private final Situation situation;
        private final Verdicts verdicts;
        private final States states;
        private final List<Choice> ordered;
        private final Worth.Offer first;
        private final Worth worth;
        private final double[] weights;
        private final Still still;
        private final Map<String, PassedOver> passed = new LinkedHashMap<>();

        private Climb(Revision revision, Subject subject, Situation situation, Verdicts verdicts, States states, List<Choice> ordered,
                      Worth.Offer first, Worth worth) {
            this.revision = revision;
            this.subject = subject;
            this.situation = situation;
            this.verdicts = verdicts;
            this.states = states;
            this.first = first;
            this.ordered = ordered;
            this.weights = states.afterTries();
            this.still = states.still(weights);
            this.worth = states.isLearned(ordered) ? worth.of(still) : worth;
        }

        private Ladder ladder() {
            passed.putAll(first.passed());
            List<Choice> before = inOrder(first.rungs());
            if (situation.attempts().isEmpty() && before.stream().allMatch(r -> verdicts.isPermitted(r.id()))) {
                return whole(before, slow(before, Set.of()), Set.of(), Set.of(), Optional.empty(), first.cost());
            }
            Conclusions said = revision.book().run(Phase.TRIED, facts(before));
            Map<String, List<Because>> climbed = new LinkedHashMap<>();
            said.of(Climbed.class).forEach(c -> climbed.computeIfAbsent(c.conclusion().method(), m -> new ArrayList<>()).add(c.because()));
            Set<String> repeated = said.of(Repeated.class).stream().map(r -> r.conclusion().method()).collect(Collectors.toSet());
            Optional<Because> cleared = said.of(Cleared.class).stream().findFirst().map(Concluded::because);
            Set<String> failed = before.stream().map(Choice::id).filter(this::changedNothing).collect(Collectors.toSet());
            before.stream().filter(r -> climbed.containsKey(r.id())).forEach(r -> passed.put(r.id(),
                    new PassedOver(r, climbed.get(r.id()).get(0).name(), climbed.get(r.id()))));
            namedByTheirTry(said);
            if (cleared.isPresent()) {
                before.stream().filter(r -> !climbed.containsKey(r.id())).forEach(r -> passed.put(r.id(),
                        new PassedOver(r, cleared.get().name(), List.of(cleared.get()))));
                return whole(List.of(), List.of(), failed, repeated, cleared, 0);
            }
            Worth.Offer left = again(before, climbed.keySet());
            List<Choice> rungs = inOrder(left.rungs()).stream().map(this::returned).toList();
            return whole(rungs, slow(rungs, climbed.keySet()), failed, repeated, cleared, left.cost());
        }

        /** What a try of its own showed says more of a method than why it would have been left out before. */
        private void namedByTheirTry(Conclusions said) {
            Map<String, List<Because>> own = new LinkedHashMap<>();
            said.of(Climbed.class).stream().filter(c -> c.conclusion().isByOwnTry()).forEach(c -> own.computeIfAbsent(c.conclusion()
                    .method(), m -> new ArrayList<>()).add(c.because()));
            own.forEach((id, because) -> passed.put(id, new PassedOver(ordered.stream().filter(c -> c.id().equals(id)).findFirst()
                    .orElseGet(() -> verdicts.choice(id, states)), because.get(0).name(), because)));
        }

        /** The tail of the old ladder; what became likelier, or was left out for one that is not offered any more; else all untried. */
        private Worth.Offer again(List<Choice> before, Set<String> climbed) {
            Set<String> old = before.stream().map(Choice::id).collect(Collectors.toSet());
            List<Choice> open = ordered.stream().filter(c -> !climbed.contains(c.id()) && verdicts.isPermitted(c.id())).toList();
            Set<String> tail = open.stream().map(Choice::id).filter(old::contains).collect(Collectors.toSet());
            List<Choice> pool = open.stream().filter(c -> tail.contains(c.id()) || !situation.question().hasTried(c.id())
                    && (gained(c) > 0 || isReleased(c, tail, climbed))).toList();
            Worth.Offer offer = keep(worth.choose(pool, weights, tail));
            if (!offer.rungs().isEmpty()) {
                return offer;
            }
            return keep(worth.choose(open.stream().filter(c -> !situation.question().hasTried(c.id())).toList(), weights, Set.of()));
        }

        /** What it passed over counts, and what it offers is not passed over. */
        private Worth.Offer keep(Worth.Offer offer) {
            passed.putAll(offer.passed());
            offer.rungs().forEach(r -> passed.remove(r.id()));
            return offer;
        }

        /** It was left out for the sake of one that is neither offered nor used up: by a try, as preparation, or by being gentler than a try. */
        private boolean isReleased(Choice choice, Set<String> tail, Set<String> climbed) {
            PassedOver why = passed.get(choice.id());
            return why != null && why.step().equals("same-again") && ordered.stream().noneMatch(other -> why.because().stream()
                    .flatMap(b -> b.figures().stream()).anyMatch(f -> f.name().equals("instead")
                            && f.value().equals(other.method().name()))
                    && (tail.contains(other.id()) || climbed.contains(other.id()) || !verdicts.isPermitted(other.id())
                    || situation.question().hasTried(other.id())));
        }

        private List<Object> facts(List<Choice> before) {
            List<Object> facts = new ArrayList<>(situation.attempts());
            double pointless = revision.base().decisions().value(DecisionId.POINTLESS);
            for (int place = 0; place < ordered.size(); place++) {
                Choice choice = ordered.get(place);
                boolean offered = index(before, choice.id()) >= 0 || situation.isOpen() && choice.mean(states.prior()) >= pointless;
                facts.add(new Placed(choice.use(), place, offered, situation.question().hasTried(choice.id()), gained(choice)));
                revision.sequence().earlierThan(choice.id()).keySet().forEach(f -> facts.add(new Earlier(f, choice.id())));
            }
            verdicts.all().keySet().stream().filter(situation.question()::hasTried).filter(id -> index(ordered, id) < 0)
                    .map(revision.base().methods()::get).filter(m -> m.kind() == MethodKind.REMOVE)
                    .forEach(m -> facts.add(new Placed(verdicts.use(m), ordered.size(), false, true, 0)));
            return facts;
        }

        /** A gentler one that comes after a harsher one failed says why. */
        private Choice returned(Choice rung) {
            int place = index(ordered, rung.id());
            boolean gentler = gained(rung) > 0 && ordered.stream().filter(c -> changedNothing(c.id()))
                    .anyMatch(c -> index(ordered, c.id()) > place);
            return !gentler ? rung : rung.carrying(rung.carried(), rung.depth(), Stream.concat(rung.orderReasons().stream(),
                    Stream.of(Because.of(Reason.decision(revision.base().decisions().of(DecisionId.COMES_BACK)), List.of(Figure.against("chanceNow",
                            Math.round(1000 * rung.mean(weights)) / 1000.0, "", Math.round(1000 * rung.mean(states.prior())) / 1000.0)))))
                    .toList());
        }

        /** By how much its chance rose with the tries, where these also tell what it is. */
        private double gained(Choice choice) {
            return situation.isOpen() ? Math.max(0, Math.round(1000 * (choice.mean(weights) - choice.mean(states.prior()))) / 1000.0) : 0;
        }

        private boolean changedNothing(String id) {
            return situation.attempts().stream().anyMatch(a -> a.counts() && a.outcome().equals("no-change") && a.method().equals(id));
        }

        private List<Choice> inOrder(List<Choice> rungs) {
            return ordered.stream().filter(c -> index(rungs, c.id()) >= 0).toList();
        }

        private static int index(List<Choice> rungs, String id) {
            for (int i = 0; i < rungs.size(); i++) {
                if (rungs.get(i).id().equals(id)) {
                    return i;
                }
            }
            return -1;
        }

        private List<Choice> slow(List<Choice> rungs, Set<String> climbed) {
            double pointless = revision.base().decisions().value(DecisionId.POINTLESS);
            return passed.values().stream().filter(p -> p.step().equals("slow")).map(PassedOver::choice)
                    .filter(c -> verdicts.isPermitted(c.id()) && !climbed.contains(c.id()) && index(rungs, c.id()) < 0)
                    .filter(c -> !situation.question().hasTried(c.id())).filter(c -> c.mean(weights) >= pointless).toList();
        }

        private Ladder whole(List<Choice> rungs, List<Choice> slow, Set<String> failed, Set<String> repeated,
                             Optional<Because> cleared, double cost) {
            Set<String> placed = new LinkedHashSet<>();
            Stream.concat(rungs.stream(), slow.stream()).forEach(c -> placed.add(c.id()));
            addPointless(placed);
            Map<String, PassedOver> out = new LinkedHashMap<>();
            passed.forEach((id, p) -> {
                if (!placed.contains(id) && verdicts.isPermitted(id)) {
                    out.put(id, p);
                }
            });
            return new Ladder(revision, subject, situation, verdicts, states, ordered, rungs, slow, out, weights, still, failed, repeated, cleared, cost);
        }

        /** Every other remover that nothing bars: it could do nothing here, whatever the state of the deposit. */
        private void addPointless(Set<String> placed) {
            Map<String, Verdict> onSurface = revision.standing().on(situation.surface());
            double limit = revision.base().decisions().value(DecisionId.POINTLESS);
            for (Method method : revision.base().methods().values()) {
                String id = method.id();
                boolean permitted = verdicts.all().containsKey(id) ? verdicts.isPermitted(id)
                        : onSurface.getOrDefault(id, Verdict.NOTHING).isPermitted()
                        && !situation.question().consent().refused().contains(id);
                if (method.kind() == MethodKind.REMOVE && permitted && !placed.contains(id) && !passed.containsKey(id)) {
                    Choice choice = verdicts.choice(id, states);
                    passed.put(id, new PassedOver(choice, "pointless", List.of(Because.of(Reason.decision(
                            revision.base().decisions().of(DecisionId.POINTLESS)), List.of(Figure.against("chance",
                            choice.bestChance(), "", limit))))));
                }
            }
        }
    }

    /** Belief by suspect, after the tries. */
    public Map<String, Double> belief() {
        return states.bySuspect(weights);
    }

    /** Belief that it has hardened, after the tries. */
    public double hardened() {
        return states.hardened(weights);
    }

    /** How likely it is to work now, after what was tried on this spot. */
    public double mean(Choice choice) {
        return situation.attempts().isEmpty() ? choice.mean(weights) : still.next(choice);
    }

    /** Worker minutes over those that knowledge states. */
    public double pace(Method method) {
        return states.pace(method);
    }

    /** Tries of it here, on what the deposit most likely is. */
    public ChanceTable.Count count(Choice choice) {
        return states.count(choice.method());
    }

    public double triesBehind(Choice choice) {
        return states.triesBehind(choice.likely(), weights);
    }

    /** Chance of any method that was judged, offered or not. */
    public double chance(String method) {
        return mean(verdicts.choice(method, states));
    }

    /** Chance of every remover in each hidden state. */
    public Map<String, double[]> chances() {
        Map<String, double[]> chances = new LinkedHashMap<>();
        revision.base().methods().values().stream().filter(m -> m.kind() == MethodKind.REMOVE)
                .forEach(m -> chances.put(m.id(), states.chances(m, states.likely(m))));
        return chances;
    }

    /** Suspects that are expected to have marked what is beneath. */
    List<Contaminant> markedBy() {
        return situation.suspects().stream().filter(s -> s.deposit().marked() >= revision.base().decisions().value(DecisionId.MARK_EXPECTED))
                .map(Suspect::contaminant).toList();
    }

    /** The question as it was put. */
    public Question asked() {
        return subject.asked();
    }

    /** What came off and what shows beneath, where this is the ladder of a mark. */
    public Optional<Bared> bared() {
        return subject.bared();
    }

    /** Belief that a mark is already beneath. */
    public double marked() {
        if (bared().isPresent()) {
            return 1;
        }
        Map<String, Double> belief = belief();
        double sum = belief.values().stream().mapToDouble(b -> b).sum();
        return situation.suspects().stream().mapToDouble(s -> belief.get(s.id()) / sum * s.deposit().marked()).sum();
    }
}
