package rungwise.knowledge.surface;

/** What kind of place a part of the vehicle is: what water does there, and what is close by. */
public enum Zone {
    /** Water runs off it. */
    OUTSIDE,
    /** Wheels, and what turns or brakes behind them. */
    WHEELS,
    /** A sensor or camera looks, listens or measures through it. */
    SENSOR,
    /** Plugs, intake and control units stand open to a jet. */
    ENGINE_BAY,
    /** Charge port, orange cables, traction battery. */
    HIGH_VOLTAGE,
    /** Water has nowhere to run. */
    INSIDE
}
