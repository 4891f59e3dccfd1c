package rungwise.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.diagnosis.Identifier;
import rungwise.diagnosis.SpotAnswer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.knowledge.words.AskedFact;
import rungwise.ladder.ChanceTable;
import rungwise.names.Whereabouts;
import rungwise.question.Question;

/** Talks with somebody who knows this or that, drawn by chance. */
class ConversationTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final int TALKS = 10;

    /** Names a spot or not, and after that a letter of what is offered, or nothing. */
    private static final class Drawn implements Voice {
        private final Random random;
        private final List<String> first;
        private final List<String> said = new ArrayList<>();
        private int offered;

        Drawn(Random random, List<String> first) {
            this.random = random;
            this.first = new ArrayList<>(first);
        }

        @Override
        public void say(String line) {
            said.add(line);
            offered = 0;
        }

        @Override
        public void offer(String letter, String says) {
            offered++;
        }

        @Override
        public Optional<String> hear() {
            if (!first.isEmpty()) {
                return Optional.of(first.remove(0));
            }
            // the first reply to danger is that there is none
            boolean danger = said.stream().anyMatch(l -> l.endsWith(KNOWN.questionWords().facts().get("hazard").asks()))
                    && offered == KNOWN.questionWords().facts().get("hazard").replies().size();
            return Optional.of(danger ? "a" : random.nextInt(3) == 0 || offered == 0 ? "" : Hearing.letter(random.nextInt(offered)));
        }
    }

    private record Talk(Told told, List<String> said) {
        boolean endedForWantOfChange() {
            return said.stream().anyMatch(l -> l.startsWith("Nothing else that could be asked"));
        }
    }

    private static List<Talk> talks() {
        Random random = new Random(17);
        List<Contaminant> deposits = KNOWN.contaminants().values().stream().filter(c -> !c.usualSurfaces().isEmpty() && c.holds().isEmpty()).toList();
        List<Talk> talks = new ArrayList<>();
        for (int i = 0; i < TALKS; i++) {
            Contaminant deposit = deposits.get(random.nextInt(deposits.size()));
            String surface = deposit.usualSurfaces().stream().sorted().toList().get(random.nextInt(deposit.usualSurfaces().size()));
            Drawn person = new Drawn(random, List.of(i % 5 == 4 ? "" : surface, i % 3 == 2 ? "?" : deposit.id()));
            talks.add(new Talk(new Conversation(Base.advisor(), ChanceTable.PRIOR, person).talk(), person.said));
        }
        return talks;
    }

    private static Answer answer(Told told) {
        return SpotAnswer.to(Base.advisor(), new Identifier(Base.advisor()), told.question(KNOWN), false, false, ChanceTable.PRIOR).answer();
    }

    /** What a person does next, told apart here in a way of its own. */
    private static List<Object> step(Answer answer) {
        Set<String> first = new TreeSet<>();
        answer.next().steps().forEach(s -> first.add(s.step()));
        answer.rungs().stream().filter(r -> answer.next().method().filter(r.method()::equals).isPresent()).forEach(r -> r.gates().stream()
                .filter(g -> g.state().equals("missing") && !g.id().startsWith("ask_")).forEach(g -> first.add(g.id())));
        return List.of(answer.next().action(), answer.next().method(), answer.next().until(), answer.hold().map(h -> h.what()), first);
    }

    /** Whether a reply says only what nothing on this side of the vehicle shows. */
    private static boolean isPointless(AskedFact.Reply reply, Told told) {
        Question question = told.question(KNOWN);
        Optional<String> side = new Whereabouts(question.surface(), question.facts().place(), KNOWN).side();
        return side.isPresent() && reply.gives().get("observations") instanceof List<?> ids && ids.stream().map(KNOWN.observations()::get)
                .anyMatch(o -> KNOWN.observations().get(side.get()).against().containsAll(o.pointsTo()));
    }

    @Test
    void when_asking_ends_no_answer_to_anything_that_may_be_asked_changes_the_next_step() {
        int ended = 0;
        int replies = 0;
        for (Talk talk : talks()) {
            Told told = talk.told();
            assertThat(told.asked()).as("%s", told).doesNotHaveDuplicates().hasSizeLessThanOrEqualTo(8);
            Answer now = answer(told);
            assertThat(talk.endedForWantOfChange() || now.isStopped() || told.asked().size() == 8).as("%s", told).isTrue();
            List<String> surfaces = told.question(KNOWN).surface();
            List<Surface> here = surfaces.contains(Question.UNKNOWN) ? List.copyOf(KNOWN.surfaces().values())
                    : surfaces.stream().map(KNOWN.surfaces()::get).toList();
            Set<SurfaceKind> kinds = here.stream().flatMap(s -> s.kinds().stream()).collect(Collectors.toSet());
            told.asked().stream().filter(KNOWN.questionWords().facts()::containsKey).map(KNOWN.questionWords().facts()::get)
                    .forEach(f -> assertThat(here).as(f.id()).anyMatch(f::isOn));
            if (!talk.endedForWantOfChange()) {
                continue;
            }
            ended++;
            for (AskedFact fact : KNOWN.questionWords().facts().values()) {
                boolean sign = fact.unnamed() && (told.tree().has("contaminant") || told.asked().stream().filter(a -> a.startsWith("sign_")).count() == 3);
                if (told.asked().contains(fact.id()) || sign || here.stream().noneMatch(fact::isOn) || fact.touches() && now.isStopped()) {
                    continue;
                }
                for (AskedFact.Reply reply : fact.on(kinds)) {
                    if (isPointless(reply, told)) {
                        continue;
                    }
                    replies++;
                    assertThat(step(answer(told.with(fact.id(), Trials.gives(reply))))).as("%s: %s %s", told, fact.id(), reply.id()).isEqualTo(step(now));
                }
            }
        }
        assertThat(ended).as("talks that ended as nothing would change").isGreaterThanOrEqualTo(3);
        assertThat(replies).as("replies tried").isGreaterThan(50);
    }
}
