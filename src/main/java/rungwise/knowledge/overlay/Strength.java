package rungwise.knowledge.overlay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import rungwise.knowledge.Dissolved;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.common.Range;
import rungwise.knowledge.draft.OverlayFile;
import rungwise.knowledge.product.SheetPart;
import rungwise.science.Acidity;
import rungwise.text.Texts;

/**
 * How strong a product is in use. A label is believed as long as its dilution can lead there; else the dilution counts.
 *
 * @param acidity pH in use
 */
record Strength(OverlayFile.Product product, Optional<Range> acidity, AcidityFrom from, List<Doubt> doubts) {
    /** Within this of pH 7 a product as sold is mild already, so nothing is asked of its dilution. */
    private static final Range MILD = new Range(5, 9);
    /** Strong solutions are known to about this, and a sheet may leave a builder out. */
    private static final double MARGIN = 0.5;
    /** What the bicarbonate of hard tap water takes up, as pH of the lye and of the acid that it is a match for. */
    private static final Range TAP_IS_A_MATCH = new Range(2.5, 11.5);
    private static final double TAP_SHIFTS = 1;
    private static final double READING_ERROR = 0.3;
    /** Buffers and builders that a sheet leaves out shift a pH by about this, and not by more. */
    private static final double UNLIKE = 2;
    /** A percentage on a label is rounded. */
    private static final double ROUNDED = 0.8;

    static Strength of(OverlayFile.Product product, KnowledgeBase base) {
        List<Doubt> doubts = new ArrayList<>(percents(product, base));
        Optional<Range> asSold = product.acidity().map(told -> borne(product, told, base, doubts));
        if (product.waterParts() == 0) {
            return new Strength(product, asSold, AcidityFrom.NEAT, doubts);
        }
        Optional<Range> told = product.inUse().flatMap(OverlayFile.InUse::acidity);
        if (told.isPresent()) {
            Optional<Range> least = asSold.map(sold -> thinned(sold, product.waterParts()));
            if (least.filter(range -> isImpossible(told.get(), range)).isPresent()) {
                doubts.add(new Doubt("dilution-impossible", Texts.said("product.doubt.dilution-impossible", "told", told.get(),
                        "parts", product.waterParts(), "acidity", least.get())));
                return new Strength(product, least, AcidityFrom.SOLD, doubts);
            }
            return new Strength(product, told, AcidityFrom.TOLD, doubts);
        }
        // without a label nothing is believed that is milder than the sheet
        Optional<Range> computed = product.function().flatMap(label -> product.acidity()).flatMap(sold -> computed(product, sold, base));
        if (computed.isPresent()) {
            return new Strength(product, computed, AcidityFrom.COMPUTED, doubts);
        }
        asSold.filter(sold -> !MILD.contains(sold)).ifPresent(sold -> doubts.add(new Doubt("dilution-untold",
                Texts.said("product.doubt.dilution-untold", "parts", product.waterParts(), "acidity", sold))));
        return new Strength(product, asSold, AcidityFrom.SOLD, doubts);
    }

    /** A pH that the parts of a product cannot have is believed no further than they bear it out. */
    private static Range borne(OverlayFile.Product product, Range told, KnowledgeBase base, List<Doubt> doubts) {
        Optional<Range> reckoned = reckoned(product, 1, base).filter(r -> r.from() > 7 && told.to() < r.from() - UNLIKE
                || r.to() < 7 && told.from() > r.to() + UNLIKE);
        reckoned.ifPresent(r -> doubts.add(new Doubt("acidity-impossible", Texts.said("product.doubt.acidity-impossible", "told", told,
                "acidity", new Range(round(r.from()), round(r.to()))))));
        return reckoned.map(r -> new Range(round(Math.min(told.from(), r.from())), round(Math.max(told.to(), r.to())))).orElse(told);
    }

    /** The strongest that a part can be in use, in the measure into which the percentages of the sheet are put. */
    double percent(String part, DoubleUnaryOperator measure) {
        double left = measure.applyAsDouble(product.composition().get(part).to()) / (1 + product.waterParts());
        return Math.max(left, product.inUse().map(use -> use.composition().get(part)).map(Range::to).map(measure::applyAsDouble).orElse(0.0));
    }

