package rungwise.knowledge.matter;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungwise.knowledge.common.Sorted;
import rungwise.knowledge.method.Chance;
import rungwise.knowledge.method.Chances;
import rungwise.knowledge.method.Method;

/**
 * What a deposit is made of, with all that is known of it: how well a method takes each part that has to be taken. A method's
 * chance is the share of those parts that one correct attempt takes; what is carried leaves with what holds it.
 *
 * @param fresh   parts that have to be taken, their shares of one
 * @param old     the same once it has hardened
 * @param takenIn whether the surface takes it in
 */
public record Makeup(MadeOf.Lying form, List<Held> fresh, List<Held> old, Map<String, Reach> reaches, Shares shares,
                     boolean takenIn) {

    /**
     * A part that has to be taken.
     *
     * @param ways those that are thought of for its class, with how well each takes it
     */
    public record Held(Component component, Map<String, Grade> ways, double share, MadeOf.Does does) {
    }

    static Makeup of(MadeOf.Lying form, MadeOf madeOf, Map<String, Component> components, Map<String, ComponentClass> classes,
                     Map<String, Reach> reaches, Shares shares) {
        return new Makeup(form, held(madeOf.fresh(), components, classes, shares), held(madeOf.old(), components, classes, shares), reaches,
                shares, false);
    }

    private static List<Held> held(List<MadeOf.Part> parts, Map<String, Component> components, Map<String, ComponentClass> classes,
                                   Shares shares) {
        // a smaller share is there for the record, and is no condition
        List<MadeOf.Part> counted = parts.stream().filter(p -> p.share() >= shares.counts()).toList();
        List<MadeOf.Part> taken = counted.stream().filter(p -> p.role() != MadeOf.Does.CARRIED).toList();
        List<MadeOf.Part> needed = taken.isEmpty() ? counted : taken;
        double whole = needed.stream().mapToDouble(MadeOf.Part::share).sum();
        List<Held> held = new ArrayList<>();
        for (MadeOf.Part part : needed) {
            Component component = components.get(part.component());
            Map<String, Grade> ways = new HashMap<>();
            classes.get(component.kind()).ways().forEach(w -> ways.put(w, component.takenBy(w)));
            held.add(new Held(component, Sorted.map(ways), part.share() / whole, part.role()));
        }
        return List.copyOf(held);
    }

    public Makeup takenIn(boolean now) {
        return now == takenIn ? this : new Makeup(form, fresh, old, reaches, shares, now);
    }

    public List<Held> parts(boolean hardened) {
        return hardened ? old : fresh;
    }

    public DepositForm lies(boolean hardened) {
        return form.form(hardened, takenIn);
    }

    public Chances chances(Method method) {
        return new Chances(whole(method, false), whole(method, true));
    }

    /** Its chances on a deposit that it reaches in full; empty where it is thought of for no part. */
    public Optional<Chances> whereReached(Method method) {
        boolean thought = Stream.concat(fresh.stream(), old.stream()).anyMatch(p -> Stream.concat(method.works().stream(),
                method.worksLess().stream()).anyMatch(p.ways()::containsKey));
        return thought ? Optional.of(new Chances(taken(method, fresh), taken(method, old))) : Optional.empty();
    }

    private Chance taken(Method method, List<Held> parts) {
        return Chance.nearest(parts.stream().mapToDouble(p -> p.share() * Chance.nearest(shares.taken(grade(p, method))).probability()).sum());
    }

    private Chance whole(Method method, boolean hardened) {
        double reach = reach(method, hardened);
        double share = 0;
        for (Held part : parts(hardened)) {
            share += part.share() * chance(part, method, reach).probability();
        }
        return Chance.nearest(share);
    }

    /** The chance that one correct attempt takes each part. */
    public double[] eachPart(Method method, boolean hardened) {
        double reach = reach(method, hardened);
        return parts(hardened).stream().mapToDouble(p -> chance(p, method, reach).probability()).toArray();
    }

    private Chance chance(Held part, Method method, double reach) {
        return reach == 0 ? Chance.nearest(0) : Chance.nearest(reach * shares.taken(grade(part, method)));
    }

    private double reach(Method method, boolean hardened) {
        return method.role().map(reaches::get).map(r -> shares.reached(r, lies(hardened))).orElse(0.0);
    }

    /** How well a method takes a part where it reaches it. */
    public Grade grade(Held part, Method method) {
        Grade best = Grade.NOT;
        for (String way : method.works()) {
            best = best.or(part.ways().getOrDefault(way, Grade.NOT));
        }
        for (String way : method.worksLess()) {
            best = best.or(part.ways().getOrDefault(way, Grade.NOT).less());
        }
        return best;
    }

    /** Names of the parts by how well a method takes them, the best first. */
    public Map<Grade, List<String>> taken(Method method, boolean hardened) {
        Map<Grade, List<String>> taken = new LinkedHashMap<>();
        for (Grade grade : List.of(Grade.WELL, Grade.PARTLY, Grade.SLIGHTLY, Grade.NOT)) {
            List<String> names = parts(hardened).stream().filter(p -> grade(p, method) == grade).map(p -> p.component().name()).toList();
            if (!names.isEmpty()) {
                taken.put(grade, names);
            }
        }
        return taken;
    }

    /** Whether it reaches the deposit at all as it lies. */
    public boolean reaches(Method method, boolean hardened) {
        return method.role().map(reaches::get).filter(r -> r.isInto(lies(hardened))).isPresent();
    }
}
