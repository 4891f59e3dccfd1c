package rungwise.knowledge.words;

import java.util.Map;
import rungwise.knowledge.surface.Place;

/**
 * The closed lists of a question, each keyed by id.
 *
 * @param spoken how people say what has no closed list
 * @param facts what a person at the vehicle may be asked for
 * @param done words by which a question says that a step was done; ids of gates may stand beside them
 */
public record QuestionWords(Map<String, ListWord> done, Map<String, Place> places, Map<String, PriorDamage> priorDamage,
                            Map<String, FinishProtection> protections, Map<String, ListWord> soiling,
                            Map<String, ListWord> colours, Map<String, ListWord> sun, Map<String, ListWord> outcomes,
                            Map<String, ListWord> stopSigns, Map<String, EverydayProduct> everydayProducts,
                            Map<String, Sensitiser> sensitisers, Map<String, AskedFact> facts, SpokenWords spoken) {
}
