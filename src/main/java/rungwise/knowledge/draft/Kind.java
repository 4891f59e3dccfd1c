package rungwise.knowledge.draft;

import java.util.stream.Stream;
import rungwise.knowledge.Circumstance;
import rungwise.knowledge.Source;
import rungwise.knowledge.Waiver;
import rungwise.knowledge.chemistry.Solute;
import rungwise.knowledge.chemistry.Substance;
import rungwise.knowledge.common.Word;
import rungwise.knowledge.decision.Assumption;
import rungwise.knowledge.decision.Decision;
import rungwise.knowledge.deposit.BondClass;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.deposit.EvidenceStrength;
import rungwise.knowledge.deposit.Frequency;
import rungwise.knowledge.deposit.Inspection;
import rungwise.knowledge.deposit.Observation;
import rungwise.knowledge.deposit.SignGroup;
import rungwise.knowledge.deposit.Susceptibility;
import rungwise.knowledge.matter.Component;
import rungwise.knowledge.matter.ComponentClass;
import rungwise.knowledge.matter.Reach;
import rungwise.knowledge.matter.Way;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Family;
import rungwise.knowledge.method.Gate;
import rungwise.knowledge.method.MechanismWord;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.Tool;
import rungwise.knowledge.product.ProductFunction;
import rungwise.knowledge.product.SheetPart;
import rungwise.knowledge.product.TellingPart;
import rungwise.knowledge.safety.Exposure;
import rungwise.knowledge.safety.HazardStatement;
import rungwise.knowledge.safety.Permeation;
import rungwise.knowledge.safety.Protective;
import rungwise.knowledge.safety.Respirator;
import rungwise.knowledge.surface.Place;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.words.AskedFact;
import rungwise.knowledge.words.EverydayProduct;
import rungwise.knowledge.words.FinishProtection;
import rungwise.knowledge.words.IdleWord;
import rungwise.knowledge.words.ListWord;
import rungwise.knowledge.words.PriorDamage;
import rungwise.knowledge.words.Sensitiser;
import rungwise.knowledge.words.Spelling;
import rungwise.knowledge.words.TimeWord;
import rungwise.knowledge.words.WideWord;

/** The kinds of entry, where their files lie and which schema and record they must fit. */
public enum Kind {
    CONTAMINANT("contaminants/", "contaminant", Contaminant.class),
    SURFACE("surfaces/", "surface", Surface.class),
    METHOD("methods/", "method", Method.class),
    AGENT("agents/", "agent", Agent.class),
    TOOL("tools/", "tool", Tool.class),
    FAMILY("families.yaml", "family", Family.class),
    SUBSTANCE("substances/", "substance", Substance.class),
    SOLUTE("spheres/", "sphere", Solute.class),
    GATE("gates.yaml", "gate", Gate.class),
    CIRCUMSTANCE("circumstances.yaml", "circumstance", Circumstance.class),
    OBSERVATION("observations.yaml", "observation", Observation.class),
    EVIDENCE_STRENGTH("evidence-strengths.yaml", "evidence-strength", EvidenceStrength.class),
    SIGN_GROUP("words/sign-groups.yaml", "sign-group", SignGroup.class),
    CHECK("checks.yaml", "inspection", Inspection.class),
    FREQUENCY("frequencies.yaml", "frequency", Frequency.class),
    SUSCEPTIBILITY("susceptibility.yaml", "susceptibility", Susceptibility.class),
    EXPOSURE("exposure.yaml", "exposure", Exposure.class),
    GLOVES("gloves.yaml", "gloves", Permeation.class),
    RESPIRATOR("respirators.yaml", "respirator", Respirator.class),
    HAZARD("hazard-statements.yaml", "hazard-statement", HazardStatement.class),
    /** What a shop lays over the knowledge; it lies in a folder of its own. */
    OVERLAY("(overlay)", "product", OverlayFile.class),
    SOURCE("sources.yaml", "source", Source.class),
    WAY("ways.yaml", "way", Way.class),
    COMPONENT("components.yaml", "component", Component.class),
    COMPONENT_CLASS("component-classes.yaml", "component-class", ComponentClass.class),
    REACH("reach.yaml", "reach", Reach.class),
    BOND_CLASS("words/bond-classes.yaml", "bond-class", BondClass.class),
    WASTE("words/waste.yaml", "word", Word.class),
    LEVEL("words/levels.yaml", "word", Word.class),
    PPE("words/ppe.yaml", "protective", Protective.class),
    NOT_FOLLOWED("words/not-followed.yaml", "word", Word.class),
    STEP("words/steps.yaml", "word", Word.class),
    DONE("words/done.yaml", "list-word", ListWord.class),
    PLACE("words/places.yaml", "place", Place.class),
    PRIOR_DAMAGE("words/prior-damage.yaml", "prior-damage", PriorDamage.class),
    FINISH_PROTECTION("words/finish-protection.yaml", "finish-protection", FinishProtection.class),
    SOILING("words/soiling.yaml", "list-word", ListWord.class),
    COLOUR("words/colours.yaml", "list-word", ListWord.class),
    SUN("words/sun.yaml", "list-word", ListWord.class),
    OUTCOME("words/outcomes.yaml", "list-word", ListWord.class),
    STOP_SIGN("words/stop-signs.yaml", "list-word", ListWord.class),
    EVERYDAY_PRODUCT("words/everyday-products.yaml", "everyday-product", EverydayProduct.class),
    PRODUCT_FUNCTION("words/product-functions.yaml", "product-function", ProductFunction.class),
    SHEET_PART("words/sheet-parts.yaml", "sheet-part", SheetPart.class),
    TELLING_PART("words/telling-parts.yaml", "telling-part", TellingPart.class),
    SENSITISER("words/sensitisers.yaml", "sensitiser", Sensitiser.class),
    WIDE_DEPOSIT("words/wide-deposits.yaml", "wide-word", WideWord.class),
    WIDE_SURFACE("words/wide-surfaces.yaml", "wide-word", WideWord.class),
    WIDE_METHOD("words/wide-methods.yaml", "wide-word", WideWord.class),
    IDLE_WORD("words/idle-words.yaml", "idle-word", IdleWord.class),
    SPELLING("words/spellings.yaml", "spelling", Spelling.class),
    FACT("facts.yaml", "fact", AskedFact.class),
    TIME_WORD("words/time-words.yaml", "time-word", TimeWord.class),
    WAIVER("waivers.yaml", "waiver", Waiver.class),
    MECHANISM("mechanisms.yaml", "mechanism", MechanismWord.class),
    DECISION("decisions.yaml", "decision", Decision.class),
    ASSUMPTION("assumptions.yaml", "assumption", Assumption.class);

    public final String place;
    public final String schema;
    public final Class<?> type;

    Kind(String place, String schema, Class<?> type) {
        this.place = place;
        this.schema = schema;
        this.type = type;
    }

    /** Whether each entry has a file of its own, named as its id. */
    public boolean isOnePerFile() {
        return this == CONTAMINANT || this == SURFACE;
    }

    /** Whether the program asks for its entries by id, so that it can do without none of them. */
    public boolean isAskedFor() {
        return this == DECISION || this == ASSUMPTION || this == MECHANISM;
    }

    public boolean holds(String file) {
        return place.endsWith("/") ? file.startsWith(place) && file.endsWith(".yaml") : file.equals(place);
    }

    public static Stream<Kind> all() {
        return Stream.of(values());
    }
}
