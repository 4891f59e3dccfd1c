package rungwise.science;

import java.util.ArrayList;
import java.util.List;

/**
 * How long a film stays wet.
 *
 * <p>A liquid and a gel lose vapour at the same rate; what differs is the thickness. A liquid drains down an upright
 * panel as h = √(μz/(ρgt)) (H. Jeffreys, The draining of a vertical plate, 1930). A gel stays up to h = τ/(ρg), where its
 * yield stress τ still bears its weight.
 */
public final class WetTime {
    private static final double G = 9.80665;
    private static final int STEPS = 20_000;
    /** Share of its solvent at which a film is spent. */
    private static final double SPENT = 0.1;
    /** Longer than this is "does not dry": a week. */
    public static final double FOR_GOOD_SECONDS = 7 * 24 * 3600.0;

    private WetTime() {
    }

    /**
     * A component with its share.
     *
     * @param volume share by volume of the film, 0 or more
     */
    public record Part(Evaporation.Component component, double volume) {
    }

    /**
     * Thickness in µm left of a liquid that drains down an upright panel: √(μz/(ρgt)).
     *
     * @param millipascalSeconds viscosity, above 0
     * @param gramsPerCm3        density, above 0
     * @param metresBelowEdge    distance below the upper edge of the wetted patch, above 0
     * @param seconds            since it was wetted, above 0
     */
    public static double drainedMicrons(double millipascalSeconds, double gramsPerCm3, double metresBelowEdge,
                                        double seconds) {
        return 1e6 * Math.sqrt(millipascalSeconds * 1e-3 * metresBelowEdge / (gramsPerCm3 * 1000 * G * seconds));
    }

    /**
     * Thickest layer of a gel in µm that an upright panel holds: τ/(ρg).
     *
     * @param yieldPascals yield stress, 0 or more
     * @param gramsPerCm3  density, above 0
     */
    public static double heldMicrons(double yieldPascals, double gramsPerCm3) {
        return 1e6 * yieldPascals / (gramsPerCm3 * 1000 * G);
    }

    /**
     * Seconds until an upright liquid film, thick at first, is dry at some distance below its upper edge, draining and
     * evaporating at once: t = (3μz/(ρg·e²))^(1/3). It is the exact solution of Jeffreys's equation
     * ∂h/∂t + (ρgh²/μ)·∂h/∂z = −e with a constant loss e, by characteristics; worked out here.
     *
     * @param micronsPerSecond thickness lost by evaporation, above 0
     */
    public static double drainedDrySeconds(double millipascalSeconds, double gramsPerCm3, double metresBelowEdge,
                                           double micronsPerSecond) {
        double loss = micronsPerSecond * 1e-6;
        return Math.cbrt(3 * millipascalSeconds * 1e-3 * metresBelowEdge / (gramsPerCm3 * 1000 * G * loss * loss));
    }

    /**
     * Seconds in which one micrometre of a mixture dries, its parts leaving at their own pace (Raoult, in small steps).
     * It ends where nothing volatile is left or what does not evaporate has become half of the film: from there on the
     * loss is no longer constant. A mixture of much solvent and some water ends where nine tenths of its solvent has left, as
     * the water that stays behind does not do its work. Water that cannot leave moist air never dries.
     *
     * @param parts       volatile parts
     * @param solidVolume share by volume that never leaves, 0 or more
     * @param reference   n-butyl acetate
     */
    public static double secondsPerMicron(List<Part> parts, double solidVolume, Evaporation.Air air,
                                          Evaporation.Component reference) {
        double whole = solidVolume + parts.stream().mapToDouble(Part::volume).sum();
        // grams per square metre in one micrometre
        List<Double> left = new ArrayList<>(parts.stream().map(p -> p.volume() / whole * p.component().gramsPerCm3())
                .toList());
        double ends = Math.max(solidVolume / whole, 1e-3);
        double solvent = solvent(parts, left);
        boolean watered = parts.stream().anyMatch(p -> p.component().isWater());
        double spent = watered && solvent * whole >= (whole - solidVolume) / 2 ? solvent * SPENT : -1;
        double seconds = 0;
        for (int step = 0; step < STEPS; step++) {
            double moles = 0;
            double volume = 0;
            for (int i = 0; i < parts.size(); i++) {
                moles += left.get(i) / parts.get(i).component().gramsPerMol();
                volume += left.get(i) / parts.get(i).component().gramsPerCm3();
            }
            if (volume <= ends || solvent(parts, left) <= spent) {
                return seconds;
            }
            double[] loss = new double[parts.size()];
            double fastest = 0;
            for (int i = 0; i < loss.length; i++) {
                double share = left.get(i) / parts.get(i).component().gramsPerMol() / moles;
                loss[i] = Evaporation.loss(parts.get(i).component(), share, air, reference);
                fastest += loss[i] / parts.get(i).component().gramsPerCm3();
            }
            if (fastest * FOR_GOOD_SECONDS < volume) {
                return FOR_GOOD_SECONDS;
            }
            // a step takes a five-hundredth of the film, or what is still to go
            double by = Math.min(1.0 / 500, volume - ends + 1e-9) / fastest;
            for (int i = 0; i < loss.length; i++) {
                left.set(i, Math.max(0, left.get(i) - loss[i] * by));
            }
            seconds += by;
        }
        return FOR_GOOD_SECONDS;
    }

    /** Volume of what is no water, in µm. */
    private static double solvent(List<Part> parts, List<Double> grams) {
        double volume = 0;
        for (int i = 0; i < parts.size(); i++) {
            volume += parts.get(i).component().isWater() ? 0 : grams.get(i) / parts.get(i).component().gramsPerCm3();
        }
        return volume;
    }

    /**
     * Seconds until a layer on an upright panel is dry.
     *
     * @param appliedMicrons   as put on
     * @param yieldPascals     0 for a liquid
     * @param secondsPerMicron from {@link #secondsPerMicron}
     */
    public static double seconds(double appliedMicrons, double yieldPascals, double millipascalSeconds,
                                 double gramsPerCm3, double metresBelowEdge, double secondsPerMicron) {
        double seconds;
        if (yieldPascals > 0) {
            seconds = Math.min(appliedMicrons, heldMicrons(yieldPascals, gramsPerCm3)) * secondsPerMicron;
        } else {
            seconds = Math.min(appliedMicrons * secondsPerMicron, drainedDrySeconds(millipascalSeconds, gramsPerCm3,
                    metresBelowEdge, 1 / secondsPerMicron));
        }
        return Math.min(seconds, FOR_GOOD_SECONDS);
    }

    /**
     * How much to wet at once so that the last is wiped while it is still wet: what can be wiped between the end of the
     * dwell and the drying of the first.
     *
     * @param wetSeconds   until the first is dry
     * @param dwellSeconds before wiping begins
     * @param wipeSeconds  for one spot, or for one square metre; above 0
     * @return spots or square metres; 0 where it dries before its dwell is over
     */
    public static double batch(double wetSeconds, double dwellSeconds, double wipeSeconds) {
        return Math.max(0, wetSeconds - dwellSeconds) / wipeSeconds;
    }
}
