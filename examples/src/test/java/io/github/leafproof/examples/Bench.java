package io.github.leafproof.examples;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.parts.Shelf;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrayFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BinaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The example bench, its files named as somebody names them who stands in the project's folder. */
final class Bench {
    static final Procedure FIRST_LOOK = procedure("first_look");

    private static final Map<String, Procedure> PROCEDURES = new ConcurrentHashMap<>();

    /** A report looks at every computed value by trials as well, which takes seconds: many tests read the same one. */
    private static final Map<String, Report> REPORTS = new ConcurrentHashMap<>();

    private static final String NAMED = "examples/bench/";

    private Bench() {}

    static Procedure procedure(String name) {
        return Procedure.read(Project.BENCH.resolve(name + ".inspection")).orElseThrow();
    }

    /** A procedure of the bench with something written otherwise in one of its files. */
    static Procedure changed(String procedure, String file, String written, String instead) {
        if (!Project.text(Project.BENCH.resolve(file)).contains(written)) {
            throw new IllegalArgumentException(file + " does not say " + written);
        }
        return edited(procedure, (name, text) -> name.equals(file) ? text.replace(written, instead) : text);
    }

    /** A procedure of the bench, each of whose files an editor went through: its name and its text go in. */
    static Procedure edited(String procedure, BinaryOperator<String> editor) {
        Map<String, String> texts = new TreeMap<>();
        for (Path file : Project.files(Project.BENCH)) {
            String name = Project.BENCH.relativize(file).toString().replace('\\', '/');
            if (name.endsWith(".inspection")) {
                texts.put(name, editor.apply(name, Project.text(file)));
            }
        }
        String own = procedure + ".inspection";
        return Procedure.compile(SourceText.of(own, Objects.requireNonNull(texts.get(own))), Shelf.of(texts))
                .orElseThrow();
    }

    /** The names of all procedures of the bench. */
    static List<String> procedures() {
        try (Stream<Path> files = Files.list(Project.BENCH)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".inspection"))
                    .map(name -> name.substring(0, name.length() - ".inspection".length()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The same, and those of the history, which lie in a folder of their own. */
    static List<String> allProcedures() {
        return Stream.concat(procedures().stream(), Stream.of("history/between_runs", "history/cold_look"))
                .toList();
    }

    /** The cases of a procedure, which name cards and trays from its own folder. */
    static Rehearsing rehearsing(String name, Procedure procedure) {
        return Rehearsing.of(procedure, Project.BENCH.resolve(name).resolveSibling(""));
    }

    static Report judge(String sheetFile) {
        return REPORTS.computeIfAbsent(path(sheetFile), path -> Reporting.of(judgement(path)));
    }

    /** Judges a sheet by the procedure that it names, which lies at the top of the bench. */
    static Judgement judgement(String sheetFile) {
        Document<JobSheet> sheet = sheet(sheetFile);
        JobSheet content = sheet.content();
        return PROCEDURES
                .computeIfAbsent(content.procedure(), Bench::procedure)
                .judgement(card(seen(content.card())), tray(seen(content.tray())), sheet, UnitSystem.METRIC)
                .orElseThrow();
    }

    /** A sheet names its card and its tray as seen from its own folder, which stands beside that of the others. */
    private static String seen(@Nullable String fromSheet) {
        return Path.of("sheets")
                .resolve(Objects.requireNonNull(fromSheet))
                .normalize()
                .toString()
                .replace('\\', '/');
    }

    private static String path(String sheetFile) {
        return sheetFile.contains("/") ? sheetFile : "sheets/" + sheetFile;
    }

    static Document<JobSheet> sheet(String file) {
        String path = path(file);
        return SheetFile.parse(NAMED + path, Project.bytes(Project.BENCH.resolve(path)))
                .orElseThrow();
    }

    static Document<EngineCard> card(String file) {
        return CardFile.parse(NAMED + file, Project.bytes(Project.BENCH.resolve(file)))
                .orElseThrow();
    }

    static Document<GaugeTray> tray(String file) {
        return TrayFile.parse(NAMED + file, Project.bytes(Project.BENCH.resolve(file)))
                .orElseThrow();
    }
}
