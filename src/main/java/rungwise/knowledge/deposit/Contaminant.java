package rungwise.knowledge.deposit;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Hours;
import rungwise.knowledge.common.Sorted;
import rungwise.knowledge.matter.MadeOf;
import rungwise.knowledge.matter.Makeup;
import rungwise.knowledge.matter.Matter;
import rungwise.knowledge.method.Chance;
import rungwise.knowledge.method.Chances;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.Surface;

/**
 * What is stuck.
 *
 * @param bond        how it holds while fresh and once hardened
 * @param form        how it lies
 * @param madeOf      its components; empty where nothing lies there, or nobody can say what
 * @param hardens     when solvent or water has left it
 * @param marks       when half of them have marked sound clear coat beneath
 * @param marksBy     by what it marks
 * @param correction  ids of methods that put its mark right
 * @param leaves      id of the mark that shows once it is off; empty where that is the general one
 * @param nature      chemistry that rules speak of
 * @param hazards     what it does to people
 * @param holds       why no work starts at all, where that is so
 * @param emergency   what to do before anything else, while it still helps
 * @param refersTo    method id of who takes over, where the deposit and not the surface decides it
 * @param dissolvesLike material whose spheres stand for it, where those of its bond class do not fit
 * @param usualSurfaces surface ids where it is usually met
 * @param remarks     what single methods do to it, and why
 * @param makeup      its components with all that is known of them
 * @param alsoCalled  other ways to say it; a question may use any of them
 */
