package io.github.leafproof.dsl.workcard;

import static io.github.leafproof.dsl.html.Html.div;
import static io.github.leafproof.dsl.html.Html.element;
import static io.github.leafproof.dsl.html.Html.heading;
import static io.github.leafproof.dsl.html.Html.p;
import static io.github.leafproof.dsl.html.Html.sign;
import static io.github.leafproof.dsl.html.Html.span;
import static io.github.leafproof.dsl.html.Html.strong;
import static io.github.leafproof.dsl.html.Html.tick;
import static io.github.leafproof.dsl.html.Html.words;

import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Page;
import io.github.leafproof.dsl.html.Part;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.inspection.engine.EngineCard;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A work card as a page to be printed, A4 or Letter as the printer has it. */
public final class WorkCardPage {

    private static final int SHORT_DIGEST = 12;

    private final WorkCard card;

    private WorkCardPage(WorkCard card) {
        this.card = card;
    }

    /** The page as one HTML file; the same card gives the same text on every machine. */
    public static String of(WorkCard card) {
        return new WorkCardPage(card).page();
    }

    private String page() {
        String title = "Work card: " + card.procedure().title();
        List<Part> steps = new ArrayList<>();
        card.lines().forEach(line -> steps.add(line(line)));
        return new Page(
                        title,
                        CardStyle.of(footLine()),
                        List.of(
                                element("header", head(title)),
                                element("main", div(steps).style("steps"), signature()),
                                element("footer", digests())))
                .text();
    }

    private List<Part> head(String title) {
        EngineCard engine = card.card().content();
        String model =
                engine.model().startsWith(engine.maker()) ? engine.model() : engine.maker() + " " + engine.model();
        return List.of(
                heading(1, title),
                p(
                        words(card.procedure().name() + ", revision "
                                + card.procedure().revision() + ". Engine: "),
                        strong(model),
                        words(card.variant() == null ? "" : ", " + card.variant()),
                        words(". Gauges: " + card.tray().content().name() + ".")),
                div(
                                field("Sheet"),
                                field("Serial"),
                                field("Variant"),
                                field("Condition"),
                                field("Owner"),
                                field("Running time"),
                                field("Date"),
                                field("By"))
                        .style("fields"),
                p("Tick each line when it is done. Where something cannot be observed, say why on the line; a blank is"
                        + " never a zero. The words in small print are the job sheet's. " + Reporting.DEFERENCE));
    }

    private static Element field(String name) {
        return span(words(name), span().style("blank")).style("field");
    }

    private Element line(WorkCard.Line line) {
        if (line instanceof WorkCard.Stage stage) {
            return heading(2, stage.title());
        }
        if (line instanceof WorkCard.Caution caution) {
            return p(sign("\u26A0"), strong(" Caution " + caution.number() + ". "), words(caution.words()))
                    .style("caution");
        }
        if (line instanceof WorkCard.Change change) {
            return div(p(tick(), strong(" " + change.what() + ". "), words(change.how()), lasting(change.cautions())))
                    .style("change");
        }
        return step((WorkCard.Step) line);
    }

    /** Cautions that were told in full above and hold here, too. */
    private static Element lasting(List<Integer> cautions) {
        if (cautions.isEmpty()) {
            return span("");
        }
        String numbers = cautions.stream().map(String::valueOf).collect(Collectors.joining(", "));
        return span(sign(" \u26A0"), words(" caution " + numbers)).style("lasting");
    }

    private Element step(WorkCard.Step step) {
        List<Part> parts = new ArrayList<>();
        parts.add(p(tick(), strong(" " + step.number() + ". "), words(step.ask()), lasting(step.cautions())));
        if (!step.onlyIf().isEmpty()) {
            parts.add(p("only if " + step.onlyIf()).style("small"));
        }
        step.notes().forEach(note -> parts.add(p(note).style("small")));
        parts.addAll(new EntryRoom(step, card.units()).parts());
        String wanted = step.wanted().isEmpty() ? "" : ": wanted " + String.join("; ", step.wanted());
        parts.add(p(step.name() + wanted).style("small"));
        return element("section", parts).style("step").with("aria-label", "step " + step.number());
    }

    private static Element signature() {
        return div(field("Remarks"), field(""), field("Done by"), field("Date"), field("Signature"))
                .style("fields signature keep");
    }

    /** What stands at the foot of every printed page, so that loose sheets find together. */
    private String footLine() {
        return card.procedure().name() + " revision " + card.procedure().revision() + " \u00B7 "
                + shortened(card.procedure().sha256());
    }

    private Part digests() {
        List<String> files = new ArrayList<>();
        files.add("procedure " + card.procedure().name() + " revision "
                + card.procedure().revision() + " " + shortened(card.procedure().sha256()));
        files.add("engine card " + card.card().name() + " "
                + shortened(card.card().sha256()));
        files.add(
                "gauge tray " + card.tray().name() + " " + shortened(card.tray().sha256()));
        return p("Made for these files, with the first digits of the SHA-256 of each: " + String.join(", ", files)
                        + ".")
                .style("small");
    }

    private static String shortened(String sha256) {
        return sha256.substring(0, Math.min(SHORT_DIGEST, sha256.length()));
    }
}
