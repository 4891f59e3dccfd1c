package rungwise.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;

/** What a row of the array breaks, by law: the answer itself, and the answer beside those of questions one step away. */
final class RowLaws {
    private final Advisor advisor;
    private final Clashes clashes;
    private final AtomicLong ladders = new AtomicLong();
    private final Map<String, AtomicLong> asked = new ConcurrentSkipListMap<>();
    private final Map<String, AtomicLong> judged = new ConcurrentSkipListMap<>();

    RowLaws(Advisor advisor) {
        this.advisor = advisor;
        this.clashes = Clashes.of(Base.advisor());
    }

    long ladders() {
        return ladders.get();
    }

    /** By law, in how many answers of how many there was something to judge. */
    String shares() {
        return asked.entrySet().stream().map(e -> e.getKey() + ": " + judged(e.getKey()) + " of " + e.getValue() + ", "
                + percent(e.getKey()) + " %").collect(Collectors.joining("; "));
    }

    long judged(String law) {
        return judged.getOrDefault(law, new AtomicLong()).get();
    }

    long percent(String law) {
        long of = asked.getOrDefault(law, new AtomicLong()).get();
        return of == 0 ? 0 : 100 * judged(law) / of;
    }

    private void judged(String law, boolean real) {
        asked.computeIfAbsent(law, l -> new AtomicLong()).incrementAndGet();
        if (real) {
            judged.computeIfAbsent(law, l -> new AtomicLong()).incrementAndGet();
        }
    }

    /** By law and kind of break, what is wrong; empty where every law holds. */
    Map<String, List<String>> broken(Map<String, String> row) {
        Map<String, List<String>> wrong = new TreeMap<>();
        Answer untried = ask(row, "");
        String tries = tries(row, untried);
        Answer answer = tries.isEmpty() ? untried : ask(row, tries);
        alone(answer, wrong);
        wishes(row, tries, answer, wrong);
        stricter(row, tries, answer, wrong);
        if (!tries.isEmpty()) {
            alone(untried, wrong);
            afterTries(row, untried, answer, wrong);
        }
        less(row, tries, answer, wrong);
        leftOut(row, tries, answer, wrong);
        afterChemistry(row, untried, wrong);
        return wrong;
    }

    String text(Map<String, String> row) {
        return Dimensions.question(row, tries(row, ask(row, "")));
    }

    private Answer ask(Map<String, String> row, String tries) {
        ladders.incrementAndGet();
        return Base.ask(advisor, Dimensions.question(row, tries));
    }

    /** The answer where one dimension has another value; its own answer is not asked for again. */
    private Answer beside(Map<String, String> row, String tries, Answer own, String dimension, String value) {
        return row.get(dimension).equals(value) ? own : ask(Dimensions.but(row, dimension, value), tries);
    }

    /** Tries of the ladder's own first rungs, as far as there are any. */
    private static String tries(Map<String, String> row, Answer untried) {
        List<Answer.Rung> rungs = untried.rungs();
        if (rungs.isEmpty() || row.get("tried").isEmpty()) {
            return "";
        }
        String first = "{method: " + rungs.get(0).method() + ", times: 1, hoursAgo: 1, dwellMinutes: "
                + rungs.get(0).dwell().from() + ", outcome: ";
        return switch (row.get("tried")) {
            case "two grades" -> "[" + first + "no-change}" + (rungs.size() < 2 ? "" : ", {method: " + rungs.get(1).method()
                    + ", times: 1, hoursAgo: 0.5, dwellMinutes: " + rungs.get(1).dwell().from() + ", outcome: no-change}") + "]";
            case "unprepared" -> "[" + first + "no-change, prepared: false}]";
            default -> "[" + first + row.get("tried") + "}]";
        };
    }

    /** Laws of one answer: 1, 2, 8, 9, 13, 14 and of 7 what follows. */
    private void alone(Answer answer, Map<String, List<String>> wrong) {
        Set<String> barred = Checks.barred(answer);
        boolean real = !answer.rungs().isEmpty();
        judged("1", answer.rungs().size() > 1);
        say(wrong, "1 order", Checks.order(answer));
        judged("2", real && !barred.isEmpty());
        say(wrong, "2 offered", Checks.barredButOffered(answer, barred));
        say(wrong, "2 around", Checks.barredButAround(answer, Checks.barredBeyondTries(answer)));
        say(wrong, "7 bridges", clashes.unbridged(answer));
        judged("7 what follows", real);
        say(wrong, "7 what follows", Checks.unfollowed(answer));
        judged("8", real);
        say(wrong, "8 because", Checks.unreasoned(answer));
        judged("9", real);
        say(wrong, "9 protection", Checks.unprotected(answer));
        judged("14", real);
        say(wrong, "14 one place each", CompletenessTest.misplaced(Placed.of(answer)));
        judged("13", answer.rungs().stream().anyMatch(r -> r.severity().filmMicrons() >= 0.3));
        say(wrong, "13 film", Checks.overBudget(answer));
    }

