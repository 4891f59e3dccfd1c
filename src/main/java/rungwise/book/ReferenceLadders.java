package rungwise.book;

import java.util.List;
import java.util.stream.Stream;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.load.Mappers;
import rungwise.question.QuestionReader;
import tools.jackson.databind.node.ObjectNode;

/** Asks for the ladder of a hardened deposit where it has one: on sound clear, on woven fabric, or else where it may. */
final class ReferenceLadders {
    private static final List<String> USUAL = List.of("clear_2k_sound", "int_fabric_woven");
    /** Past the hours of a cool panel by this factor nobody takes it for fresh. */
    private static final double WELL_PAST = 3;
    private static final long WEEK_HOURS = 168;

    private final Advisor advisor;

    ReferenceLadders(Advisor advisor) {
        this.advisor = advisor;
    }

    List<Answer> of(Contaminant one) {
        List<String> known = Stream.concat(USUAL.stream(), advisor.knowledge().surfaces().keySet().stream())
                .distinct().filter(advisor.knowledge().surfaces()::containsKey).toList();
        List<Answer> usual = known.stream().filter(USUAL::contains).map(s -> ask(one, s)).toList();
        List<Answer> withRungs = usual.stream().filter(a -> !a.rungs().isEmpty()).toList();
        if (!withRungs.isEmpty()) {
            return withRungs;
        }
        if (usual.stream().anyMatch(a -> a.hold().isPresent())) {
            return usual.subList(0, 1);
        }
        return known.stream().filter(s -> !USUAL.contains(s)).map(s -> ask(one, s))
                .filter(a -> !a.rungs().isEmpty()).findFirst().map(List::of)
                .orElseGet(() -> usual.isEmpty() ? List.of() : usual.subList(0, 1));
    }

    private Answer ask(Contaminant one, String surface) {
        long hours = one.hardens().isNever() ? WEEK_HOURS
                : Math.max(1, (long) Math.ceil(one.hardens().cool() * WELL_PAST));
        ObjectNode question = Mappers.json().createObjectNode();
        question.put("contaminant", one.id()).put("age", "PT" + hours + "H").put("surface", surface);
        return advisor.answer(QuestionReader.read(question, advisor.knowledge()));
    }
}
