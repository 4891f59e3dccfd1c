package rungwise.rules.fact;

import java.util.List;
import rungwise.text.Figure;

/**
 * The whole body around the spot, as far as it was told.
 *
 * @param soiling    light, heavy or unknown
 * @param protection none, wax, coating or unknown
 */
public record Body(String soiling, String protection) {
    public List<Figure> figures() {
        return List.of(Figure.of("soiling", soiling), Figure.of("protection", protection));
    }
}