    /** Law 2: no wish and no consent lifts a bar. */
    private void wishes(Map<String, String> row, String tries, Answer answer, Map<String, List<String>> wrong) {
        Answer granted = beside(row, tries, answer, "consent", "granted");
        Answer asked = beside(row, tries, answer, "consent", "");
        Answer refused = beside(row, tries, answer, "consent", "refused");
        judged("6 consent", Checks.barred(refused).size() > Checks.barred(granted).size());
        say(wrong, "2 consent lifts a bar", Checks.lifted(Checks.barred(asked), Checks.barred(granted)));
        say(wrong, "6 refusal lifts a bar", Checks.lifted(Checks.barred(asked), Checks.barred(refused)));
    }

    /** Law 7, as if what clashes with one of the rungs had been used an hour ago. */
    private void afterChemistry(Map<String, String> row, Answer untried, Map<String, List<String>> wrong) {
        List<String> before = clashes.before(untried);
        if (!before.isEmpty()) {
            String used = before.get(Math.floorMod(sentence(row).hashCode(), before.size()));
            Answer answer = ask(row, "[{substance: " + used + ", outcome: no-change, hoursAgo: 1}]");
            judged("7 bridges", clashes.anyIn(answer));
            say(wrong, "7 bridges after another agent", clashes.unbridged(answer));
            say(wrong, "7 what follows after another agent", Checks.unfollowed(answer));
        }
    }

    /** Law 3: a stricter surface beside it, and the same panel with a thinner film, fresher paint or a refinish. */
    private void stricter(Map<String, String> row, String tries, Answer answer, Map<String, List<String>> wrong) {
        if (!row.get("stricter").equals(row.get("surface"))) {
            tighter("surface", answer, ask(Dimensions.but(row, "surface", "[" + row.get("surface") + ", "
                    + row.get("stricter") + "]"), tries), wrong);
        }
        tighter(row, tries, answer, "total film", "{min: 110, max: 120}", "totalFilmMicrons: {min: 84, max: 95}", wrong);
        tighter(row, tries, answer, "clear", "42", "clearMicrons: 24", wrong);
        tighter(row, tries, answer, "paint age", "2900", "paintAgeDays: 60", wrong);
        tighter(row, tries, answer, "refinish", "false", "refinished: true", wrong);
    }

    private void tighter(Map<String, String> row, String tries, Answer answer, String fact, String loose, String tight,
                         Map<String, List<String>> wrong) {
        if (row.get(fact).endsWith(loose)) {
            tighter(fact, answer, ask(Dimensions.but(row, fact, tight), tries), wrong);
        }
    }

    private void tighter(String what, Answer plain, Answer tight, Map<String, List<String>> wrong) {
        judged("3", !Checks.barred(tight).equals(Checks.barred(plain)) && !plain.rungs().isEmpty());
        say(wrong, "3 a bar goes with stricter " + what, Checks.lifted(Checks.barred(plain), Checks.barred(tight)));
        say(wrong, "3 a grade falls with stricter " + what, Checks.gentler(plain, tight));
    }

    /** Law 5. */
    private void afterTries(Map<String, String> row, Answer untried, Answer answer, Map<String, List<String>> wrong) {
        judged("5", untried.rungs().size() > 1);
        String tried = row.get("tried");
        say(wrong, "5 contact cap", Checks.beyondContact(answer));
        if (tried.equals(Dimensions.HARM)) {
            say(wrong, "5 harm", answer.rungs().isEmpty() && answer.alternatives().isEmpty()
                    && List.of("stop", "hold", "flush").contains(answer.next().action()) ? List.of()
                    : List.of("rungs " + Checks.ids(answer) + ", next " + answer.next().action()));
        } else if (tried.equals("unprepared")) {
            say(wrong, "5 unprepared", answer.ladder().map(rungwise.answer.LadderAnswer::belief).equals(untried.ladder().map(rungwise.answer.LadderAnswer::belief)) ? List.of() : List.of("belief moved"));
        } else {
            List<String> rungs = Checks.ids(untried);
            int climbed = tried.equals("partly") ? 0 : tried.equals("two grades") ? Math.min(2, rungs.size()) : 1;
            List<String> tail = rungs.subList(climbed, rungs.size());
            // a slow one that stood beside the quick one may take its place
            Set<String> slow = untried.alternatives().stream().map(Answer.Alternative::method).collect(Collectors.toSet());
            boolean kept = Checks.isTail(answer, tail, slow);
            say(wrong, "5 tail", kept ? List.of() : List.of(Checks.ids(answer) + " after " + rungs));
        }
        if (tried.equals("two grades") && untried.rungs().size() > 1) {
            say(wrong, "5 reassess", Checks.abrasiveNext(answer));
        }
    }

