package rungwise.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Agent;
import rungwise.question.Question;
import rungwise.rules.Phase;
import rungwise.rules.said.Clash;
import rungwise.rules.use.Meeting;

/** Law 7: every clash that the rules of order know, asked of the rules themselves and held against answers. */
final class Clashes {
    private final KnowledgeBase known;
    private final List<Clash> all;

    private Clashes(KnowledgeBase known, List<Clash> all) {
        this.known = known;
        this.all = all;
    }

    static Clashes of(Advisor advisor) {
        KnowledgeBase known = advisor.knowledge();
        List<Object> meetings = new ArrayList<>();
        for (Agent first : known.agents().values()) {
            known.agents().values().stream().filter(a -> !a.equals(first))
                    .forEach(then -> meetings.add(new Meeting(first, then)));
        }
        return new Clashes(known, advisor.rules().run(Phase.ORDER, meetings).of(Clash.class).stream()
                .map(c -> c.conclusion()).toList());
    }

    List<Clash> of(Agent first, Agent then) {
        return all.stream().filter(c -> c.first().equals(first.id()) && c.then().equals(then.id())).toList();
    }

    /** Agents that clash with a rung when used before it, in order. */
    List<String> before(Answer answer) {
        return before(answer.rungs().stream().map(Answer.Rung::method));
    }

    List<String> before(Placed answer) {
        return before(answer.rungs().stream().map(Placed.Offer::method));
    }

    private List<String> before(Stream<String> rungs) {
        Set<String> now = rungs.map(r -> known.agentOf(known.methods().get(r)).id()).collect(Collectors.toSet());
        return all.stream().filter(c -> now.contains(c.then())).map(Clash::first).distinct().sorted().toList();
    }

    boolean anyIn(Answer answer) {
        return !meetings(answer).isEmpty();
    }

    /** What clashes with something earlier and carries no bridge after it, or should not be in this visit at all. */
    List<String> unbridged(Answer answer) {
        List<String> wrong = new ArrayList<>();
        for (Met met : meetings(answer)) {
            String pair = met.before().id() + " then " + met.rung().method();
            if (met.rung().bridgeBefore().stream().noneMatch(b -> b.after().equals(met.before().id()))) {
                wrong.add(pair + " without a bridge");
            }
            if (met.clashes().stream().anyMatch(Clash::visit)) {
                wrong.add(pair + " in one visit");
            }
        }
        return wrong;
    }

    /** The same of an answer over a belief: in one visit each that clashes with an earlier one carries a bridge after it. */
    List<String> unbridged(Placed answer) {
        List<String> wrong = new ArrayList<>();
        forEachMeeting(answer, (before, rung) -> {
            if (rung.bridges().stream().noneMatch(b -> b.after().equals(before.id()))) {
                wrong.add(before.id() + " then " + rung.method() + " without a bridge");
            }
        });
        return wrong;
    }

    /** Whether a clash lies between two that do not follow each other. */
    boolean anyApart(Placed answer) {
        List<String> apart = new ArrayList<>();
        forEachMeeting(answer, (before, rung) -> {
            int at = answer.rungs().indexOf(rung);
            if (at > 0 && !agent(answer.rungs().get(at - 1)).equals(before)) {
                apart.add(before.id());
            }
        });
        return !apart.isEmpty();
    }

    boolean anyIn(Placed answer) {
        List<String> met = new ArrayList<>();
        forEachMeeting(answer, (before, rung) -> met.add(before.id()));
        return !met.isEmpty();
    }

    private void forEachMeeting(Placed answer, BiConsumer<Agent, Placed.Offer> clash) {
        for (int i = 0; i < answer.rungs().size(); i++) {
            Placed.Offer rung = answer.rungs().get(i);
            Stream<Agent> today = rung.visit() == 1 ? Visits.today(answer.question()).stream() : Stream.empty();
            Stream.concat(today, answer.rungs().subList(0, i).stream().filter(r -> r.visit() == rung.visit()).map(this::agent))
                    .distinct().filter(before -> !of(before, agent(rung)).isEmpty()).forEach(before -> clash.accept(before, rung));
        }
    }

    private Agent agent(Placed.Offer rung) {
        return known.agentOf(known.methods().get(rung.method()));
    }

    private record Met(Agent before, Answer.Rung rung, List<Clash> clashes) {
    }

    private List<Met> meetings(Answer answer) {
        List<Agent> earlier = new ArrayList<>();
        for (Question.Tried tried : answer.question().tried()) {
            if (tried.hoursAgo() < 24) {
                tried.method().map(known.methods()::get).map(known::agentOf)
                        .or(() -> tried.substance().map(known.agents()::get)).ifPresent(earlier::add);
            }
        }
        List<Met> met = new ArrayList<>();
        for (Answer.Rung rung : answer.rungs()) {
            Agent now = known.agentOf(known.methods().get(rung.method()));
            earlier.stream().filter(b -> !of(b, now).isEmpty()).forEach(b -> met.add(new Met(b, rung, of(b, now))));
            earlier.add(now);
        }
        return met;
    }
}
