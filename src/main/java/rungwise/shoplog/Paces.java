package rungwise.shoplog;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.method.Method;

/**
 * How long methods take here, over what knowledge states for a spot: the median of the ratios, drawn to 1 in its logarithm as a prior
 * of so many tries draws it. A median, as one forgotten clock outweighs a mean.
 */
final class Paces {
    /** No shop is ten times as quick, or takes ten times as long: who writes that counts several spots, or hours as minutes. */
    private static final double MOST = 10;
    /** Only the last ones: a shop grows quicker, and a log grows long. */
    private static final int KEPT = 500;

    private final KnowledgeBase base;
    private final double worth;
    private final Map<String, List<Double>> ratios = new TreeMap<>();

    Paces(KnowledgeBase base, double worth) {
        this.base = base;
        this.worth = worth;
    }

    void take(Method method, double minutes) {
        double stated = base.minutesPerSpot(method);
        if (stated > 0 && minutes > 0 && minutes <= MOST * stated && minutes * MOST >= stated) {
            List<Double> own = ratios.computeIfAbsent(method.id(), m -> new ArrayList<>());
            own.add(minutes / stated);
            if (own.size() > KEPT) {
                own.remove(0);
            }
        }
    }

    private static double median(List<Double> ratios) {
        List<Double> sorted = new ArrayList<>(ratios);
        Collections.sort(sorted);
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(half) : (sorted.get(half - 1) + sorted.get(half)) / 2;
    }

    /** Minutes over those stated, by method. */
    Map<String, Double> times() {
        Map<String, Double> times = new TreeMap<>();
        ratios.forEach((method, own) -> times.put(method, Math.exp(Math.log(median(own)) * own.size() / (own.size() + worth))));
        return times;
    }

    List<Lessons.Pace> lessons() {
        List<Lessons.Pace> paces = new ArrayList<>();
        times().forEach((method, times) -> {
            double stated = base.minutesPerSpot(base.methods().get(method));
            paces.add(new Lessons.Pace(method, Figures.thousandths(stated), Figures.thousandths(stated * times), ratios.get(method).size()));
        });
        return List.copyOf(paces);
    }
}
