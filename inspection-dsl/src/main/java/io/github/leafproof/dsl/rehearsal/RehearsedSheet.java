package io.github.leafproof.dsl.rehearsal;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Declaration.Entered;
import io.github.leafproof.dsl.syntax.Declaration.Step;
import io.github.leafproof.dsl.syntax.Text;
import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.SheetEngine;
import io.github.leafproof.inspection.record.TrialGiven;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The job sheet that a rehearsal amounts to. */
final class RehearsedSheet {

    /** Calibrations do not run out in rehearsals. */
    private static final LocalDate DAY = LocalDate.of(1, 1, 1);

    private final Procedure procedure;

    RehearsedSheet(Procedure procedure) {
        this.procedure = procedure;
    }

    Document<JobSheet> of(Declaration.Rehearse rehearse) {
        String variant = null;
        String serial = null;
        Map<String, String> places = new HashMap<>();
        List<Entry> entries = new ArrayList<>();
        for (Step step : rehearse.steps()) {
            if (step instanceof Step.Engine engine) {
                if (engine.variant() != null) {
                    variant = engine.variant().plain();
                    places.put("$.engine.variant", place(engine.variant().span()));
                }
                serial = engine.serial() == null ? null : engine.serial().plain();
            } else if (step instanceof Step.Enter enter) {
                entries.add(entry(enter));
            }
        }
        CheckGraph.Identity identity = procedure.graph().identity();
        JobSheet sheet = new JobSheet(
                rehearse.title().plain(),
                identity.name(),
                identity.revision(),
                null,
                null,
                new SheetEngine(serial, null, null, variant),
                DAY,
                null,
                entries);
        return new Document<>(
                sheet, rehearse.span().source().name(), rehearse.span().source().sha256(), places);
    }

    private Entry entry(Step.Enter enter) {
        String place = place(enter.span());
        String name = enter.target().toString();
        return new Entry(name, given(enter.entered(), typeOf(name), place), false, null, null, null, null, place);
    }

    private static String place(Span span) {
        return span.source().at(span.start()).toString();
    }

    private @Nullable Type typeOf(String name) {
        return procedure.graph().node(name).orElse(null) instanceof Node.Observation observation
                ? observation.type()
                : null;
    }

    private static Given given(Entered entered, @Nullable Type type, String place) {
        if (entered instanceof Entered.Amount amount) {
            return amount.unit().isEmpty()
                    ? new Given.Count(new BigDecimal(amount.number()))
                    : new Given.Words(amount.number() + " " + amount.unit());
        }
        if (entered instanceof Entered.Word word) {
            boolean flag = type instanceof Type.YesNo
                    && (word.word().equals("yes") || word.word().equals("no"));
            return flag ? new Given.Flag(word.word().equals("yes")) : new Given.Words(word.word());
        }
        if (entered instanceof Entered.Quoted quoted) {
            return new Given.Words(quoted.text().plain());
        }
        if (entered instanceof Entered.Items items) {
            return new Given.Items(items.items().stream().map(Text::plain).toList());
        }
        if (entered instanceof Entered.Readings readings) {
            return new Given.Series(readings.readings().stream()
                    .map(reading -> (reading.number() + " " + reading.unit()).strip())
                    .toList());
        }
        if (entered instanceof Entered.Cannot cannot) {
            return new Given.Cannot(cannot.why().plain());
        }
        return new Given.Trials(((Entered.Trials) entered)
                .trials().stream().map(trial -> trial(trial, place)).toList());
    }

    private static TrialGiven trial(Declaration.Trial trial, String place) {
        List<String> leaves = Arrays.stream(trial.leaves().plain().split("\\+"))
                .map(String::strip)
                .toList();
        return new TrialGiven(leaves, TrialResult.valueOf(trial.result().text().toUpperCase(Locale.ROOT)), place);
    }
}