public record Contaminant(String id, String name, String what, Bond bond, MadeOf.Lying form, Optional<MadeOf> madeOf, Hours hardens, Hours marks, Optional<Attack> marksBy,
                          List<String> correction, Optional<String> leaves, String ageing, Set<Nature> nature, Set<String> hazards, List<String> ppe, Optional<String> holds,
                          Optional<Emergency> emergency, Optional<String> refersTo, Optional<String> dissolvesLike, Recognition recognise,
                          List<String> usualSurfaces, List<Remark> remarks, Basis basis, List<String> sources,
                          @JsonIgnore Optional<Makeup> makeup, List<String> alsoCalled) {
    public Contaminant {
        form = form == null ? MadeOf.Lying.UNTOLD : form;
        madeOf = madeOf == null ? Optional.empty() : madeOf;
        makeup = makeup == null ? Optional.empty() : makeup;
        hardens = hardens == null ? Hours.NEVER : hardens;
        marks = marks == null ? Hours.NEVER : marks;
        correction = correction == null ? List.of() : List.copyOf(correction);
        marksBy = marksBy == null ? Optional.empty() : marksBy;
        leaves = leaves == null ? Optional.empty() : leaves;
        nature = Sorted.set(nature);
        hazards = Sorted.set(hazards);
        ppe = ppe == null ? List.of() : List.copyOf(ppe);
        holds = holds == null ? Optional.empty() : holds;
        emergency = emergency == null ? Optional.empty() : emergency;
        refersTo = refersTo == null ? Optional.empty() : refersTo;
        dissolvesLike = dissolvesLike == null ? Optional.empty() : dissolvesLike;
        usualSurfaces = usualSurfaces == null ? List.of() : List.copyOf(usualSurfaces);
        remarks = remarks == null ? List.of() : List.copyOf(remarks);
        sources = sources == null ? List.of() : List.copyOf(sources);
        alsoCalled = alsoCalled == null ? List.of() : List.copyOf(alsoCalled);
    }

    /** Bond class ids. */
    public record Bond(String fresh, String hardened) {
        public boolean changes() {
            return !fresh.equals(hardened);
        }
    }

    /**
     * First aid for the surface, whatever the temperature and the ranking, and what follows.
     *
     * @param act     what to do now; doors, switches and flame first where they matter
     * @param blotted the same where no water may run off, if that is another thing
     * @param avoid   what not to do
     * @param until   by what is seen or felt it is enough
     * @param off     what follows if it is off
     * @param left    what follows if it is not
     */
    public record Emergency(String method, double untilHours, String act, Optional<String> blotted, String avoid, String until, String why,
                            String off, String left) {
        public Emergency {
            blotted = blotted == null ? Optional.empty() : blotted;
        }

        public String actBlotting() {
            return blotted.orElse(act);
        }
    }

    public record Recognition(String look, String feel, String place, String test, List<String> lookAlikes) {
    }

    /**
     * What some methods do to it. A chance of its own counts before what its parts give; without one the remark only explains.
     *
     * @param why the reason in the chemistry
     */
    public record Remark(List<String> methods, Optional<Chance> fresh, Optional<Chance> hardened, String why, Basis basis,
                         List<String> sources) {
        public Remark {
            fresh = fresh == null ? Optional.empty() : fresh;
            hardened = hardened == null ? Optional.empty() : hardened;
            sources = sources == null ? List.of() : List.copyOf(sources);
        }

        public Remark(Method method, Chances chances, String why, Basis basis, List<String> sources) {
            this(List.of(method.id()), Optional.of(chances.fresh()), Optional.of(chances.hardened()), why, basis, sources);
        }

        public Optional<Chances> chances() {
            return fresh.flatMap(f -> hardened.map(h -> new Chances(f, h)));
        }
    }

    /** What one correct attempt takes of it: as was remarked, else by what it is made of, else by how it holds. */
    public Chances chances(Method method) {
        return remarked(method).or(() -> makeupFor(method).map(m -> m.chances(method)))
                .orElseGet(() -> new Chances(method.chancesFor(bond.fresh()).fresh(), method.chancesFor(bond.hardened()).hardened()));
    }

    private Optional<Chances> remarked(Method method) {
        return remarks.stream().filter(r -> r.fresh().isPresent() && r.methods().contains(method.id())).findFirst().flatMap(Remark::chances);
    }

    /** What was said of this method on it. */
    public Optional<Remark> remark(String method) {
        return remarks.stream().filter(r -> r.methods().contains(method)).findFirst();
    }

    /** What it is made of, where that decides what this method does to it. */
    public Optional<Makeup> makeupFor(Method method) {
        return makeup.filter(m -> method.role().isPresent() && remarked(method).isEmpty());
    }

    /** Shares of the parts that have to be taken one by one; one whole where nobody said what it is made of. */
    public double[] shares(boolean hardened) {
        return makeup.map(m -> m.parts(hardened).stream().mapToDouble(Makeup.Held::share).toArray()).filter(s -> s.length > 0)
                .orElseGet(() -> new double[] {1});
    }

    /** The chance of each of these parts. */
    public double[] chances(Method method, boolean hardened) {
        return makeupFor(method).filter(m -> !m.parts(hardened).isEmpty()).map(m -> m.eachPart(method, hardened)).orElseGet(() -> {
            double[] alike = shares(hardened);
            Arrays.fill(alike, chances(method).of(hardened).probability());
            return alike;
        });
    }

    /** As it lies on this surface, which may take it in. */
    public Contaminant on(Surface surface) {
        return makeup.map(m -> m.takenIn(surface.takesIn()) == m ? this : madeUp(m.takenIn(surface.takesIn()))).orElse(this);
    }

    /** The same, knowing what it is made of. */
    public Contaminant knowing(Matter matter) {
        return madeOf.flatMap(m -> matter.of(form, m)).map(this::madeUp).orElse(this);
    }

    private Contaminant madeUp(Makeup known) {
        return new Contaminant(id, name, what, bond, form, madeOf, hardens, marks, marksBy, correction, leaves, ageing, nature, hazards, ppe, holds, emergency,
                refersTo, dissolvesLike, recognise, usualSurfaces, remarks, basis, sources, Optional.of(known), alsoCalled);
    }

    /** The same with more remarks. */
    public Contaminant and(List<Remark> more) {
        List<Remark> all = new ArrayList<>(remarks);
        all.addAll(more);
        return new Contaminant(id, name, what, bond, form, madeOf, hardens, marks, marksBy, correction, leaves, ageing, nature, hazards, ppe, holds, emergency,
                refersTo, dissolvesLike, recognise, usualSurfaces, all, basis, sources, makeup, alsoCalled);
    }

    public boolean is(Nature one) {
        return nature.contains(one);
    }

    /** Pure colour or shape change: there is nothing to remove. */
    public boolean isDamage() {
        return bond.hardened().equals("damage") && bond.fresh().equals("damage");
    }

    /** Damage with nothing on it: there is no deposit that could come off and bare a mark. */
    public boolean isMark() {
        return isDamage() && madeOf.isEmpty();
    }
}
