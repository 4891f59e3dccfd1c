package rungwise.knowledge;

/** What a surface is made as; decides who takes over when the ladder ends. */
public enum SurfaceKind {
    PAINT, FILM, LENS, GLASS, METAL, WHEEL, PLASTIC, RUBBER, SENSOR
}
