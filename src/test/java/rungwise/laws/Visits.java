package rungwise.laws;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Agent;
import rungwise.question.Question;
import rungwise.rules.said.Clash;

/** A ladder is cut into visits: what may never meet in one of them stands in two, and nothing is put off without need. */
final class Visits {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final Set<String> WORKS = Set.of("try", "test", "prepare", "repeat");
    private static final double A_VISIT_HOURS = 24;
    private final Clashes clashes;

    Visits(Clashes clashes) {
        this.clashes = clashes;
    }

    /** What was put on the spot today. */
    static List<Agent> today(Question question) {
        List<Agent> today = new ArrayList<>();
        question.tried().stream().filter(t -> t.hoursAgo() < A_VISIT_HOURS).forEach(t -> t.method().map(KNOWN.methods()::get)
                .map(KNOWN::agentOf).or(() -> t.substance().map(KNOWN.agents()::get)).ifPresent(today::add));
        return today;
    }

    private static Agent agent(Placed.Offer rung) {
        return KNOWN.agentOf(KNOWN.methods().get(rung.method()));
    }

    private boolean neverMeet(Agent first, Agent then) {
        return clashes.of(first, then).stream().anyMatch(Clash::visit);
    }

    /** Whether some pair of the ladder, or something of today with a rung, may never share a visit. */
    boolean hasSuch(Placed answer) {
        List<Agent> earlier = new ArrayList<>(today(answer.question()));
        for (Placed.Offer rung : answer.rungs()) {
            if (earlier.stream().anyMatch(e -> neverMeet(e, agent(rung)))) {
                return true;
            }
            earlier.add(agent(rung));
        }
        return false;
    }

    /** Pairs that stand in one visit and never may. */
    List<String> together(Placed answer) {
        List<String> wrong = new ArrayList<>();
        for (int j = 0; j < answer.rungs().size(); j++) {
            Placed.Offer then = answer.rungs().get(j);
            if (then.visit() == 1) {
                today(answer.question()).stream().filter(e -> neverMeet(e, agent(then)))
                        .forEach(e -> wrong.add(e.id() + " of today and " + then.method() + " in one visit"));
            }
            answer.rungs().subList(0, j).stream().filter(f -> f.visit() == then.visit() && neverMeet(agent(f), agent(then)))
                    .forEach(f -> wrong.add(f.method() + " and " + then.method() + " in one visit"));
        }
        return wrong;
    }

    /** Cuts that no pair asks for, and visits that go back. */
    List<String> needless(Placed answer) {
        List<String> wrong = new ArrayList<>();
        int visit = 1;
        Set<Agent> inVisit = new HashSet<>(today(answer.question()));
        for (Placed.Offer rung : answer.rungs()) {
            if (rung.visit() < visit || rung.visit() > visit + 1) {
                wrong.add(rung.method() + " stands in visit " + rung.visit() + " after visit " + visit);
            } else if (rung.visit() == visit + 1) {
                if (inVisit.stream().noneMatch(e -> neverMeet(e, agent(rung)))) {
                    wrong.add(rung.method() + " is put off to visit " + rung.visit() + " and clashes with nothing");
                }
                inVisit.clear();
            }
            visit = Math.max(visit, rung.visit());
            inVisit.add(agent(rung));
        }
        return wrong;
    }

    /** Bridges that take no time, or less than their clash asks for. */
    List<String> timeless(Placed answer) {
        List<String> wrong = new ArrayList<>();
        for (Placed.Offer rung : answer.rungs()) {
            for (Placed.Bridge bridge : rung.bridges()) {
                double asked = clashes.of(KNOWN.agents().get(bridge.after()), agent(rung)).stream()
                        .mapToDouble(Clash::waitMinutes).max().orElse(0);
                if (bridge.minutes() <= 0 || bridge.minutes() < asked) {
                    wrong.add("the bridge between " + bridge.after() + " and " + rung.method() + " takes " + bridge.minutes() + " min");
                }
            }
        }
        return wrong;
    }

    /** The bridges that lie between what was put on today and the rung that is next. */
    static List<Placed.Bridge> due(Placed answer) {
        if (!WORKS.contains(answer.next().action()) || answer.rungs().isEmpty()) {
            return List.of();
        }
        List<String> today = today(answer.question()).stream().map(Agent::id).toList();
        return answer.rungs().stream().filter(r -> answer.next().method().filter(r.method()::equals).isPresent()).limit(1)
                .flatMap(r -> r.bridges().stream()).filter(b -> today.contains(b.after()) && !b.steps().isEmpty()).toList();
    }

    /** Steps of a bridge that is due and that the next step does not name. */
    static List<String> untold(Placed answer) {
        return due(answer).stream().filter(b -> !answer.next().steps().containsAll(b.steps()))
                .map(b -> "next " + answer.next().action() + " is silent about " + b.steps() + " after " + b.after()).toList();
    }
}
