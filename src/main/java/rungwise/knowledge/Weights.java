package rungwise.knowledge;

/**
 * What things cost, in worker minutes, when rungs are chosen.
 *
 * @param work          a minute of work
 * @param waiting       a minute of dwell
 * @param filmPerMicron a micrometre of clear that never grows back
 * @param mark          a visible mark, before its correction is counted
 * @param referral      handing the spot over
 */
public record Weights(double work, double waiting, double filmPerMicron, double mark, double referral) {
}
