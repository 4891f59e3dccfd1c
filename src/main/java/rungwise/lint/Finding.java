package rungwise.lint;

import rungwise.knowledge.Waiver;
import rungwise.knowledge.draft.Fault;
import rungwise.rules.said.Reason;
import rungwise.text.Texts;

/**
 * A fault and what it is about, so that it can be waived.
 *
 * @param entry id of the entry or rule
 * @param about id of what else it names; empty where nothing is
 */
record Finding(String entry, String about, Fault fault) {
    static Finding of(String file, String entry, String about, String wrong, String remedy) {
        return new Finding(entry, about, new Fault(file, about.isEmpty() ? entry : Texts.said("lint.entry-with", "entry", entry, "about",
                about), wrong, remedy));
    }

    /** About what stands behind a conclusion: a rule, or an entry of another kind. */
    static Finding of(Reason reason, String about, String wrong, String remedy) {
        return of(reason.id().substring(0, reason.id().indexOf('/')), reason.name(), about, wrong, remedy);
    }

    boolean isWaivedBy(Waiver waiver) {
        return waiver.check().equals(fault.check()) && waiver.entry().equals(entry)
                && waiver.about().filter(a -> !a.equals(about)).isEmpty();
    }
}
