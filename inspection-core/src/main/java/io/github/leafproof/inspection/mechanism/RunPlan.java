package io.github.leafproof.inspection.mechanism;

import io.github.leafproof.inspection.mechanism.Answer.Known;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;

/**
 * How an engine is run in. The plans here are common practice, of clubs and shops that disagree; the engine's own
 * instructions come first.
 *
 * @param name what the plan is called
 * @param build the piston that it is meant for; a plan for one build harms the other
 * @param blocks runs of a kind, in order
 * @param remark what belongs to the plan as a whole
 */
public record RunPlan(String name, PistonBuild build, List<Block> blocks, String remark) {

    /** What seals the piston, which decides how it is run in. */
    public enum PistonBuild {
        /** A ring: it is to be heated gradually, and rich. */
        RINGED,
        /** A lapped piston in a bore that narrows towards the top: it needs heat early, and a ringed plan harms it. */
        RINGLESS
    }

    /**
     * Runs of a kind, with full cooling after each.
     *
     * @param runs how many
     * @param time how long each
     * @param lowest the lowest speed
     * @param highest the highest speed
     * @param how in words
     */
    public record Block(int runs, Quantity time, Quantity lowest, Quantity highest, String how) {
        private static Block of(int runs, String time, String lowest, String highest, String how) {
            return new Block(runs, Quantity.parse(time), Quantity.parse(lowest), Quantity.parse(highest), how);
        }
    }

    public RunPlan {
        blocks = List.copyOf(blocks);
        if (blocks.isEmpty() || blocks.stream().anyMatch(block -> block.runs() < 1)) {
            throw new IllegalArgumentException("a plan has runs");
        }
    }

    /** The plans there are. */
    public static List<RunPlan> all() {
        return List.of(
                new RunPlan(
                        "shop, ringed",
                        PistonBuild.RINGED,
                        List.of(
                                Block.of(5, "2 min", "4000 rpm", "6000 rpm", "rich"),
                                Block.of(5, "3 min", "6000 rpm", "8000 rpm", "rich"),
                                // Nobody states a speed for "fast"; run-in is spoken of as rising to 8000 rpm (common
                                // practice).
                                Block.of(3, "5 min", "6000 rpm", "8000 rpm", "fast and rich, with peaks of 10 s")),
                        "check lash again when cold; then fly rich"),
                new RunPlan(
                        "heat cycles, ringed",
                        PistonBuild.RINGED,
                        List.of(Block.of(5, "3 min", "4000 rpm", "8000 rpm", "rich, to about 88 °C at the head")),
                        "from practice with cars"));
    }

    /** Those for a build; none for a ringless piston, for which nobody wrote one down: its maker's instructions count. */
    public static List<RunPlan> suiting(PistonBuild build) {
        return all().stream().filter(plan -> plan.build() == build).toList();
    }

    /** How long the engine runs in all. */
    public Estimate runningTime() {
        return blocks.stream()
                .map(block -> Estimate.exact(block.time()).scaledBy(block.runs()))
                .reduce(Estimate::plus)
                .orElseThrow();
    }

    /** How long the plan takes by the clock, when each full cooling takes so long. */
    public Answer clockTime(Estimate cooling) {
        Estimate none = Estimate.exact(0, Dimension.TIME);
        List<Answer> parts = new ArrayList<>();
        for (Block block : blocks) {
            parts.add(Tuning.PLAN_TIME.of(runs(block), Estimate.exact(block.time()), cooling));
        }
        return sum(parts, none);
    }

    /** How much fuel it takes, at so much in a minute. */
    public Answer fuel(Estimate flow) {
        List<Answer> parts = new ArrayList<>();
        blocks.forEach(block -> parts.add(Tuning.PLAN_FUEL.of(runs(block), Estimate.exact(block.time()), flow)));
        return sum(parts, Estimate.exact(0, Dimension.VOLUME));
    }

    private static Estimate runs(Block block) {
        return Estimate.exact(block.runs(), Dimension.RATIO);
    }

    private static Answer sum(List<Answer> parts, Estimate none) {
        for (Answer part : parts) {
            if (part instanceof Answer.Refusal) {
                return part;
            }
        }
        return new Known(parts.stream().map(Answer::known).reduce(none, Estimate::plus));
    }
}
