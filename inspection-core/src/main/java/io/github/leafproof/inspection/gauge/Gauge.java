package io.github.leafproof.inspection.gauge;

/** Something in the tray that an observation is made with. */
public sealed interface Gauge permits FeelSet, ReadingInstrument, Counter {

    /** What the shop calls it; a procedure asks for it by this name. */
    String name();

    /** The kind as files write it: {@code leaf set}, {@code pin set}, {@code reading} or {@code counter}. */
    String kind();
}
