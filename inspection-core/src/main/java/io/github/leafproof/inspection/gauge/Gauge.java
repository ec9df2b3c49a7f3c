package io.github.leafproof.inspection.gauge;

import java.util.Set;

/** Something in the tray that an observation is made with. */
public sealed interface Gauge permits FeelSet, ReadingInstrument, Counter {

    /** What the shop calls it; a procedure asks for it by this name. */
    String name();

    /** The kind as files write it: {@code leaf set}, {@code pin set}, {@code reading} or {@code counter}. */
    String kind();

    /**
     * The names of the errors that are the gauge's own and the same every time, as estimates made with it call their
     * sources. They cancel in a difference, however much time has passed between the two readings.
     */
    Set<String> lastingErrors();
}
