package io.github.leafproof.inspection.verdict;

/** On which side of its limits a value lies, when it lies outside. */
public enum Side {
    /** Under the lower limit. */
    LOW,
    /** Over the upper limit. */
    HIGH,
    /** Within, or nobody knows. */
    NONE
}
