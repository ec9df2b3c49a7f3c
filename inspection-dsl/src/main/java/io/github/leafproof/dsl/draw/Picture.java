package io.github.leafproof.dsl.draw;

import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a picture of a procedure shows, before anybody says where on the sheet.
 *
 * @param title the procedure's title
 * @param subtitle its name and revision, and the engine where one was judged
 * @param lanes the stages, in the order of the procedure
 * @param links what feeds what
 */
public record Picture(String title, String subtitle, List<Lane> lanes, List<Link> links) {

    public Picture {
        lanes = List.copyOf(lanes);
        links = List.copyOf(links);
    }

    /** The procedure, whatever the engine. */
    public static Picture of(CheckGraph graph) {
        return new PictureMaking(graph, null).picture();
    }

    /** The procedure with what was entered for one engine, and what came of it. */
    public static Picture of(Judgement judgement) {
        return new PictureMaking(judgement.graph(), judgement).picture();
    }

    /** Whether it shows what came of an engine. */
    boolean isJudged() {
        return boxes().stream().anyMatch(box -> box.outcome() != null);
    }

    /** All boxes, in the order of their lanes. */
    List<Box> boxes() {
        return lanes.stream().flatMap(lane -> lane.boxes().stream()).toList();
    }

    /** A stage; its title is empty for what stands outside of any. */
    public record Lane(String title, List<Box> boxes) {
        public Lane {
            boxes = List.copyOf(boxes);
        }
    }

    /** What a box stands for. */
    public enum Kind {
        OBSERVATION,
        VALUE,
        CHECK,
        /** A check that others wait for. */
        GATE;

        boolean isJudgement() {
            return this == CHECK || this == GATE;
        }
    }

    /**
     * One thing.
     *
     * @param id a short name that is good in any drawing language: {@code c12}
     * @param depth for a value how many values it rests on, one upon the other; 0 for everything else
     * @param title what a person calls it
     * @param notes more of it, a line each
     * @param outcome what came of it; null for what is no check, and where no engine was judged
     * @param hint what else there is to say, for those who ask
     */
    public record Box(
            String id,
            Kind kind,
            int depth,
            String title,
            List<String> notes,
            @Nullable Outcome outcome,
            String hint) {
        public Box {
            notes = List.copyOf(notes);
        }
    }

    /** How one thing bears on another. */
    public enum Tie {
        /** It is read. */
        FEEDS,
        /** It decides whether the other applies, or is asked for. */
        DECIDES,
        /** It has to let through first. */
        GATES
    }

    /** One thing bears on another; both are ids of boxes. */
    public record Link(String from, String to, Tie tie) {}
}
