package rungwise.rules.fact;

import java.util.List;
import rungwise.text.Figure;

/**
 * The panel now.
 *
 * @param measured false where the temperature was worked out from air and sun
 */
public record Panel(double celsius, boolean measured, boolean directSun, double windMs) {
    public List<Figure> figures() {
        return List.of(Figure.of(measured ? "panel" : "panelReckoned", Math.round(celsius), "°C"));
    }

    public List<Figure> sunFigures() {
        return List.of(Figure.of("sun", directSun ? "direct" : "shade"));
    }

    public List<Figure> windFigures() {
        return List.of(Figure.of("wind", windMs, "m/s"));
    }
}
