package rungwise.card;

import java.util.List;
import java.util.stream.Collectors;
import rungwise.knowledge.common.Sentence;

/** Names that begin or end alike, as one: the words that they share once. */
final class Alike {
    private Alike() {
    }

    /**
     * One name for those that share words with it, else the name itself.
     *
     * @param all names of a kind, the one among them
     */
    static String names(List<String> all, String one) {
        String last = one.substring(one.lastIndexOf(' ') + 1);
        String begin = one.substring(0, one.indexOf(' ') + 1);
        List<String> ending = all.stream().filter(n -> n.endsWith(" " + last)).toList();
        List<String> beginning = all.stream().filter(n -> !begin.isEmpty() && n.startsWith(begin)).toList();
        if (beginning.size() > 1) {
            return begin + beginning.stream().map(n -> n.substring(begin.length())).collect(Collectors.joining(", "));
        }
        if (ending.size() < 2 || last.length() < 2) {
            return one;
        }
        String tail = tail(ending);
        return ending.stream().map(n -> n.substring(0, n.length() - tail.length())).map(n -> n.equals(head(ending.get(0), tail)) ? n
                : Sentence.within(n)).collect(Collectors.joining(", ")) + tail;
    }

    private static String head(String name, String tail) {
        return name.substring(0, name.length() - tail.length());
    }

    /** The longest end of whole words that all share, and that leaves something of each. */
    private static String tail(List<String> names) {
        String tail = names.get(0);
        do {
            int space = tail.indexOf(' ', 1);
            tail = tail.substring(space);
        } while (!allEnd(names, tail));
        return tail;
    }

    private static boolean allEnd(List<String> names, String tail) {
        return names.stream().allMatch(n -> n.endsWith(tail) && n.length() > tail.length());
    }
}
