package rungwise.rules.fact;

/** Year the vehicle was built. */
public record BuildYear(int year) {
}
