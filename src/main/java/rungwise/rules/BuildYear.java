package rungwise.rules;

/** Year the vehicle was built. */
public record BuildYear(int year) {
}
