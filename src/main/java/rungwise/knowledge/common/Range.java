package rungwise.knowledge.common;

/** A closed range of a quantity; the unit stands in the name of the field that holds it. */
public record Range(double from, double to) {
    public Range {
        if (from > to) {
            throw new IllegalArgumentException("range from " + from + " to " + to + " runs backwards");
        }
    }

    public boolean contains(double value) {
        return value >= from && value <= to;
    }

    /** Whether any part of the other range lies in this one. */
    public boolean meets(Range other) {
        return other.from <= to && other.to >= from;
    }

    public boolean contains(Range other) {
        return other.from >= from && other.to <= to;
    }

    public double middle() {
        return (from + to) / 2;
    }

    @Override
    public String toString() {
        return from == to ? Figures.text(from) : Figures.text(from) + "–" + Figures.text(to);
    }
}
