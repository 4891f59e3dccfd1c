package rungwise.knowledge;

import java.util.Map;

/**
 * The closed lists of a question, each keyed by id.
 *
 * @param done words by which a question says that a step was done; ids of gates may stand beside them
 */
public record QuestionWords(Map<String, ListWord> done, Map<String, Place> places, Map<String, PriorDamage> priorDamage,
                            Map<String, FinishProtection> protections, Map<String, ListWord> soiling,
                            Map<String, ListWord> colours, Map<String, ListWord> sun, Map<String, ListWord> outcomes,
                            Map<String, ListWord> stopSigns, Map<String, EverydayProduct> everydayProducts,
                            Map<String, Sensitiser> sensitisers) {
    static QuestionWords of(Draft draft) {
        return new QuestionWords(draft.items(Kind.DONE, ListWord.class), draft.items(Kind.PLACE, Place.class),
                draft.items(Kind.PRIOR_DAMAGE, PriorDamage.class), draft.items(Kind.FINISH_PROTECTION, FinishProtection.class),
                draft.items(Kind.SOILING, ListWord.class), draft.items(Kind.COLOUR, ListWord.class),
                draft.items(Kind.SUN, ListWord.class), draft.items(Kind.OUTCOME, ListWord.class),
                draft.items(Kind.STOP_SIGN, ListWord.class), draft.items(Kind.EVERYDAY_PRODUCT, EverydayProduct.class),
                draft.items(Kind.SENSITISER, Sensitiser.class));
    }
}
