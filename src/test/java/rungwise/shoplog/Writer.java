package rungwise.shoplog;

import java.util.Optional;

/** A program that keeps attempts until it is killed, and says of each that it was kept. */
final class Writer {
    /** How a run begins that takes back whatever it keeps. */
    static final String UNDOING = "undoing";

    private Writer() {
    }

    static SenderKey key(String run, int i) {
        return new SenderKey(run + "-" + i, "0".repeat(64));
    }

    /** Where, and which run of the program this is. */
    public static void main(String[] args) {
        Shoplog log = Shoplog.open(args[0]);
        for (int i = 0; ; i++) {
            Attempt attempt = CrashTest.attempt(args[1], i);
            log.add(attempt, Optional.of(key(args[1], i)));
            if (args[1].startsWith(UNDOING)) {
                log.spots().undo(attempt.id(), new UndoOrder("", "yard", attempt.note().orElseThrow().substring(0, 20)), attempt.at(), Optional.empty());
            }
            System.out.println("kept " + i);
            if (System.out.checkError()) {
                return; // nobody listens any more: the test was ended
            }
        }
    }
}
