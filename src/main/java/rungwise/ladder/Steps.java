package rungwise.ladder;

import java.util.Map;

/** The steps by which a permitted method is passed over, each as a sentence with what lies beneath it. */
final class Steps {
    static final Map<String, String> SAYS = Map.of(
            "pointless", "It is very unlikely to do anything to this deposit.",
            "same again", "Another of the same chemistry or mechanism does all that this one does.",
            "finest first", "A coarser grade comes only after every finer one.",
            "earned", "Lost film or an agreement has to be earned by a real chance.",
            "slow", "It is slow, and the customer cannot wait that long.",
            "cost", "It costs more minutes than it is expected to save.",
            "harsher for less", "A harsher one follows only for a real chance.",
            "enough", "The gentler rungs take it off, or it is something else.",
            "climbed past", "After a harsher one changed nothing, a gentler one does not come back.");
    static final Map<String, String> CAUSE = Map.of(
            "pointless", "No reaction partner, or no hold for its action; time and risk buy nothing.",
            "same again", "A second try by the same mechanism learns little.",
            "finest first", "Half the panels need less than was expected.",
            "earned", "Film does not grow back, and trust is spent once.",
            "slow", "Dwell counts against the appointment.",
            "cost", "Expected cost over fresh and hardened, referral included, is lower without it.",
            "harsher for less", "Damage grows up the ladder, so the chance has to carry it.",
            "enough", "When all that is gentler failed, a wrong name is likelier than bad luck: ask again what it is.",
            "climbed past", "What a harsher one leaves, a gentler one mostly leaves too, unless it is something else.");

    private Steps() {
    }
}
