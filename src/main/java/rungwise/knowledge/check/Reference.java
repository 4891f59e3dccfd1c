package rungwise.knowledge.check;

import java.util.List;
import java.util.stream.Stream;
import rungwise.knowledge.draft.Entry;
import rungwise.knowledge.draft.Kind;
import tools.jackson.databind.JsonNode;

/**
 * A field that names entries of another kind.
 *
 * @param path fields from the entry inwards; {@code *} stands for every element or value, {@code ~} for every key
 */
record Reference(Kind from, String path, Kind to) {
    static final List<Reference> ALL = Stream.concat(
            Stream.of(
                    new Reference(Kind.METHOD, "agent", Kind.AGENT),
                    new Reference(Kind.METHOD, "tool", Kind.TOOL),
                    new Reference(Kind.METHOD, "family", Kind.FAMILY),
                    new Reference(Kind.METHOD, "gates/*", Kind.GATE),
                    new Reference(Kind.METHOD, "afterwards/*", Kind.METHOD),
                    new Reference(Kind.METHOD, "correction/*", Kind.METHOD),
                    new Reference(Kind.METHOD, "waste", Kind.WASTE),
                    new Reference(Kind.METHOD, "level", Kind.LEVEL),
                    new Reference(Kind.METHOD, "ppe/*", Kind.PPE),
                    new Reference(Kind.METHOD, "chances/~", Kind.BOND_CLASS),
                    new Reference(Kind.METHOD, "softens/*", Kind.BOND_CLASS),
                    new Reference(Kind.METHOD, "role", Kind.REACH),
                    new Reference(Kind.METHOD, "works/*", Kind.WAY),
                    new Reference(Kind.METHOD, "worksLess/*", Kind.WAY),
                    new Reference(Kind.COMPONENT, "kind", Kind.COMPONENT_CLASS),
                    new Reference(Kind.COMPONENT, "takes/*/*", Kind.WAY),
                    new Reference(Kind.COMPONENT_CLASS, "ways/*", Kind.WAY),
                    new Reference(Kind.CONTAMINANT, "madeOf/*/*/component", Kind.COMPONENT),
                    new Reference(Kind.AGENT, "family", Kind.FAMILY),
                    new Reference(Kind.AGENT, "ppe/*", Kind.PPE),
                    new Reference(Kind.AGENT, "composition/~", Kind.SUBSTANCE),
                    new Reference(Kind.AGENT, "dissolved/~", Kind.EXPOSURE),
                    new Reference(Kind.SUBSTANCE, "evaporatesAs/~", Kind.SUBSTANCE),
                    new Reference(Kind.SOLUTE, "spheres/*/sources/*", Kind.SOURCE),
                    new Reference(Kind.BOND_CLASS, "dissolvesLike", Kind.SOLUTE),
                    new Reference(Kind.CONTAMINANT, "dissolvesLike", Kind.SOLUTE),
                    new Reference(Kind.SURFACE, "polymers/*/sphere", Kind.SOLUTE),
                    new Reference(Kind.TOOL, "ppe/*", Kind.PPE),
                    new Reference(Kind.HAZARD, "ppe/*", Kind.PPE),
                    new Reference(Kind.CONTAMINANT, "bond/*", Kind.BOND_CLASS),
                    new Reference(Kind.CONTAMINANT, "ppe/*", Kind.PPE),
                    new Reference(Kind.CONTAMINANT, "emergency/method", Kind.METHOD),
                    new Reference(Kind.CONTAMINANT, "refersTo", Kind.METHOD),
                    new Reference(Kind.CONTAMINANT, "correction/*", Kind.METHOD),
                    new Reference(Kind.CONTAMINANT, "leaves", Kind.CONTAMINANT),
                    new Reference(Kind.CONTAMINANT, "usualSurfaces/*", Kind.SURFACE),
                    new Reference(Kind.CONTAMINANT, "remarks/*/methods/*", Kind.METHOD),
                    new Reference(Kind.CONTAMINANT, "remarks/*/sources/*", Kind.SOURCE),
                    new Reference(Kind.SUSCEPTIBILITY, "surfaces/*", Kind.SURFACE),
                    new Reference(Kind.EXPOSURE, "limits/*/sources/*", Kind.SOURCE),
                    new Reference(Kind.EXPOSURE, "vapour/sources/*", Kind.SOURCE),
                    new Reference(Kind.EXPOSURE, "dissociation/sources/*", Kind.SOURCE),
                    new Reference(Kind.EXPOSURE, "henry/sources/*", Kind.SOURCE),
                    new Reference(Kind.GLOVES, "charts/*/sources/*", Kind.SOURCE),
                    new Reference(Kind.RESPIRATOR, "ppe", Kind.PPE),
                    new Reference(Kind.PPE, "items/*", Kind.PPE),
                    new Reference(Kind.PPE, "covers/*", Kind.PPE),
                    new Reference(Kind.SURFACE, "wayOut", Kind.METHOD),
                    new Reference(Kind.SURFACE, "solvents/*/sources/*", Kind.SOURCE),
                    new Reference(Kind.OBSERVATION, "pointsTo/*", Kind.CONTAMINANT),
                    new Reference(Kind.OBSERVATION, "against/*", Kind.CONTAMINANT),
                    new Reference(Kind.OBSERVATION, "fits/*", Kind.CONTAMINANT),
                    new Reference(Kind.OBSERVATION, "treatAs", Kind.SURFACE),
                    new Reference(Kind.OBSERVATION, "group", Kind.SIGN_GROUP),
                    new Reference(Kind.OBSERVATION, "seenBy", Kind.CHECK),
                    new Reference(Kind.OBSERVATION, "strength", Kind.EVIDENCE_STRENGTH),
                    new Reference(Kind.OBSERVATION, "ofTen/*/deposit", Kind.CONTAMINANT),
                    new Reference(Kind.OBSERVATION, "implies/*", Kind.OBSERVATION),
                    new Reference(Kind.METHOD, "doneBy", Kind.DONE),
                    new Reference(Kind.GATE, "opens/done", Kind.DONE),
                    new Reference(Kind.PLACE, "sign", Kind.OBSERVATION),
                    new Reference(Kind.FACT, "gate", Kind.GATE),
                    new Reference(Kind.FACT, "replies/*/gives/observations/*", Kind.OBSERVATION),
                    new Reference(Kind.FACT, "replies/*/gives/circumstances/*", Kind.CIRCUMSTANCE),
                    new Reference(Kind.PRIOR_DAMAGE, "treatAs", Kind.SURFACE),
                    new Reference(Kind.FINISH_PROTECTION, "treatAs", Kind.SURFACE),
                    new Reference(Kind.EVERYDAY_PRODUCT, "family", Kind.FAMILY),
                    new Reference(Kind.PRODUCT_FUNCTION, "readings/*/method", Kind.METHOD),
                    new Reference(Kind.PRODUCT_FUNCTION, "readings/*/technique", Kind.METHOD),
                    new Reference(Kind.PRODUCT_FUNCTION, "readings/*/asStrictAs/*", Kind.METHOD),
                    new Reference(Kind.TELLING_PART, "method", Kind.METHOD),
                    new Reference(Kind.TELLING_PART, "parts/*", Kind.EXPOSURE),
                    new Reference(Kind.SHEET_PART, "sensitisers/*", Kind.SENSITISER),
                    new Reference(Kind.SENSITISER, "families/*", Kind.FAMILY),
                    new Reference(Kind.WIDE_DEPOSIT, "mayBe/*", Kind.CONTAMINANT),
                    new Reference(Kind.WIDE_SURFACE, "mayBe/*", Kind.SURFACE),
                    new Reference(Kind.WIDE_METHOD, "mayBe/*", Kind.METHOD),
                    new Reference(Kind.CHECK, "method", Kind.METHOD),
                    new Reference(Kind.FREQUENCY, "contaminants/*", Kind.CONTAMINANT)),
            Kind.all().map(kind -> new Reference(kind, "sources/*", Kind.SOURCE))).toList();

    /** The ids that an entry names here; "none" says openly that there is nothing. */
    Stream<String> namedBy(Entry entry) {
        Stream<JsonNode> nodes = Stream.of(entry.node());
        for (String step : path.split("/")) {
            if (step.equals("~")) {
                return nodes.flatMap(n -> n.propertyNames().stream());
            }
            nodes = step.equals("*") ? nodes.flatMap(n -> n.values().stream()) : nodes.map(n -> n.path(step));
        }
        return nodes.filter(JsonNode::isString).map(JsonNode::stringValue)
                .filter(id -> !(id.equals("none") && (to == Kind.AGENT || to == Kind.TOOL)));
    }

    String field() {
        return path.replace("/*", "").replace("/~", "");
    }
}
