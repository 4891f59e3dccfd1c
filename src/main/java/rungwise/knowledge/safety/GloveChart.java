package rungwise.knowledge.safety;

import java.util.List;
import rungwise.knowledge.common.Basis;

/**
 * How long one glove held in a permeation chart.
 *
 * @param minutes until it was through
 * @param basis   of the minutes; a source may still recommend the glove
 */
public record GloveChart(GloveMaterial glove, double thicknessMm, double minutes, Basis basis, List<String> sources) {
    public GloveChart {
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
