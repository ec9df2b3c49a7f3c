package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.diagnostic.Lesson;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Explains kinds of mistakes. */
@Command(
        name = "why",
        description = "Explains a mistake: why it is refused, an example, and how it is mended.",
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "Example:",
            "  leafproof why LP201",
            "",
            "Exit codes: 0 explained, 2 there is no such mistake, 70 a bug of ours."
        })
final class WhyCommand implements Callable<Integer> {

    @Parameters(arity = "1..*", paramLabel = "CODE", description = "The mistakes' codes, such as LP201.")
    private List<String> codes = List.of();

    private final Console console;

    WhyCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        List<String> texts = new ArrayList<>();
        boolean known = true;
        for (String code : codes) {
            Optional<Lesson> lesson = Lesson.of(code);
            lesson.map(Lesson::text).ifPresent(texts::add);
            if (lesson.isEmpty()) {
                known = false;
                unknown(code);
            }
        }
        console.print(String.join("\n\n", texts));
        return (known ? Exit.GOOD : Exit.BAD_INPUT).code();
    }

    private void unknown(String code) {
        List<String> all = Lesson.codes();
        console.err().print("leafproof: no mistake has the code " + code + "\n");
        console.err()
                .print("   help: the code stands behind error or warning in a message; they run from " + all.get(0)
                        + " to " + all.get(all.size() - 1) + "\n");
    }
}
