package io.github.leafproof.dsl.cli;

import java.nio.file.Path;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where the results of rehearsals go, beside the terminal. */
final class RehearsalOutputs {

    @Option(names = "--json", description = "Tell what came on standard output as JSON, for other programs.")
    private boolean json;

    @Option(
            names = "--junit-xml",
            paramLabel = "F",
            description = "Write what came to this file as well, in the XML that CI servers read test results in.")
    private @Nullable Path junitXml;

    boolean json() {
        return json;
    }

    /** Whether the file would be written over one that was read; says so where it would. */
    boolean overwrite(Stream<Path> inputs, Console console) {
        Target target = Target.of(junitXml, "--junit-xml", "results");
        return target != null && inputs.anyMatch(input -> target.overwrites(input, console));
    }

    /** Writes the file that was asked for; says so where it cannot be written. */
    boolean wroteXml(Supplier<String> xml, Console console) {
        return junitXml == null || console.wrote(junitXml, xml.get());
    }
}
