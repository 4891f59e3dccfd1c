package rungwise.laws;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.answer.LadderAnswer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.ladder.ChanceTable;
import rungwise.ladder.Suspects;
import rungwise.question.Question;
import rungwise.rules.said.Because;

/**
 * An answer as a law looks at it: every method in its place, every step with whom it is for, every sentence with its
 * reasons. Laws that are held for a named deposit and over a belief alike look at this and never at the answer itself, so
 * that here alone it is known how an answer is built.
 *
 * @param belief what the deposit was believed to be; its name alone where it was named
 * @param stop   hold, flush or stop, where the answer is one of these
 * @param left   what is no rung and no alternative, each with its place
 * @param said   everything that is said, with its reasons
 */
record Placed(Question question, Map<String, Double> belief, Optional<String> stop, Next next, List<Offer> rungs,
              List<Offer> alternatives, List<Left> left, List<Step> before, List<Step> after, String wayOut,
              Expected expected, List<Said> said) {
    /** Where a vehicle is closed in, as a question says it. */
    static final String INSIDE = "inside";
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();

    /** Where a method stands in an answer. */
    enum Place { RUNG, ALTERNATIVE, PASSED_OVER, NEVER, NOT_NOW, USED_UP }

    /**
     * A method that is offered.
     *
     * @param visit   which visit it belongs to, from 1
     * @param key     what it is sorted by: its own, or that of what it waits for; its last field is a method
     * @param gates   state by id
     * @param follows what is done when it cleared the spot
     */
    record Offer(String method, int visit, Grades grades, List<Object> key, Chance chance, double minutes, List<Because> because,
                 List<Bridge> bridges, Set<String> protection, Map<String, String> gates, List<String> follows,
                 List<String> corrections) {
        boolean hasMissing(String gate) {
            return "missing".equals(gates.get(gate));
        }

        Offer with(Chance other) {
            return new Offer(method, visit, grades, key, other, minutes, because, bridges, protection, gates, follows, corrections);
        }

        Offer of(String other) {
            return new Offer(other, visit, grades, key, chance, minutes, because, bridges, protection, gates, follows, corrections);
        }

        Offer reasoned(List<Because> others) {
            return new Offer(method, visit, grades, key, chance, minutes, others, bridges, protection, gates, follows, corrections);
        }

        Offer sortedBy(List<Object> other) {
            return new Offer(method, visit, grades, other, chance, minutes, because, bridges, protection, gates, follows, corrections);
        }

        Offer onVisit(int other) {
            return new Offer(method, other, grades, key, chance, minutes, because, bridges, protection, gates, follows, corrections);
        }

        Offer protectedBy(Set<String> items) {
            return new Offer(method, visit, grades, key, chance, minutes, because, bridges, items, gates, follows, corrections);
        }

        Offer bridgedBy(List<Bridge> others) {
            return new Offer(method, visit, grades, key, chance, minutes, because, others, protection, gates, follows, corrections);
        }

        Offer gatedBy(Map<String, String> others) {
            return new Offer(method, visit, grades, key, chance, minutes, because, bridges, protection, others, follows, corrections);
        }
    }

    record Grades(int mechanical, int chemical, int thermal, double filmMicrons) {
    }

    record Chance(double mean, double low, double high) {
    }

    /** What happens between an earlier chemistry and this method. */
    record Bridge(String after, List<String> steps, double minutes) {
    }

    /** What is no rung. Which decision left it there, where it was one, in words as the answer shows them. */
    record Left(Place place, String method, String step, List<Because> because) {
    }

    /**
     * A step around the rungs.
     *
     * @param forRungs the methods that it belongs to; empty = all
     */
    record Step(String name, Set<String> forRungs) {
        boolean isFor(String method) {
            return forRungs.isEmpty() || forRungs.contains(method);
        }
    }

    /** The one thing to do now, with the steps named on the way to it. */
    record Next(String action, Optional<String> method, Optional<String> until, List<String> steps) {
    }

    record Expected(double cleared, double alreadyMarked, double markByWork, double best, double likely, double worst) {
    }

    /** A sentence of the answer, by what it is about. */
    record Said(String what, List<Because> because) {
    }

    /** The answer about a deposit that has a name, every remover explained. */
    static Placed named(Question question) {
        return of(Base.advisor().answer(question, true), question.contaminant().map(c -> Map.of(c, 1.0)).orElse(Map.of()));
    }

    /** The same as somebody gets it who asks for no explanations. */
    static Placed plain(Question question) {
        return of(Base.advisor().answer(question));
    }

    /** The answer over all that the deposit may be, every remover explained. */
    static Placed over(Map<String, Double> belief, Question question) {
        return over(belief, question, ChanceTable.PRIOR);
    }

    static Placed over(Map<String, Double> belief, Question question, ChanceTable learned) {
        return of(Base.advisor().answer(nameless(question), new Suspects(belief), true, learned), belief);
    }

    /** The answer of a shop that has tried before. */
    static Placed learned(Question question, ChanceTable learned) {
        return of(Base.advisor().answer(question, false, learned));
    }

    static Question nameless(Question q) {
        return new Question(Optional.empty(), q.observations(), q.notSeen(), q.age(), q.extent(), q.surface(), q.facts(), q.circumstances(),
                q.neighbours(), q.setting(), q.workers(), q.shelf(), q.shelfStrict(), q.consent(), q.done(), q.canWaitMinutes(),
                q.passedTests(), q.wanted(), q.tried(), q.mixing());
    }

    static Placed of(Answer a) {
        return of(a, a.question().contaminant().map(c -> Map.of(c, 1.0)).orElse(Map.of()));
    }

    static Placed of(Answer a, Map<String, Double> belief) {
        Optional<String> stop = Optional.of(a.next().action()).filter(Set.of("hold", "flush", "stop")::contains);
        List<Left> left = new ArrayList<>();
        a.passedOver().forEach(p -> left.add(new Left(Place.PASSED_OVER, p.method(), p.step(), p.because())));
        a.never().forEach(b -> left.add(new Left(Place.NEVER, b.method(), "", b.because())));
        a.notNow().forEach(b -> left.add(new Left(Place.NOT_NOW, b.method(), "", b.because())));
        a.usedUp().forEach(b -> left.add(new Left(Place.USED_UP, b.method(), "", b.because())));
        Answer.Expected e = a.ladder().map(LadderAnswer::expected).orElse(new Answer.Expected(0, 0, 0, new Answer.Took(0, 0, 0, 0, 0)));
        return new Placed(a.question(), belief, stop, next(a), a.rungs().stream().map(Placed::offer).toList(),
                a.alternatives().stream().map(Answer.Alternative::rung).map(Placed::offer).toList(), List.copyOf(left),
                steps(a.before()), steps(a.after()), a.whoTakesOver().map(Answer.WayOut::method).orElse(""), new Expected(e.chanceCleared(), e.alreadyMarked(),
                e.markByWork(), e.minutes().best(), e.minutes().likely(), e.minutes().worst()), said(a));
    }

    private static Offer offer(Answer.Rung r) {
        return new Offer(r.method(), r.visit(), new Grades(r.severity().mechanical(), r.severity().chemical(), r.severity().thermal(),
                r.severity().filmMicrons()), r.severity().key(), new Chance(r.chance().mean(), r.chance().low(), r.chance().high()),
                r.minutes(), r.because(), r.bridgeBefore().stream().map(b -> new Bridge(b.after(), b.steps(), b.minutes())).toList(),
                r.ppe().stream().map(Answer.Ppe::item).collect(Collectors.toCollection(TreeSet::new)),
                r.gates().stream().collect(Collectors.toMap(Answer.GateState::id, Answer.GateState::state, (one, two) -> one, TreeMap::new)),
                r.ifCleared().stream().map(Answer.Around::step).toList(), r.ifMarked().stream().map(Answer.Around::step).toList());
    }

    private static List<Step> steps(List<Answer.Around> steps) {
        return steps.stream().map(s -> new Step(s.step(), Set.copyOf(s.forRungs()))).toList();
    }

    /** The steps on the way to the next method; what is between two chemistries by its own steps. */
    private static Next next(Answer a) {
        Set<String> steps = new LinkedHashSet<>();
        a.next().steps().forEach(due -> {
            List<Answer.Bridge> bridges = a.rungs().stream().limit(1).flatMap(r -> r.bridgeBefore().stream())
                    .filter(b -> b.text().equals(due.text())).toList();
            bridges.forEach(b -> steps.addAll(b.steps()));
            if (bridges.isEmpty()) {
                steps.add(due.step());
            }
        });
        return new Next(a.next().action(), a.next().method(), a.next().until(), List.copyOf(steps));
    }

    private static List<Said> said(Answer a) {
        List<Said> said = new ArrayList<>();
        a.assumed().forEach(x -> said.add(new Said("assumed " + x.fact(), x.because())));
        a.hold().ifPresent(x -> said.add(new Said("hold", x.because())));
        Stream.concat(a.before().stream(), a.after().stream()).forEach(x -> around("step", x, said));
        a.passedOver().forEach(x -> said.add(new Said("passed over " + x.method(), x.because())));
        a.barred().forEach(x -> {
            said.add(new Said("bar of " + x.method(), x.because()));
            x.staysWet().ifPresent(w -> said.add(new Said("stays wet of " + x.method(), w.because())));
        });
        a.neighbours().forEach(x -> said.add(new Said("neighbour " + x.surface(), x.because())));
        a.whoTakesOver().ifPresent(w -> said.add(new Said("way out", w.because())));
        if (!a.next().action().equals("done")) {
            said.add(new Said("next " + a.next().action(), a.next().because()));
        }
        a.next().ppe().forEach(x -> said.add(new Said("ppe of next", x.because())));
        a.advice().forEach(x -> said.add(new Said("advice on " + x.about(), x.because())));
        Stream.concat(a.rungs().stream(), a.alternatives().stream().map(Answer.Alternative::rung)).forEach(r -> said(r, said));
        return List.copyOf(said);
    }

    private static void said(Answer.Rung r, List<Said> said) {
        said.add(new Said("rung " + r.method(), r.because()));
        r.staysWet().ifPresent(x -> said.add(new Said("stays wet of " + r.method(), x.because())));
        r.risks().forEach(x -> said.add(new Said("risk of " + r.method(), x.because())));
        r.ppe().forEach(x -> said.add(new Said("ppe " + x.item() + " of " + r.method(), x.because())));
        r.gates().forEach(x -> said.add(new Said("gate " + x.id() + " of " + r.method(), x.because())));
        r.bridgeBefore().forEach(x -> {
            said.add(new Said("bridge of " + r.method(), x.because()));
            x.rinse().ifPresent(w -> said.add(new Said("rinse of the bridge of " + r.method(), w.because())));
        });
        r.ifCleared().forEach(x -> around("if cleared of " + r.method() + ":", x, said));
        r.ifMarked().forEach(x -> around("if marked of " + r.method() + ":", x, said));
    }

    private static void around(String what, Answer.Around x, List<Said> said) {
        said.add(new Said(what + " " + x.step(), x.because()));
        x.rinse().ifPresent(w -> said.add(new Said("rinse of " + x.step(), w.because())));
    }

    boolean isStopped() {
        return stop.isPresent();
    }

    Stream<Offer> offered() {
        return Stream.concat(rungs.stream(), alternatives.stream());
    }

    List<String> ids() {
        return rungs.stream().map(Offer::method).toList();
    }

    /** Every place at which each method stands, with repetition. */
    Map<String, List<Place>> places() {
        Map<String, List<Place>> places = new TreeMap<>();
        rungs.forEach(r -> places.computeIfAbsent(r.method(), m -> new ArrayList<>()).add(Place.RUNG));
        alternatives.forEach(r -> places.computeIfAbsent(r.method(), m -> new ArrayList<>()).add(Place.ALTERNATIVE));
        left.forEach(l -> places.computeIfAbsent(l.method(), m -> new ArrayList<>()).add(l.place()));
        return places;
    }

    /** What is barred; of tries and contact too, unless only what stands around a rung is looked at. */
    Set<String> barred(boolean usedUpToo) {
        return left.stream().filter(l -> l.place() == Place.NEVER || l.place() == Place.NOT_NOW
                || usedUpToo && l.place() == Place.USED_UP).map(Left::method).collect(Collectors.toCollection(TreeSet::new));
    }

    /** All that the deposit is believed to be from some belief on, and in any case the likeliest. */
    List<String> suspects(double from) {
        List<String> likeliest = belief.entrySet().stream().sorted(Map.Entry.<String, Double>comparingByValue().reversed()
                .thenComparing(Map.Entry.comparingByKey())).map(Map.Entry::getKey).toList();
        return likeliest.stream().filter(id -> belief.get(id) >= from || id.equals(likeliest.get(0))).toList();
    }

    /** The same with other rungs. */
    Placed with(List<Offer> others) {
        return new Placed(question, belief, stop, next, others, alternatives, left, before, after, wayOut, expected, said);
    }

    /** The same with other steps before the rungs. */
    Placed preparedBy(List<Step> others) {
        return new Placed(question, belief, stop, next, rungs, alternatives, left, others, after, wayOut, expected, said);
    }

    /** The same with all but one place. */
    Placed leaving(List<Left> others) {
        return new Placed(question, belief, stop, next, rungs, alternatives, others, before, after, wayOut, expected, said);
    }

    /** The same, saying something else. */
    Placed saying(List<Said> others) {
        return new Placed(question, belief, stop, next, rungs, alternatives, left, before, after, wayOut, expected, others);
    }

    /** The methods that a reason's figures name, by id or by name. */
    static Set<String> named(Because because) {
        Set<String> named = new TreeSet<>();
        because.figures().stream().map(f -> f.value()).filter(String.class::isInstance).map(String.class::cast)
                .forEach(text -> named.addAll(Names.SEEN.computeIfAbsent(text, Placed::named)));
        return named;
    }

    private static Set<String> named(String text) {
        Set<String> named = new TreeSet<>();
        String rest = text;
        for (Map.Entry<String, String> one : Names.LONGEST_FIRST) {
            if (rest.contains(one.getKey())) {
                named.add(one.getValue());
                rest = rest.replace(one.getKey(), "#");
            }
        }
        for (String word : rest.split("[^A-Za-z0-9_]+")) {
            if (KNOWN.methods().containsKey(word)) {
                named.add(word);
            }
        }
        return named;
    }

    /** A name may be a part of another: the longer one is looked for first. */
    private static final class Names {
        static final List<Map.Entry<String, String>> LONGEST_FIRST = longestFirst();
        /** The same few sentences come again and again. */
        static final Map<String, Set<String>> SEEN = new ConcurrentHashMap<>();

        private static List<Map.Entry<String, String>> longestFirst() {
            Map<String, String> ids = new HashMap<>();
            KNOWN.methods().values().forEach(m -> ids.put(m.name(), m.id()));
            return ids.entrySet().stream().sorted(Comparator.comparingInt((Map.Entry<String, String> n) -> -n.getKey().length())
                    .thenComparing(Map.Entry.comparingByKey())).toList();
        }
    }
}
