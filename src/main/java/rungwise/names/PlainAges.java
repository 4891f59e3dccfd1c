package rungwise.names;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwise.knowledge.words.Spoken;
import rungwise.knowledge.words.TimeWord;

/** Reads how old something is as people say it, and writes it as an ISO 8601 duration. */
public final class PlainAges {
    private static final double MINUTES = 60;
    private static final int MINUTES_OF_A_DAY = 24 * 60;
    /** A number, a word, or what parts them. */
    private static final Pattern PART = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,3})?)(?![\\d.,]*\\d)|(\\p{L}+)|[\\s_,-]+");
    private static final Pattern BEGINS = Pattern.compile("[\\p{L}\\d]");
    private static final String AND = "and";

    private final Spoken spoken;
    private final Map<String, TimeWord> byForm = new HashMap<>();

    PlainAges(Spoken spoken, Collection<TimeWord> words) {
        this.spoken = spoken;
        words.forEach(w -> w.said().forEach(said -> byForm.put(spoken.form(said), w)));
    }

    /** The duration; empty where nobody can say how long that is. */
    public Optional<String> iso(String said) {
        return moment(said).map(w -> w.hoursAgo().getAsDouble()).or(() -> counted(said.strip())).map(PlainAges::iso);
    }

    /** Whether it is said as well of the time to come, as "overnight": then it is an age only where one was asked. */
    public boolean isAhead(String said) {
        return moment(said).filter(TimeWord::ahead).isPresent();
    }

    /** A moment, with or without words that say nothing around it: "since yesterday". */
    private Optional<TimeWord> moment(String said) {
        List<String> words = spoken.words(said);
        int from = 0;
        int to = words.size();
        while (to > from && isIdle(words.get(to - 1))) {
            to--;
        }
        for (; from <= to; from++) {
            for (int end = words.size(); end >= to; end--) {
                Optional<TimeWord> one = Optional.ofNullable(byForm.get(String.join("", words.subList(from, end))))
                        .filter(w -> w.hoursAgo().isPresent());
                if (one.isPresent()) {
                    return one;
                }
            }
            if (from < to && !isIdle(words.get(from))) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private boolean isIdle(String word) {
        return Optional.ofNullable(byForm.get(word)).filter(TimeWord::saysNothing).isPresent();
    }

    private static String iso(double hours) {
        long minutes = Math.round(hours * MINUTES);
        long days = minutes / MINUTES_OF_A_DAY;
        long left = minutes % MINUTES_OF_A_DAY;
        String time = (left >= MINUTES ? "" + left / (long) MINUTES + "H" : "")
                + (left % (long) MINUTES > 0 ? left % (long) MINUTES + "M" : "");
        String whole = (days > 0 ? days + "D" : "") + (time.isEmpty() ? "" : "T" + time);
        return whole.isEmpty() ? "PT0M" : "P" + whole;
    }

    private Optional<Double> counted(String said) {
        Sum sum = new Sum();
        Matcher part = PART.matcher(said);
        int at = 0;
        boolean reads = BEGINS.matcher(said).lookingAt();
        while (reads && at < said.length()) {
            reads = part.region(at, said.length()).lookingAt() && (part.group(1) != null ? sum.digits(Double.parseDouble(part.group(1)))
                    : part.group(2) == null || word(part.group(2), sum));
            at = reads ? part.end() : at;
        }
        return reads ? sum.whole() : Optional.empty();
    }

    private boolean word(String said, Sum sum) {
        if (said.equalsIgnoreCase(AND)) {
            sum.and();
            return true;
        }
        TimeWord word = byForm.get(spoken.form(said));
        if (word == null || word.hoursAgo().isPresent()) {
            return false;
        }
        return word.saysNothing() || (word.times().isPresent() ? sum.times(word.times().getAsDouble()) : sum.unit(word.unitHours().getAsDouble()));
    }

    /** Numbers and units as they come: "two and a half days", "1 day 6 hours", "an hour and a half". */
    private static final class Sum {
        private double hours;
        private double lastUnit;
        private double before;
        private double number;
        private boolean numbered;

        boolean times(double by) {
            number = numbered ? number * by : by;
            numbered = true;
            return true;
        }

        /** Digits stand first: "2 3 days" is a slip and no product. */
        boolean digits(double many) {
            return !numbered && times(many);
        }

        void and() {
            before += numbered ? number : 0;
            numbered = false;
        }

        boolean unit(double unitHours) {
            boolean any = numbered || before > 0;
            hours += (before + (numbered ? number : 0)) * unitHours;
            lastUnit = unitHours;
            before = 0;
            numbered = false;
            return any;
        }

        /** What is left over is a part of the last unit, or no age at all. */
        Optional<Double> whole() {
            if (lastUnit == 0 || before > 0 || numbered && number >= 1) {
                return Optional.empty();
            }
            return Optional.of(hours + (numbered ? number * lastUnit : 0));
        }
    }
}