    /** The mildest that a thinning can leave: each tenfold of water takes at most one from the distance to pH 7. */
    private static Range thinned(Range sold, double waterParts) {
        double most = Math.log10(1 + waterParts);
        return new Range(round(towardsNeutral(sold.from(), most)), round(towardsNeutral(sold.to(), most)));
    }

    private static double towardsNeutral(double acidity, double most) {
        return acidity > 7 ? Math.max(7, acidity - most) : Math.min(7, acidity + most);
    }

    private static boolean isImpossible(Range told, Range least) {
        double lye = least.to() > TAP_IS_A_MATCH.to() ? READING_ERROR : TAP_SHIFTS;
        double acid = least.from() < TAP_IS_A_MATCH.from() ? READING_ERROR : TAP_SHIFTS;
        return least.to() > 7 && told.to() < least.to() - lye || least.from() < 7 && told.from() > least.from() + acid;
    }

    /** Where all that counts is known to chemistry, and chemistry finds the pH that the sheet gives as sold. */
    private static Optional<Range> computed(OverlayFile.Product product, Range sold, KnowledgeBase base) {
        Optional<Range> asSold = reckoned(product, 1, base);
        if (asSold.filter(r -> r.from() - MARGIN <= sold.to() && r.to() + MARGIN >= sold.from()).isEmpty()) {
            return Optional.empty();
        }
        return reckoned(product, 1 / (1 + product.waterParts()), base).map(r -> {
            double from = r.from() < 7 ? Math.max(Math.min(7, sold.from()), r.from() - MARGIN) : r.from();
            double to = r.to() > 7 ? Math.min(Math.max(7, sold.to()), r.to() + MARGIN) : r.to();
            return new Range(round(Math.min(from, to)), round(Math.max(from, to)));
        });
    }

    /** Empty where a part takes part in the pH in a way that is not known, or none does. */
    private static Optional<Range> reckoned(OverlayFile.Product product, double share, KnowledgeBase base) {
        Optional<Double> low = reckoned(product, Range::from, share, base);
        Optional<Double> high = reckoned(product, Range::to, share, base);
        return low.flatMap(one -> high.map(other -> new Range(Math.min(one, other), Math.max(one, other))));
    }

    private static Optional<Double> reckoned(OverlayFile.Product product, ToDoubleFunction<Range> end, double share, KnowledgeBase base) {
        Parts parts = new Parts(base);
        List<Acidity.Solute> solutes = new ArrayList<>();
        for (Map.Entry<String, Range> part : product.composition().entrySet()) {
            if (parts.isDissolved(part.getKey())) {
                Optional<Acidity.Solute> solute = Dissolved.solute(base.exposures().get(part.getKey()),
                        end.applyAsDouble(part.getValue()), base.decisions());
                if (solute.isEmpty()) {
                    return Optional.empty();
                }
                solutes.add(solute.get().thinned(share));
            } else if (parts.sheetPart(part.getKey()).filter(p -> !p.neutral()).isPresent()) {
                return Optional.empty();
            }
        }
        return solutes.isEmpty() ? Optional.empty() : Optional.of(Acidity.acidity(solutes));
    }

    private static List<Doubt> percents(OverlayFile.Product product, KnowledgeBase base) {
        List<Doubt> doubts = new ArrayList<>();
        product.inUse().map(OverlayFile.InUse::composition).orElse(Map.of()).forEach((part, told) -> {
            Range sold = product.composition().get(part);
            if (told.to() < ROUNDED * sold.from() / (1 + product.waterParts())) {
                doubts.add(new Doubt("dilution-percent", Texts.said("product.doubt.dilution-percent", "told", told, "part",
                        new Parts(base).sheetPart(part).map(SheetPart::name).orElse(part.replace('_', ' ')), "parts", product.waterParts(), "percent",
                        Figures.text(sold.to() / (1 + product.waterParts())))));
            }
        });
        return doubts;
    }

    private static double round(double acidity) {
        return Math.round(acidity * 10) / 10.0;
    }
}
