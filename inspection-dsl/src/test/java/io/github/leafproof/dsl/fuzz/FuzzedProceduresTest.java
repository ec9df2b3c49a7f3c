package io.github.leafproof.dsl.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.code_intelligence.jazzer.junit.DictionaryFile;
import com.code_intelligence.jazzer.junit.FuzzTest;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.layout.Tidiness;
import io.github.leafproof.dsl.parse.Parsed;
import io.github.leafproof.dsl.parse.ProcedureParser;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrayFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a fuzzer makes of procedures and sheets never ends in an exception. A build tries the examples and whatever fuzzing
 * has found so far; DEVELOPERS.md tells how to look further.
 */
class FuzzedProceduresTest {

    private static final Path BENCH = Path.of("..", "examples", "bench");

    private static final CheckGraph FIRST_LOOK =
            Procedure.read(BENCH.resolve("first_look.inspection")).orElseThrow().graph();

    private static final Document<EngineCard> CARD =
            CardFile.read(BENCH.resolve("cards/quillan-15.json")).orElseThrow();

    private static final Document<GaugeTray> TRAY =
            TrayFile.read(BENCH.resolve("trays/bench-one.json")).orElseThrow();

    static Stream<byte[]> procedures() {
        return Tidiness.procedures().map(text -> text.getBytes(UTF_8));
    }

    /** What the examples, the pages and the tests say in several files. */
    static Stream<byte[]> severalFiles() throws IOException {
        Stream<SeveralFiles> bench = Stream.of(SeveralFiles.in(BENCH, "tank.inspection"));
        Stream<SeveralFiles> mistaken;
        try (Stream<Path> folders = Files.list(Path.of("src", "test", "resources", "parts"))) {
            mistaken = folders.sorted().toList().stream().map(folder -> SeveralFiles.in(folder, "input.inspection"));
        }
        return Stream.concat(bench, mistaken).map(files -> files.text().getBytes(UTF_8));
    }

    /** Choices that make a procedure: whatever there is will do, and the same each time. */
    static Stream<byte[]> choices() {
        return procedures().limit(12);
    }

    static Stream<byte[]> sheets() throws IOException {
        try (Stream<Path> sheets = Files.list(BENCH.resolve("sheets"))) {
            return sheets.sorted().map(FuzzedProceduresTest::bytes).toList().stream();
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @MethodSource("procedures")
    @DictionaryFile(resourcePath = "words.dict")
    @FuzzTest(maxDuration = "10m")
    void text(byte[] file) {
        String text = new String(file, UTF_8);
        SourceText source = SourceText.of("any", text);
        Parsed parsed = ProcedureParser.parse(source);
        Invariants.assertSaid(parsed.problems());
        if (parsed.problems().stream().noneMatch(Diagnostic::isError)) {
            Tidiness.assertSaysTheSame(text);
        }
    }

    @MethodSource("procedures")
    @DictionaryFile(resourcePath = "words.dict")
    @FuzzTest(maxDuration = "10m")
    void procedure(byte[] file) {
        Invariants.compiled(new String(file, UTF_8))
                .procedure()
                .ifPresent(compiled ->
                        Invariants.assertJudged(Workshop.of(compiled).evidence(compiled.graph())));
    }

    @MethodSource("sheets")
    @DictionaryFile(resourcePath = "words.dict")
    @FuzzTest(maxDuration = "10m")
    void sheet(byte[] file) {
        SheetFile.parse("sheet.json", file)
                .value()
                .ifPresent(sheet -> Invariants.assertJudged(Evidence.of(FIRST_LOOK, CARD, TRAY, sheet)));
    }

    @MethodSource("severalFiles")
    @DictionaryFile(resourcePath = "words.dict")
    @FuzzTest(maxDuration = "10m")
    void files(byte[] file) {
        SeveralFiles files = SeveralFiles.of(new String(file, UTF_8));
        Invariants.compiled(files.source(), files.shelf())
                .procedure()
                .ifPresent(compiled ->
                        Invariants.assertJudged(Workshop.of(compiled).evidence(compiled.graph())));
    }

    @MethodSource("choices")
    @FuzzTest(maxDuration = "10m")
    void made(byte[] choices) {
        MadeProceduresTest.assertCompilesAndIsJudged(Chance.of(choices));
    }
}
