package io.github.leafproof.dsl.edges;

import io.github.leafproof.dsl.layout.Layout;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration.Step;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Edges as rehearsals, laid out as {@code tidy} would, behind what could not be reached and why. */
public final class EdgesText {

    private final Function<SourceText, Path> folderOf;
    private final Path here;

    private EdgesText(Function<SourceText, Path> folderOf, Path here) {
        this.folderOf = folderOf;
        this.here = here;
    }

    /**
     * The text of a file of rehearsals.
     *
     * @param about a line about where it comes from
     * @param folderOf the folder that a file of the procedure lies in, from which its rehearsals name cards and trays
     * @param here the folder that the text will lie in
     */
    public static String of(EdgeReport report, String about, Function<SourceText, Path> folderOf, Path here) {
        EdgesText writer = new EdgesText(folderOf, here);
        StringBuilder text = new StringBuilder("// ").append(about).append("\n");
        for (NotReached none : report.notReached()) {
            text.append("// No edge: ")
                    .append(none.check())
                    .append(", ")
                    .append(oneLine(none.condition()))
                    .append(": ")
                    .append(oneLine(none.why()))
                    .append("\n");
        }
        report.edges().forEach(edge -> writer.write(edge, text));
        return Layout.of(SourceText.of("edges", text.toString()));
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private void write(Edge edge, StringBuilder text) {
        text.append("\nrehearse ").append(Alternatives.quoted(edge.title())).append(" {\n");
        List<String> entries = new ArrayList<>();
        for (Step step : edge.from().written().steps()) {
            if (step instanceof Step.Engine engine) {
                text.append("  engine ").append(path(engine.card().plain(), engine.span()));
                if (engine.variant() != null) {
                    text.append(" variant ")
                            .append(Alternatives.quoted(engine.variant().plain()));
                }
                if (engine.serial() != null) {
                    text.append(" serial ")
                            .append(Alternatives.quoted(engine.serial().plain()));
                }
                text.append("\n");
            } else if (step instanceof Step.Gauges gauges) {
                text.append("  gauges ")
                        .append(path(gauges.tray().plain(), gauges.span()))
                        .append("\n");
            } else if (step instanceof Step.Enter enter) {
                String name = enter.target().toString();
                Span entered = enter.entered().span();
                entries.add(name + " "
                        + (name.equals(edge.observation())
                                ? edge.entered()
                                : entered.source().of(entered)));
            }
        }
        text.append("  enter ").append(String.join(", ", entries)).append("\n");
        text.append("  expect ").append(String.join(", ", edge.expected())).append("\n");
        text.append("  expect release ").append(edge.release()).append("\n}\n");
    }

    /** A file that a rehearsal names from its own folder, as it is named from here. */
    private String path(String written, Span where) {
        Path file =
                folderOf.apply(where.source()).resolve(written).toAbsolutePath().normalize();
        Path from = here.toAbsolutePath().normalize();
        boolean related = file.getRoot() != null && file.getRoot().equals(from.getRoot());
        return Alternatives.quoted(
                (related ? from.relativize(file) : file).toString().replace('\\', '/'));
    }
}
