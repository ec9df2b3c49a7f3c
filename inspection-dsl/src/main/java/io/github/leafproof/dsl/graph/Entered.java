package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.record.Given;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What facts and entries say, slot by slot. It never changes; another one with a few entries more shares the rest with it.
 *
 * @param said what is said of each fact and observation, by its slot; null where something is computed
 * @param adjusted how many observations were adjusted
 * @param markedOnly how many rest on a leaf that is known by its marking only
 */
record Entered(Row<Said> said, int adjusted, int markedOnly) {

    /**
     * What is said of one.
     *
     * @param statements the entries for it
     * @param found its value before any adjustment
     * @param left its value as the engine was left
     */
    record Said(List<Evidence.Statement> statements, Value found, Value left) {

        Said {
            statements = List.copyOf(statements);
        }

        boolean isAdjusted() {
            for (Evidence.Statement statement : statements) {
                if (statement.entry().given() instanceof Given.Adjusted) {
                    return true;
                }
            }
            return false;
        }

        /** Whether some leaf that was offered is known by its marking only. */
        boolean isMarkedOnly() {
            return left instanceof Value.Felt felt && felt.neverMeasured();
        }

        /** The value as the engine was left, if every leaf were what is stamped on it. */
        Value ifMeasured() {
            return isMarkedOnly() ? ((Value.Felt) left).asIfMeasured() : left;
        }
    }

    static Draft blank(CheckGraph graph) {
        return new Draft(Row.blank(graph.slots()), 0, 0);
    }

    Draft draft() {
        return new Draft(said.draft(), adjusted, markedOnly);
    }

    /** The same while it is read. */
    static final class Draft {

        private final Row.Draft<Said> said;
        private int adjusted;
        private int markedOnly;

        private Draft(Row.Draft<Said> said, int adjusted, int markedOnly) {
            this.said = said;
            this.adjusted = adjusted;
            this.markedOnly = markedOnly;
        }

        void set(int slot, Said now) {
            Said before = said.get(slot);
            if (before != null) {
                count(before, -1);
            }
            count(now, 1);
            said.set(slot, now);
        }

        private void count(Said one, int by) {
            adjusted += one.isAdjusted() ? by : 0;
            markedOnly += one.isMarkedOnly() ? by : 0;
        }

        @Nullable
        Said get(int slot) {
            return said.get(slot);
        }

        Entered entered() {
            return new Entered(said.row(), adjusted, markedOnly);
        }
    }
}
