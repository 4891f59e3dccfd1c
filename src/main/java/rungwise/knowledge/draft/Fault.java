package rungwise.knowledge.draft;

import rungwise.text.Texts;

/**
 * Something wrong in a knowledge file.
 *
 * @param file   which file
 * @param place  where in it: an item id and a field, or a line
 * @param wrong  what is wrong and why it matters
 * @param remedy what to do
 * @param check  id of the check that found it; empty until that is known
 */
public record Fault(String file, String place, String wrong, String remedy, String check) {
    public Fault(String file, String place, String wrong, String remedy) {
        this(file, place, wrong, remedy, "");
    }

    /** The same, told by a check; what another one told stays told by it. */
    public Fault by(String id) {
        return check.isEmpty() ? new Fault(file, place, wrong, remedy, id) : this;
    }

    @Override
    public String toString() {
        String where = place.isEmpty() ? file : Texts.said("fault.at", "file", file, "place", place);
        String said = Texts.said("fault", "where", where, "wrong", wrong, "remedy", remedy);
        return check.isEmpty() ? said : Texts.said("fault.told-by", "fault", said, "check", check);
    }
}
