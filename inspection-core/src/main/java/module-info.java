/** What an inspection is made of: quantities, gauges, the engine and its parts, verdicts, clearances and records. */
module io.github.leafproof.inspection {
    exports io.github.leafproof.inspection.clearance;
    exports io.github.leafproof.inspection.engine;
    exports io.github.leafproof.inspection.gauge;
    exports io.github.leafproof.inspection.mechanism;
    exports io.github.leafproof.inspection.quantity;
    exports io.github.leafproof.inspection.record;
    exports io.github.leafproof.inspection.verdict;
    // Annotations for readers and for the compiler; nothing needs them at run time.
    requires static transitive org.jspecify;
    requires org.apache.commons.numbers.fraction;
    requires org.apache.commons.statistics.distribution;
    requires tools.jackson.core;
}
