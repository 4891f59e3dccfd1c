package rungwise.science;

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
    /** Step of a drying time, of the film. */
    private static final double FINE = 1.0 / 200;
    /** Step of what need not be exact. */
    private static final double COARSE = 0.01;
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
     * Seconds in which one micrometre of a mixture dries, its parts leaving at their own pace (Raoult with activity coefficients beside
     * water where they are known, in small steps; of several solvents water goes by the one there is most of).
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
        return new Film(parts, solidVolume, air, reference).dry();
    }

    /**
     * What is left of each part of a film after some time, 1 = all of it. A film of h µm after t seconds has lost what one
     * micrometre has after t/h seconds.
     *
     * @param parts            volatile parts
     * @param secondsPerMicron time over thickness, 0 or more
     */
    public static double[] left(List<Part> parts, Evaporation.Air air, Evaporation.Component reference,
                                double secondsPerMicron) {
        return new Film(parts, 0, air, reference).leftAfter(secondsPerMicron);
    }

    /** One micrometre of film on its way out. Plain arrays: an answer dries some dozens of films. */
    private static final class Film {
        private final Evaporation.Component[] components;
        private final double[] pure;
        /** Volume of a mole, in µm on a square metre. */
        private final double[] micronsPerMol;
        /** Moles on a square metre. */
        private final double[] moles;
        /** Moles lost in a second. */
        private final double[] loss;
        private final Evaporation.Air air;
        private final double ends;
        private final double spent;
        private int water = -1;

        Film(List<Part> parts, double solidVolume, Evaporation.Air air, Evaporation.Component reference) {
            int n = parts.size();
            double whole = solidVolume + parts.stream().mapToDouble(Part::volume).sum();
            components = new Evaporation.Component[n];
            pure = new double[n];
            micronsPerMol = new double[n];
            moles = new double[n];
            loss = new double[n];
            this.air = air;
            for (int i = 0; i < n; i++) {
                Evaporation.Component component = parts.get(i).component();
                components[i] = component;
                pure[i] = Evaporation.pure(component, air, reference);
                micronsPerMol[i] = component.gramsPerMol() / component.gramsPerCm3();
                moles[i] = parts.get(i).volume() / whole / micronsPerMol[i];
                water = component.isWater() ? i : water;
            }
            ends = Math.max(solidVolume / whole, 1e-3);
            double solvent = volume(true);
            spent = water >= 0 && solvent * whole >= (whole - solidVolume) / 2 ? solvent * SPENT : -1;
        }

        double dry() {
            double seconds = 0;
            double solvent = volume(true);
            for (int step = 0; step < STEPS; step++) {
                double volume = volume(false);
                if (volume <= ends || solvent <= spent) {
                    return seconds;
                }
                double fastest = lose();
                if (fastest * FOR_GOOD_SECONDS < volume) {
                    return FOR_GOOD_SECONDS;
                }
                // the last step takes what is still to go
                double by = pass(Math.min(FINE, volume - ends + 1e-9) / fastest);
                double left = volume(true);
                // it is spent somewhere within the step
                seconds += left <= spent ? by * (solvent - spent) / (solvent - left) : by;
                solvent = left;
            }
            return FOR_GOOD_SECONDS;
        }

        double[] leftAfter(double until) {
            double[] first = moles.clone();
            double seconds = 0;
            for (int step = 0; step < STEPS && seconds < until; step++) {
                double fastest = lose();
                double volume = volume(false);
                if (volume <= 1e-3 || fastest * FOR_GOOD_SECONDS < volume) {
                    break;
                }
                seconds += pass(Math.min(COARSE / fastest, until - seconds));
            }
            for (int i = 0; i < first.length; i++) {
                first[i] = first[i] == 0 ? 0 : moles[i] / first[i];
            }
            return first;
        }

        private double pass(double seconds) {
            for (int i = 0; i < loss.length; i++) {
                moles[i] = Math.max(0, moles[i] - loss[i] * seconds);
            }
            return seconds;
        }

        /** Works out the loss of each part; what they lose together, in µm a second. */
        private double lose() {
            double all = 0;
            int most = -1;
            for (int i = 0; i < moles.length; i++) {
                all += moles[i];
                if (components[i].besideWater().isPresent() && (most < 0 || moles[i] > moles[most])) {
                    most = i;
                }
            }
            boolean watered = water >= 0 && moles[water] > 0;
            double fastest = 0;
            for (int i = 0; i < moles.length; i++) {
                double coefficient = 1;
                if (watered && i == water && most >= 0) {
                    coefficient = components[most].besideWater().get().ofWater(moles[most], moles[water]);
                } else if (watered && i != water && components[i].besideWater().isPresent()) {
                    coefficient = components[i].besideWater().get().ofSolvent(moles[i], moles[water]);
                }
                loss[i] = Evaporation.loss(components[i], coefficient * moles[i] / all, air, pure[i])
                        / components[i].gramsPerMol();
                fastest += loss[i] * micronsPerMol[i];
            }
            return fastest;
        }

        /** In µm; of what is no water, or of all. */
        private double volume(boolean solvent) {
            double volume = 0;
            for (int i = 0; i < moles.length; i++) {
                volume += solvent && i == water ? 0 : moles[i] * micronsPerMol[i];
            }
            return volume;
        }
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
