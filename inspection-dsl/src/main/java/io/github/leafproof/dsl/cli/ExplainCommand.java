package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.report.Explaining;
import io.github.leafproof.dsl.report.Explanation;
import io.github.leafproof.dsl.report.ExplanationJson;
import io.github.leafproof.dsl.report.ExplanationText;
import io.github.leafproof.inspection.quantity.Spelling;
import io.github.leafproof.inspection.record.Read;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Explains one check: what it rests on, and with a sheet why it came out as it did. */
@Command(
        name = "explain",
        description = {
            "Explains a check: what it rests on and how it is decided.",
            "With a sheet: why its verdict is what it is, from the entries to the last step."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "Example:",
            "  leafproof explain first_look.inspection lash_within[intake] --sheet sheets/0412-trap.json",
            "",
            "Exit codes: 0 explained, whatever the verdict is, 2 bad input, 70 a bug of ours."
        })
final class ExplainCommand implements Callable<Integer> {

    private static final int MOST_NAMED = 40;

    @Parameters(index = "0", paramLabel = "PROCEDURE", description = "The procedure's file, ending in .inspection.")
    private Path procedure = Path.of("");

    @Parameters(index = "1", paramLabel = "CHECK", description = "The check's name, such as lash_within[intake].")
    private String check = "";

    @Option(
            names = "--sheet",
            paramLabel = "F",
            description = "The job sheet of the engine whose verdict is explained.")
    private @Nullable Path sheet;

    @Option(names = "--json", description = "Explain on standard output as JSON, for other programs.")
    private boolean json;

    @Mixin
    private EngineOptions engine = new EngineOptions();

    @Mixin
    private RootOption root = new RootOption();

    private final Console console;

    ExplainCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (engine.lackTheir(sheet, console)) {
            return Exit.BAD_INPUT.code();
        }
        Compiled compiled = root.read(procedure);
        console.complain(compiled.diagnostics());
        Optional<Node.Check> asked = compiled.procedure().flatMap(read -> find(read.graph()));
        Optional<Evidence.Files> files = sheet == null ? Optional.empty() : engine.read(sheet, List.of(), console);
        if (asked.isEmpty() || (sheet != null && files.isEmpty())) {
            return Exit.BAD_INPUT.code();
        }
        Optional<Explanation> explanation = files.isEmpty()
                ? compiled.procedure().map(read -> Explaining.of(read.graph(), asked.get()))
                : judged(compiled.orElseThrow(), files.get()).map(judged -> Explaining.of(judged, asked.get()));
        explanation.ifPresent(found ->
                console.print(json ? ExplanationJson.write(found) : ExplanationText.of(found, console.colour())));
        return (explanation.isPresent() ? Exit.GOOD : Exit.BAD_INPUT).code();
    }

    private Optional<Judgement> judged(Procedure read, Evidence.Files files) {
        Read<Judgement> judged = read.judgement(files.card(), files.tray(), files.sheet(), engine.units());
        console.complainOfFiles(judged.problems());
        return judged.value();
    }

    private Optional<Node.Check> find(CheckGraph graph) {
        Optional<Node> node = graph.node(check);
        if (node.orElse(null) instanceof Node.Check found) {
            return Optional.of(found);
        }
        List<String> names = graph.checks().stream().map(Node.Check::name).toList();
        console.err()
                .print("leafproof: " + graph.identity().name() + " has no check called " + check
                        + node.map(other -> "; " + what(graph, other)).orElse("") + "\n   help: " + meant(names)
                        + "\n");
        return Optional.empty();
    }

    /** Somebody may have meant what a check rests on. */
    private static String what(CheckGraph graph, Node other) {
        if (other instanceof Node.Observation observation) {
            String checks = graph.affectedBy(observation).checks().stream()
                    .map(Node.Check::name)
                    .limit(MOST_NAMED)
                    .collect(Collectors.joining(", "));
            return "that is an observation" + (checks.isEmpty() ? "" : ", and it bears on " + checks);
        }
        return other instanceof Node.Fact ? "that is a fact of the engine" : "that is a computed value";
    }

    private String meant(List<String> names) {
        List<String> ofLoop =
                names.stream().filter(name -> name.startsWith(check + "[")).toList();
        if (!ofLoop.isEmpty()) {
            return "did you mean "
                    + String.join(" or ", ofLoop.stream().limit(MOST_NAMED).toList()) + "?";
        }
        String more = names.size() > MOST_NAMED ? ", and " + (names.size() - MOST_NAMED) + " more" : "";
        return Spelling.nearest(check, names)
                .map(near -> "did you mean " + near + "?")
                .orElse("its checks are "
                        + String.join(", ", names.stream().limit(MOST_NAMED).toList()) + more);
    }
}
