package rungwise.laws;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rungwise.ladder.Answer;

/** Laws as checks of one answer. */
final class Law {
    private Law() {
    }

    static boolean keyNeverFalls(Answer answer) {
        for (int i = 1; i < answer.rungs().size(); i++) {
            if (compare(answer.rungs().get(i - 1).severity().key(), answer.rungs().get(i).severity().key()) > 0) {
                return false;
            }
        }
        return true;
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static int compare(List<Object> one, List<Object> two) {
        for (int i = 0; i < one.size(); i++) {
            int compared = ((Comparable) one.get(i)).compareTo(two.get(i));
            if (compared != 0) {
                return compared;
            }
        }
        return 0;
    }

    static Set<String> barredThatAppear(Answer answer) {
        Set<String> appear = new HashSet<>();
        answer.before().forEach(s -> appear.add(s.step()));
        answer.after().forEach(s -> appear.add(s.step()));
        answer.alternatives().forEach(a -> appear.add(a.method()));
        answer.rungs().forEach(r -> {
            appear.add(r.method());
            r.bridgeBefore().forEach(b -> appear.addAll(b.steps()));
            r.ifMarked().forEach(s -> appear.add(s.step()));
        });
        // water to rinse and wash with is a step around the rungs even where its tries as a rung are used up
        answer.barred().stream().filter(b -> b.because().stream().noneMatch(w -> w.rule().equals("b074")
                || w.rule().equals("n01") || w.rule().startsWith("b037"))).forEach(b -> appear.add("!" + b.method()));
        Set<String> both = new HashSet<>();
        appear.stream().filter(a -> a.startsWith("!") && appear.contains(a.substring(1)))
                .forEach(a -> both.add(a.substring(1)));
        answer.rungs().stream().map(Answer.Rung::method).filter(m -> answer.barred().stream()
                .anyMatch(b -> b.method().equals(m))).forEach(both::add);
        return both;
    }

    static Answer with(Answer a, List<Answer.Rung> rungs) {
        return new Answer(a.revision(), a.question(), a.assumed(), a.hold(), a.belief(), a.before(), rungs,
                a.alternatives(), a.passedOver(), a.barred(), a.neighbours(), a.after(), a.wayOut(), a.next(),
                a.expected(), a.advice());
    }

    static Answer barring(Answer a, List<Answer.Barred> barred) {
        return new Answer(a.revision(), a.question(), a.assumed(), a.hold(), a.belief(), a.before(), a.rungs(),
                a.alternatives(), a.passedOver(), barred, a.neighbours(), a.after(), a.wayOut(), a.next(),
                a.expected(), a.advice());
    }
}