    /** Law 6: less on the shelf, and a panel that is further out. */
    private void less(Map<String, String> row, String tries, Answer answer, Map<String, List<String>> wrong) {
        if (row.get("shelf").isEmpty()) {
            Set<String> fewer = Checks.barred(ask(Dimensions.but(row, "shelf", Dimensions.values("shelf").get(1)), tries));
            say(wrong, "6 a short shelf lifts a bar", Checks.lifted(Checks.barred(answer), fewer));
        }
        String further = switch (row.get("panel")) {
            case "panelC: 30" -> "panelC: 41";
            case "panelC: 52" -> "panelC: 68";
            case "panelC: 4" -> "panelC: -3";
            default -> "";
        };
        if (!further.isEmpty()) {
            Set<String> then = Checks.barred(ask(Dimensions.but(row, "panel", further), tries));
            judged("6 panel", then.size() > Checks.barred(answer).size());
            say(wrong, "6 a panel further out lifts a bar", Checks.lifted(Checks.barred(answer), then));
        }
    }

    /** Law 12: one fact left out; where it bars nothing on the row's own spot, once more where it may. */
    private void leftOut(Map<String, String> row, String tries, Answer answer, Map<String, List<String>> wrong) {
        String fact = row.get("left out");
        boolean bars = leftOut(fact, row, tries, answer, wrong);
        Map<String, String> telling = Dimensions.telling(fact, row);
        if (!bars && !telling.equals(row)) {
            bars = leftOut(fact, telling, "", ask(telling, ""), wrong);
        }
        judged("12 bars", bars);
        judged("12 bars by " + fact, bars);
    }

    /** Beside each value that the fact may have; whether one of them bars what is offered without. */
    private boolean leftOut(String fact, Map<String, String> row, String tries, Answer answer,
                            Map<String, List<String>> wrong) {
        Set<String> asks = Dimensions.asks(fact, row);
        Answer without = beside(row, tries, answer, fact, "");
        Set<String> offered = Checks.offered(without).map(Answer.Rung::method).collect(Collectors.toSet());
        boolean bars = false;
        boolean protects = false;
        for (String value : Dimensions.values(fact)) {
            if (!value.isEmpty()) {
                Answer with = beside(row, tries, answer, fact, value);
                bars |= Checks.barred(with).stream().anyMatch(offered::contains);
                protects |= Checks.offered(with).map(Answer.Rung::method).anyMatch(offered::contains);
                say(wrong, "12 without " + fact + " a bar goes", Checks.unasked(with, without, asks));
                // a place that is worse than what an untold one counts as may ask for more air and protection
                boolean box = value.equals(Dimensions.BOX);
                say(wrong, "12 without " + fact + " a gate goes", Checks.gatesLost(with, without, asks).stream()
                        .filter(lost -> !box || !lost.endsWith("without more_air")).toList());
                if (!box) {
                    say(wrong, "12 without " + fact + " protection goes", Checks.protectionLost(with, without));
                }
            }
        }
        judged("12 protection", protects);
        return bars;
    }

    private static void say(Map<String, List<String>> wrong, String law, List<String> found) {
        if (!found.isEmpty()) {
            wrong.computeIfAbsent(law, l -> new ArrayList<>()).addAll(new TreeSet<>(found));
        }
    }

    /** The row with as few facts and as many plain values as still break the same law in the same way. */
    Map<String, String> smallest(Map<String, String> row, String law) {
        Map<String, String> small = row;
        boolean shrunk = true;
        while (shrunk) {
            shrunk = false;
            for (String dimension : Dimensions.names()) {
                for (String plain : plainer(dimension, small.get(dimension))) {
                    Map<String, String> plainer = Dimensions.but(small, dimension, plain);
                    if (broken(plainer).containsKey(law)) {
                        small = plainer;
                        shrunk = true;
                        break;
                    }
                }
            }
        }
        return small;
    }

    /** Left out is plainest, then the first value. */
    private static List<String> plainer(String dimension, String value) {
        List<String> values = Dimensions.values(dimension);
        List<String> plainer = new ArrayList<>();
        if (!value.isEmpty() && values.contains("")) {
            plainer.add("");
        }
        if (!value.isEmpty() && !value.equals(values.get(0)) && !values.get(0).isEmpty()) {
            plainer.add(values.get(0));
        }
        return plainer;
    }

    static String sentence(Map<String, String> row) {
        return row.entrySet().stream().filter(e -> !e.getValue().isEmpty()).map(e -> e.getKey() + " " + e.getValue())
                .collect(Collectors.joining("; "));
    }
}
