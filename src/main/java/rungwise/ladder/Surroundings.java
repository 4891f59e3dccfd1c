package rungwise.ladder;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.knowledge.Method;
import rungwise.rules.Bar;
import rungwise.rules.Because;
import rungwise.rules.Concluded;

/**
 * Steps around the rungs, less those that are barred: a step that only the weather bars today waits for it, and says
 * so; any other barred step is left out.
 */
final class Surroundings {
    private final Candidacy candidacy;
    private final Map<String, List<Concluded<Bar>>> bars = new HashMap<>();

    /** Judges all steps that may be named together, as one look at the rules costs as much as many. */
    Surroundings(Candidacy candidacy, Set<String> steps) {
        this.candidacy = candidacy;
        bars.putAll(candidacy.barsOfSteps(new TreeSet<>(steps)));
    }

    boolean isPermitted(String step) {
        return bars.getOrDefault(step, List.of()).isEmpty();
    }

    /** The steps that may be named today, those that wait gathered under what they wait for. */
    List<Answer.Around> of(List<Answer.Around> steps) {
        Map<String, Answer.Around> named = new LinkedHashMap<>();
        for (Answer.Around step : steps) {
            List<Concluded<Bar>> here = bars.getOrDefault(step.step(), List.of());
            if (here.isEmpty()) {
                named.putIfAbsent(step.step(), step);
            } else if (here.stream().allMatch(b -> b.conclusion().isWeather())) {
                wait(step, here).forEach(w -> named.merge(w.step(), w, Surroundings::both));
            }
        }
        return List.copyOf(named.values());
    }

    private static Stream<Answer.Around> wait(Answer.Around step, List<Concluded<Bar>> here) {
        String opens = here.stream().map(b -> b.conclusion().opensWith()).distinct().sorted()
                .collect(Collectors.joining(" and "));
        List<Because> because = Stream.concat(here.stream().map(Concluded::because), step.because().stream()).toList();
        return Stream.of(new Answer.Around(opens, "Once it is " + NextStep.untilWords(opens) + ": " + step.text(),
                step.dilution(), step.onDry(), step.watch(), step.rinse(), step.wear(), because));
    }

    private static Answer.Around both(Answer.Around one, Answer.Around other) {
        return one.saying(one.text().endsWith(other.text()) ? one.text() : one.text() + " " + other.text(),
                one.rinse().or(other::rinse), Stream.concat(one.because().stream(), other.because().stream()).distinct().toList());
    }

    /** Corrections of a method that may be named today. */
    List<Method> corrections(Method method) {
        return candidacy.corrections(method).stream().filter(m -> isPermitted(m.id())).toList();
    }
}
