package rungwise.question;

import com.fasterxml.jackson.annotation.JsonFormat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What is asked of a ladder. Everything but the surface may be left out; what is left out is unknown.
 *
 * @param contaminant     id; empty = unknown
 * @param observations    signs that were seen
 * @param notSeen         signs that were looked for and are not there
 * @param age             ISO 8601 duration or "unknown"
 * @param surface         ids; several mean the strictest of them; "unknown" = as delicate as all together
 * @param shelf           agents, tools or methods at hand; empty = everything known
 * @param shelfStrict     water, cloths, mitt and neutral shampoo count only if listed
 * @param canWaitMinutes  how long the customer can wait beyond the work
 * @param passedTests     methods whose hidden test spot passed
 * @param wanted          methods somebody asks for
 * @param tried           in the order of the tries
 * @param mixing          the bottle that agents are to be mixed in
 */
public record Question(Optional<String> contaminant, List<String> observations, List<String> notSeen, String age, Extent extent,
                       @JsonFormat(with = JsonFormat.Feature.ACCEPT_SINGLE_VALUE_AS_ARRAY) List<String> surface,
                       Facts facts, List<String> circumstances, List<String> neighbours, Setting setting,
                       List<Worker> workers, Optional<List<String>> shelf, boolean shelfStrict, Consent consent,
                       List<String> done, double canWaitMinutes, List<String> passedTests, List<String> wanted,
                       List<Tried> tried, Optional<Mixing> mixing) {
    public static final String UNKNOWN = "unknown";
    /** Outcome of a try: the deposit is off, and a mark shows beneath. */
    public static final String MARKED = "marked";

    public Question {
        contaminant = contaminant == null ? Optional.empty() : contaminant;
        observations = copy(observations);
        notSeen = copy(notSeen);
        age = age == null ? UNKNOWN : age;
        extent = extent == null ? new Extent(null, null, null) : extent;
        surface = surface == null || surface.isEmpty() ? List.of(UNKNOWN) : List.copyOf(surface);
        facts = facts == null ? Facts.NONE : facts;
        circumstances = copy(circumstances);
        neighbours = copy(neighbours);
        setting = setting == null ? Setting.UNKNOWN : setting;
        workers = copy(workers);
        shelf = shelf == null ? Optional.empty() : shelf.map(List::copyOf);
        consent = consent == null ? new Consent(List.of(), List.of()) : consent;
        done = copy(done);
        passedTests = copy(passedTests);
        wanted = copy(wanted);
        tried = copy(tried);
        mixing = mixing == null ? Optional.empty() : mixing;
    }

    private static <T> List<T> copy(List<T> list) {
        return list == null ? List.of() : List.copyOf(list);
    }

    /** Age in hours; empty where it is unknown. */
    public OptionalDouble ageHours() {
        return age.equals(UNKNOWN) ? OptionalDouble.empty() : OptionalDouble.of(Ages.hours(age));
    }

    /** The same question about a contaminant that it might be. */
    public Question about(String id) {
        return new Question(Optional.of(id), observations, notSeen, age, extent, surface, facts, circumstances, neighbours,
                setting, workers, shelf, shelfStrict, consent, done, canWaitMinutes, passedTests, wanted, tried,
                mixing);
    }

    /** The same question with other methods asked for. */
    public Question wanting(List<String> methods) {
        return new Question(contaminant, observations, notSeen, age, extent, surface, facts, circumstances, neighbours, setting,
                workers, shelf, shelfStrict, consent, done, canWaitMinutes, passedTests, methods, tried,
                mixing);
    }

    /** The same question with other signs. */
    public Question noticing(List<String> seen, List<String> not) {
        return new Question(contaminant, seen, not, age, extent, surface, facts, circumstances, neighbours, setting,
                workers, shelf, shelfStrict, consent, done, canWaitMinutes, passedTests, wanted, tried,
                mixing);
    }

    /** The same question after its first tries only. */
    public Question triedOnly(int first) {
        return new Question(contaminant, observations, notSeen, age, extent, surface, facts, circumstances, neighbours, setting,
                workers, shelf, shelfStrict, consent, done, canWaitMinutes, passedTests, wanted, tried.subList(0, first),
                mixing);
    }

    /** The same question with other tries. */
    public Question having(List<Tried> tries) {
        return new Question(contaminant, observations, notSeen, age, extent, surface, facts, circumstances, neighbours, setting,
                workers, shelf, shelfStrict, consent, done, canWaitMinutes, passedTests, wanted, tries,
                mixing);
    }

    /** How many of the tries were made on the deposit: all, or those up to the one that bared a mark beneath it. */
    public int triesOnDeposit() {
        for (int i = 0; i < tried.size(); i++) {
            if (tried.get(i).baresMark()) {
                return i + 1;
            }
        }
        return tried.size();
    }

    /** Whether a try took the deposit off and bared a mark. */
    public boolean showsMark() {
        return tried.stream().anyMatch(Tried::baresMark);
    }

    /** Whether a method was tried, with whatever outcome. */
    public boolean hasTried(String method) {
        return tried.stream().anyMatch(t -> t.method().filter(method::equals).isPresent());
    }

    /** How much of it there is: a number of spots, or an area. */
    public record Extent(OptionalInt spots, OptionalDouble diameterMm, OptionalDouble areaM2) {
        public Extent {
            spots = spots == null ? OptionalInt.empty() : spots;
            diameterMm = diameterMm == null ? OptionalDouble.empty() : diameterMm;
            areaM2 = areaM2 == null ? OptionalDouble.empty() : areaM2;
        }
    }

    /**
     * What was measured or is known of the panel.
     *
     * @param colour        dark, medium or light
     * @param place         where on the vehicle, a word of its closed list
     * @param priorDamage   damage that was there before, words of their closed list
     * @param warmestPanelC hottest the panel has been since the deposit landed; moves belief
     * @param soiling       of the whole body (or wheel): light or heavy
     * @param protection    what lies on the paint, a word of its closed list
     */
    public record Facts(Optional<Span> totalFilmMicrons, OptionalDouble clearMicrons, Optional<String> colour,
                        OptionalDouble paintAgeDays, OptionalInt vehicleYear, Optional<Boolean> refinished,
                        Optional<String> place, List<String> priorDamage, OptionalDouble warmestPanelC,
                        Optional<String> soiling, Optional<String> protection) {
        public static final Facts NONE = new Facts(null, null, null, null, null, null, null, null, null, null, null);

        public Facts {
            totalFilmMicrons = totalFilmMicrons == null ? Optional.empty() : totalFilmMicrons;
            clearMicrons = clearMicrons == null ? OptionalDouble.empty() : clearMicrons;
            colour = colour == null ? Optional.empty() : colour;
            paintAgeDays = paintAgeDays == null ? OptionalDouble.empty() : paintAgeDays;
            vehicleYear = vehicleYear == null ? OptionalInt.empty() : vehicleYear;
            refinished = refinished == null ? Optional.empty() : refinished;
            place = place == null ? Optional.empty() : place;
            priorDamage = copy(priorDamage);
            warmestPanelC = warmestPanelC == null ? OptionalDouble.empty() : warmestPanelC;
            soiling = soiling == null ? Optional.empty() : soiling;
            protection = protection == null ? Optional.empty() : protection;
        }
    }

    /** Lowest and highest reading. */
    public record Span(double min, double max) {
    }

    /**
     * Where and in what weather.
     *
     * @param sun      direct, overcast or shade; unknown counts as shade and is asked for
     * @param indoors  the bay; where it is left out, outdoors or not is unknown and asked for
     * @param outdoors true where there is no bay around the work
     * @param water    what rinses; untold counts as soft where it must neutralise and as hard where it dries
     */
    public record Setting(OptionalDouble airC, OptionalDouble panelC, Optional<String> sun, double windMs,
                          OptionalDouble humidity, Optional<Indoors> indoors, boolean outdoors, Optional<Water> water) {
        public static final Setting UNKNOWN = new Setting(null, null, null, 0, null, null, false, null);

        public Setting {
            airC = airC == null ? OptionalDouble.empty() : airC;
            panelC = panelC == null ? OptionalDouble.empty() : panelC;
            sun = sun == null ? Optional.empty() : sun;
            humidity = humidity == null ? OptionalDouble.empty() : humidity;
            indoors = indoors == null ? Optional.empty() : indoors;
            water = water == null ? Optional.empty() : water;
        }

        public OptionalDouble waterHardnessMgL() {
            return water.map(Water::hardnessMgL).orElseGet(OptionalDouble::empty);
        }

        /** The sun to reckon with. */
        public String sunOrShade() {
            return sun.orElse("shade");
        }
    }

    /** A room around the work. */
    public record Indoors(double volumeM3, double airChangesPerHour) {
    }

    /**
     * Tap water, as its supplier states it or a test strip shows it; mg/l as calcium carbonate.
     *
     * @param hardnessMgL   lime and magnesia: what dries to marks
     * @param alkalinityMgL bicarbonate: what takes up acid and alkali. A softener leaves it as it is.
     */
    public record Water(OptionalDouble hardnessMgL, OptionalDouble alkalinityMgL) {
        public Water {
            hardnessMgL = hardnessMgL == null ? OptionalDouble.empty() : hardnessMgL;
            alkalinityMgL = alkalinityMgL == null ? OptionalDouble.empty() : alkalinityMgL;
        }
    }

    /**
     * A bottle to mix in.
     *
     * @param bottleMl  its size
     * @param drawParts for the bottle of a foam lance: parts of water that pass for one part drawn
     */
    public record Mixing(double bottleMl, OptionalDouble drawParts) {
        public Mixing {
            drawParts = drawParts == null ? OptionalDouble.empty() : drawParts;
        }
    }

    /** Somebody on the job. */
    public record Worker(String level, List<String> sensitisedTo) {
        public Worker {
            level = level == null ? "L1" : level;
            sensitisedTo = copy(sensitisedTo);
        }
    }

    /** Gate ids or method ids that the customer granted or refused. */
    public record Consent(List<String> granted, List<String> refused) {
        public Consent {
            granted = copy(granted);
            refused = copy(refused);
        }
    }

    /**
     * Something tried before.
     *
     * @param method    id
     * @param substance an agent id; it counts beside the method
     * @param text      free words: the everyday products that they name count, see {@link TriedAgents}; alone and naming none
     *                  they count as something that may hold anything
     * @param outcome   cleared, marked, partly, no-change or harm
     * @param prepared  false = on a dirty, hot or wet panel: it taught nothing
     * @param signs     stop signs that were seen, words of their closed list
     */
    public record Tried(Optional<String> method, Optional<String> substance, Optional<String> text, String outcome,
                        int times, double dwellMinutes, double hoursAgo, Optional<Boolean> prepared,
                        List<String> signs) {
        public Tried {
            method = method == null ? Optional.empty() : method;
            substance = substance == null ? Optional.empty() : substance;
            text = text == null ? Optional.empty() : text;
            times = times == 0 ? 1 : times;
            prepared = prepared == null ? Optional.empty() : prepared;
            signs = copy(signs);
        }

        public boolean counts() {
            return prepared.orElse(true);
        }

        /** Whether the deposit is off. */
        public boolean tookItOff() {
            return outcome.equals("cleared") || outcome.equals(MARKED);
        }

        /** Whether it took the deposit off and bared a mark. */
        public boolean baresMark() {
            return counts() && outcome.equals(MARKED);
        }

        /** The same try, of which something else came. */
        public Tried ending(String otherwise) {
            return new Tried(method, substance, text, otherwise, times, dwellMinutes, hoursAgo, prepared, signs);
        }

        /** The same try, as one that taught nothing of what is asked about now. */
        public Tried teachingNothing() {
            return new Tried(method, substance, text, outcome, times, dwellMinutes, hoursAgo, Optional.of(false), signs);
        }
    }
}
