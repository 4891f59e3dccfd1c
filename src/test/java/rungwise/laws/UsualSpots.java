package rungwise.laws;

import java.util.List;
import java.util.stream.Stream;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import rungwise.question.Question;
import rungwise.question.QuestionReader;

/** Every contaminant on the surfaces where it is usually met, young and old, on a mild day. */
final class UsualSpots {
    static final List<String> AGES = List.of("PT2H", "P60D");
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();

    private UsualSpots() {
    }

    static Stream<Question> all() {
        return KNOWN.contaminants().values().stream().flatMap(c -> c.usualSurfaces().stream().flatMap(s -> AGES.stream()
                .map(age -> of(c.id(), s, age, ""))));
    }

    /**
     * One of them.
     *
     * @param more further fields, as a question writes them
     */
    static Question of(String contaminant, String surface, String age, String more) {
        return QuestionReader.read(Mappers.question().readTree("{contaminant: " + contaminant + ", surface: " + surface + ", age: " + age
                + ", setting: {airC: 20, panelC: 20, sun: shade, outdoors: true}" + (more.isEmpty() ? "" : ", " + more) + "}"), KNOWN);
    }

    static Question.Setting setting(String yaml) {
        return QuestionReader.read(Mappers.question().readTree("{surface: clear_2k_sound, setting: " + yaml + "}"), KNOWN).setting();
    }
}
