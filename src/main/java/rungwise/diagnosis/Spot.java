package rungwise.diagnosis;

import java.util.List;
import java.util.Optional;
import rungwise.question.Question;

/**
 * What is asked of an identification: whatever a ladder may be asked, and what was seen besides.
 *
 * @param place        word for where on the vehicle it sits
 * @param surroundings words for where the vehicle has been
 * @param forName      whether a check is to tell the name, whatever it changes of the work
 */
public record Spot(Question question, Optional<String> place, List<String> surroundings, boolean forName) {
    static final String PLACE = "place_";
    static final String NEAR = "near_";

    public Spot {
        surroundings = List.copyOf(surroundings);
    }

    public static Spot of(Question question) {
        return new Spot(question, Optional.empty(), List.of(), false);
    }
}
