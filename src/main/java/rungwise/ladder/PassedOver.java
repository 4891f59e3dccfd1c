package rungwise.ladder;

import java.util.List;
import rungwise.rules.said.Because;

/**
 * A permitted method that is not offered.
 *
 * @param step    id of the decision or rule by which it fell
 * @param because first why, then what else bears on it
 */
public record PassedOver(Choice choice, String step, List<Because> because) {
}
