package rungwise.diagnosis;

import java.util.List;
import java.util.Optional;
import rungwise.question.Question;

/**
 * What is asked of an identification: whatever a ladder may be asked, and what was seen besides.
 *
 * @param notSeen      signs that were looked for and are not there
 * @param place        word for where on the vehicle it sits
 * @param surroundings words for where the vehicle has been
 */
public record Spot(Question question, List<String> notSeen, Optional<String> place, List<String> surroundings) {
    static final String PLACE = "place_";
    static final String NEAR = "near_";

    public Spot {
        notSeen = List.copyOf(notSeen);
        surroundings = List.copyOf(surroundings);
    }

    public static Spot of(Question question) {
        return new Spot(question, List.of(), Optional.empty(), List.of());
    }
}
