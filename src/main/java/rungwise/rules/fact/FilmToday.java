package rungwise.rules.fact;

import java.util.List;
import rungwise.text.Figure;

/** What is left of the budget of film after what was tried on this spot. */
public record FilmToday(double leftMicrons, double takenMicrons) {
    public List<Figure> figures() {
        return List.of(Figure.of("takenBefore", takenMicrons, "µm"), Figure.of("filmLeft", leftMicrons, "µm"));
    }
}
