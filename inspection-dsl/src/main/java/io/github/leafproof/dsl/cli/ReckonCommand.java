package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.reckon.FunctionList;
import io.github.leafproof.dsl.reckon.Reckoned;
import io.github.leafproof.dsl.reckon.Reckoner;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Read;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The bench calculator. */
@Command(
        name = "reckon",
        description = {
            "Reckons what an expression of the language comes to: units, uncertainties, dates,",
            "conditions, and every calculation of the trade. Without one it reads lines, and",
            "answers each; lash = 4.5 thou gives a name to a value for the lines below."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "Examples:",
            "  leafproof reckon 4.5 thou in mm",
            "  leafproof reckon \"piston_travel(40 deg, 24.8 mm, 44 mm)\"",
            "  leafproof reckon --card cards/quillan-15.json \"engine.lash_max in thou\"",
            "  leafproof reckon --list leak",
            "",
            "Put it in quotes when it holds ( ) * < > or \".",
            "",
            "Exit codes: 0 all was answered, 2 bad input, or a line has no answer, 70 a bug of ours."
        })
final class ReckonCommand implements Callable<Integer> {

    @Parameters(arity = "0..*", paramLabel = "EXPRESSION", description = "What to reckon; several words make one.")
    private List<String> words = List.of();

    @Option(
            names = "--list",
            description = "List the functions instead; with a word, all about those whose name or meaning holds it.")
    private boolean list;

    @Option(names = "--card", paramLabel = "F", description = "The engine card that engine.stroke and the like are of.")
    private @Nullable Path card;

    @Option(
            names = "--variant",
            paramLabel = "NAME",
            description = "Which of the card's variants is meant; unknown if not given.")
    private @Nullable String variant;

    @Mixin
    private UnitsOption shown = new UnitsOption();

    @Spec
    private @Nullable CommandSpec spec;

    private final Console console;

    ReckonCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        return (list ? listed() : reckoned()).code();
    }

    private Exit listed() {
        if (words.isEmpty()) {
            console.print(FunctionList.all());
            return Exit.GOOD;
        }
        String sought = String.join(" ", words);
        Optional<String> about = FunctionList.about(sought);
        about.ifPresent(console::print);
        if (about.isEmpty()) {
            console.err()
                    .print("leafproof: no function is about " + sought + "\n   help: --list alone lists them all\n");
        }
        return about.isPresent() ? Exit.GOOD : Exit.BAD_INPUT;
    }

    private Exit reckoned() {
        words.stream().filter(word -> word.startsWith("--")).findFirst().ifPresent(this::unknownOption);
        Optional<Reckoner> reckoner = reckoner();
        if (reckoner.isEmpty()) {
            return Exit.BAD_INPUT;
        }
        Lines lines = new Lines(reckoner.get());
        if (words.isEmpty()) {
            readTo(lines);
        } else {
            lines.take(SourceText.of("expression", String.join(" ", words)));
        }
        return lines.allAnswered ? Exit.GOOD : Exit.BAD_INPUT;
    }

    private void unknownOption(String word) {
        throw new ParameterException(Objects.requireNonNull(spec).commandLine(), "Unknown option: '" + word + "'");
    }

    private Optional<Reckoner> reckoner() {
        Reckoner plain = Reckoner.in(shown.units());
        if (card == null) {
            return Optional.of(plain);
        }
        Read<Document<EngineCard>> read = CardFile.read(card);
        console.complainOfFiles(read.problems());
        return read.value().map(document -> plain.with(document.content(), variant));
    }

    private void readTo(Lines lines) {
        BufferedReader in = new BufferedReader(new InputStreamReader(console.in(), StandardCharsets.UTF_8));
        try {
            int number = 1;
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                if (!line.isBlank() && !line.strip().startsWith("//")) {
                    lines.take(SourceText.fromLine(number, "standard input", line));
                }
                number++;
            }
        } catch (IOException unreadable) {
            lines.allAnswered = false;
            console.once("leafproof: standard input cannot be read\n   help: hand lines over with | or <\n");
        }
    }

    /** Answers one line after the other; a name given in one is known in the next. */
    private final class Lines {
        private Reckoner reckoner;
        private boolean allAnswered = true;

        Lines(Reckoner reckoner) {
            this.reckoner = reckoner;
        }

        private String place(SourceText line) {
            return words.isEmpty() ? line.name() + ":" + line.at(0).line() : "leafproof";
        }

        void take(SourceText line) {
            Reckoned reckoned = reckoner.reckon(line);
            if (reckoned instanceof Reckoned.Answer answer) {
                reckoner = answer.after();
                console.print(answer.words() + "\n");
                console.out().flush();
                return;
            }
            allAnswered = false;
            if (reckoned instanceof Reckoned.Refused refused) {
                console.complain(refused.diagnostics());
            } else if (reckoned instanceof Reckoned.Unanswered unanswered) {
                console.err().print(place(line) + ": " + unanswered.why() + "\n");
            }
            console.err().flush();
        }
    }
}
