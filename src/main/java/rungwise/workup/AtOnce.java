package rungwise.workup;

import java.util.Optional;

/** Spots, or area where the method is done by area. */
public record AtOnce(Optional<Integer> spots, Optional<Double> areaM2) {
}
