package io.github.leafproof.dsl.workcard;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judge;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.SheetEngine;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A blank inspection by one procedure, of an engine of one model, with the gauges of one tray.
 *
 * @param procedure which procedure and revision it follows
 * @param card the engine card that its limits come from
 * @param tray the gauges that it names
 * @param variant which variant of the card it is for; null where the card is blank in this, too
 * @param units the units in which numbers are to be written down
 * @param lines what stands on it, from top to bottom
 */
public record WorkCard(
        CheckGraph.Identity procedure,
        Document<EngineCard> card,
        Document<GaugeTray> tray,
        @Nullable String variant,
        UnitSystem units,
        List<Line> lines) {

    public WorkCard {
        lines = List.copyOf(lines);
    }

    /** What stands on a card. */
    public sealed interface Line {}

    /** The work goes on to another stage of the procedure. */
    public record Stage(String title) implements Line {}

    /**
     * A caution, in full before the first step that it holds for; it is referred to by its number while it lasts.
     *
     * @param number from 1
     */
    public record Caution(int number, String words) implements Line {}

    /**
     * The bench is brought to another state before the next step.
     *
     * @param what what is changed, and from what to what: {@code plug: fitted to out}
     * @param how how it is done
     * @param cautions the numbers of the cautions that hold meanwhile
     */
    public record Change(String what, String how, List<Integer> cautions) implements Line {
        public Change {
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * One thing to observe, with room for what is found.
     *
     * @param number from 1, in bench order
     * @param name what the procedure, and a job sheet, call it
     * @param ask what to do or to look at
     * @param type what is entered
     * @param gauge the gauge of the tray to take; null where none is needed
     * @param onlyIf in which case it is asked for at all; empty where always
     * @param notes what the procedure remarks on it
     * @param wanted what is required of it, with the limits of this card
     * @param cautions the numbers of the cautions that hold meanwhile
     */
    public record Step(
            int number,
            String name,
            String ask,
            Type type,
            @Nullable Gauge gauge,
            String onlyIf,
            List<String> notes,
            List<String> wanted,
            List<Integer> cautions)
            implements Line {
        public Step {
            notes = List.copyOf(notes);
            wanted = List.copyOf(wanted);
            cautions = List.copyOf(cautions);
        }
    }

    /** The steps alone. */
    public List<Step> steps() {
        return lines.stream()
                .filter(Step.class::isInstance)
                .map(Step.class::cast)
                .toList();
    }

    /**
     * The card for an engine that nobody has looked at yet. What cannot concern an engine of this model is left out.
     *
     * @param variant which variant of the card is meant; null where that shows only at the bench
     * @return the card, or everything in the two files that does not go together with the procedure
     */
    public static Read<WorkCard> of(
            CheckGraph graph,
            Document<EngineCard> card,
            Document<GaugeTray> tray,
            @Nullable String variant,
            UnitSystem units) {
        CheckGraph.Identity identity = graph.identity();
        JobSheet blank = new JobSheet(
                "blank",
                identity.name(),
                identity.revision(),
                null,
                null,
                new SheetEngine(null, null, null, variant),
                LocalDate.EPOCH,
                null,
                List.of());
        return Evidence.of(graph, card, tray, new Document<>(blank, "the card", ""))
                .map(evidence -> new WorkCard(
                        identity, card, tray, variant, units, new CardLines(Judge.judge(evidence, units)).all()));
    }
}
