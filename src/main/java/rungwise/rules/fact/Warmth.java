package rungwise.rules.fact;

import java.util.List;
import rungwise.text.Figure;

/**
 * How hot it feels to whoever works.
 *
 * @param measured   false where no humidity was given and a muggy day was assumed
 * @param feelsLikeC the heat index
 */
public record Warmth(double airC, double humidity, boolean measured, double feelsLikeC) {
    public List<Figure> figures() {
        return List.of(Figure.of("air", airC, "°C"), Figure.of(measured ? "humidity" : "humidityAssumed", Math.round(humidity * 100), "%"),
                Figure.of("feelsLike", Math.round(feelsLikeC), "°C"));
    }
}
