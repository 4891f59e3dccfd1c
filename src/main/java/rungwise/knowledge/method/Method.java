package rungwise.knowledge.method;

import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Minutes;
import rungwise.knowledge.common.Range;
import rungwise.knowledge.common.Sorted;
import rungwise.knowledge.matter.Reach;
import rungwise.knowledge.surface.SurfaceKind;

/**
 * An agent and a tool with a technique.
 *
 * @param family         methods of one family are rivals: one chemistry, or one abrasive series
 * @param role           id of what it does to a deposit as it lies ({@link Reach}); empty = its chances go by bond class
 * @param works          ids of the ways in which it acts on what a deposit is made of
 * @param worksLess      the same, one step weaker
 * @param madeFor        kinds of surface that it is made for; empty = any
 * @param technique      how it is done; what takes several operations has them in their order, and stays one try
 * @param floods         needs water to run over it and off
 * @param window         panel temperature in C at which it may start; empty = any
 * @param contactC       temperature in C that the method itself puts on the surface; empty = none
 * @param pressureBar    water pressure at the nozzle
 * @param standOffCm     distance kept
 * @param tries          correct attempts before moving on
 * @param marringPercent chance of visible marring on average gloss clear
 * @param chances        by bond class; a class not named is very unlikely
 * @param softens        bond classes it softens, so that a dependent method may follow
 * @param needsSoftener  only after a softener in the same ladder
 * @param doneBy        word by which a question says that this was done already
 * @param afterwards     method ids that must follow at once
 * @param correction     method ids that put its own marks right
 * @param gates          gate ids it always carries
 * @param alsoCalled     other ways to say it; a question may use any of them
 */
public record Method(String id, String name, MethodKind kind, String family, Mechanism mechanism, Optional<String> role,
                     List<String> works, List<String> worksLess, String agent,
                     String tool, Set<SurfaceKind> madeFor, boolean floods,
                     @JsonFormat(with = JsonFormat.Feature.ACCEPT_SINGLE_VALUE_AS_ARRAY) List<String> technique,
                     Dwell dwell, int tries, Optional<Range> window,
                     Optional<Double> contactC, Optional<Double> pressureBar, Optional<Double> standOffCm,
                     Severity severity, double marringPercent, Minutes minutes, String level,
                     Map<String, Chances> chances, Set<String> softens, boolean needsSoftener, Optional<String> doneBy,
                     List<String> stopSigns, List<String> afterwards, List<String> correction, List<String> gates,
                     String waste, List<String> ppe, List<String> risks, @JsonProperty(access = JsonProperty.Access.WRITE_ONLY) String note, Basis basis,
                     List<String> sources, List<String> alsoCalled) {
    /** Stands for every method where a rule speaks of all of them. */
    public static final String EVERY = "*";

    public Method {
        role = role == null ? Optional.empty() : role;
        works = works == null ? List.of() : List.copyOf(works);
        worksLess = worksLess == null ? List.of() : List.copyOf(worksLess);
        agent = agent == null ? "none" : agent;
        tool = tool == null ? "none" : tool;
        madeFor = Sorted.set(madeFor);
        technique = technique == null ? List.of() : List.copyOf(technique);
        dwell = dwell == null ? Dwell.NONE : dwell;
        window = window == null ? Optional.empty() : window;
        contactC = contactC == null ? Optional.empty() : contactC;
        pressureBar = pressureBar == null ? Optional.empty() : pressureBar;
        standOffCm = standOffCm == null ? Optional.empty() : standOffCm;
        chances = Sorted.map(chances);
        doneBy = doneBy == null ? Optional.empty() : doneBy;
        softens = Sorted.set(softens);
        stopSigns = stopSigns == null ? List.of() : List.copyOf(stopSigns);
        afterwards = afterwards == null ? List.of() : List.copyOf(afterwards);
        correction = correction == null ? List.of() : List.copyOf(correction);
        gates = gates == null ? List.of() : List.copyOf(gates);
        ppe = ppe == null ? List.of() : List.copyOf(ppe);
        risks = risks == null ? List.of() : List.copyOf(risks);
        note = note == null ? "" : note;
        sources = sources == null ? List.of() : List.copyOf(sources);
        alsoCalled = alsoCalled == null ? List.of() : List.copyOf(alsoCalled);
    }

    /** How it is done, in one go. */
    public String inOneGo() {
        return String.join(" ", technique);
    }

    public Chances chancesFor(String bondClass) {
        return chances.getOrDefault(bondClass, Chances.NONE);
    }

    /** Whether it takes off again what others put on: a rinse, a damp cloth, a wash at the end. */
    public boolean takesAgentsOff() {
        return mechanism == Mechanism.RINSE && !family.equals("air") || kind == MethodKind.CLEAN_UP && mechanism == Mechanism.SURFACTANT;
    }
}
