package rungwise.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Methods that gain when the bond class changes are listed exactly, so that nothing gains unnoticed. */
final class GainsWithAgeCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        Map<String, Method> methods = draft.methods();
        return draft.each(Kind.CONTAMINANT, Contaminant.class, (entry, contaminant) -> {
            if (!draft.hasItsBondClasses(contaminant)) {
                return Stream.empty();
            }
            Set<String> gains = new TreeSet<>();
            methods.values().stream().filter(m -> gains(contaminant.chances(m)))
                    .forEach(m -> gains.add(m.id()));
            Set<String> listed = new TreeSet<>(contaminant.gainsWithAge());
            listed.retainAll(methods.keySet());
            return listed.equals(gains) ? Stream.empty() : Stream.of(entry.fault("gainsWithAge", "it lists " + listed
                    + " but the chances rise for " + gains, "list exactly the methods that gain, or mend the chances"));
        });
    }

    private static boolean gains(Chances chances) {
        return chances.hardened().compareTo(chances.fresh()) > 0;
    }
}
