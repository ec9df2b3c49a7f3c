package io.github.leafproof.dsl;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrayFile;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.Outcome;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * A small bench for tests: a procedure written in the test, an engine of the invented maker, a tray whose 0.10 leaf
 * measures 0.11, and what was entered. Everything goes through the language and the files, as it would in a shop.
 */
public record Workshop(
        String procedure, String card, String tray, String engine, String date, String heading, List<String> entries) {

    private static final String CARD = """
        { "model": "Quillan Q15-4", "maker": "Quillan", "displacement": "15.0 cm3",
          "lash_min": "0.03 mm", "lash_max": "0.10 mm", "lash_tolerated": "0.14 mm",
          "adjuster_pitch": "0.45 mm per turn", "rocker_ratio": 1.0, "choke": false,
          "variants": { "early cam": { "lash_max": "0.06 mm" }, "unknown": { "lash_max": "0.05 mm" } },
          "box": ["engine", "glow plug", "manual"] }
        """;

    private static final String TRAY = """
        { "tray": "Bench one", "gauges": [
          { "name": "leaves", "kind": "leaf set", "drag_band": "0.005 mm", "film": "0.001 mm", "leaves": [
            { "marked": "0.04 mm", "measured": "0.040 mm", "u": "0.001 mm" },
            { "marked": "0.05 mm", "measured": "0.050 mm", "u": "0.001 mm", "due": "2027-01-10" },
            { "marked": "0.08 mm", "measured": "0.081 mm", "u": "0.001 mm" },
            { "marked": "0.10 mm", "measured": "0.110 mm", "u": "0.001 mm" },
            { "marked": "0.15 mm", "measured": "0.150 mm", "u": "0.001 mm" },
            { "marked": "0.20 mm" } ] },
          { "name": "pins", "kind": "pin set", "pins": [
            { "marked": "0.70 mm", "measured": "0.700 mm", "u": "0.002 mm" },
            { "marked": "0.80 mm", "measured": "0.800 mm", "u": "0.002 mm" } ] },
          { "name": "infrared", "kind": "reading", "of": "temperature", "limits": "1.0 K", "due": "2027-01-10" },
          { "name": "depth", "kind": "reading", "of": "length", "u": "0.01 mm" },
          { "name": "clicks", "kind": "counter" } ] }
        """;

    /** An empty sheet for a procedure, whose heading is written for it. */
    public static Workshop of(String declarations) {
        return new Workshop(
                "procedure trial \"A trial\" revision 2\n" + declarations,
                CARD,
                TRAY,
                "{ \"serial\": \"Q15-1\" }",
                "2026-03-04",
                "\"procedure\": \"trial\", \"revision\": 2",
                List.of());
    }

    /** An empty sheet for a whole procedure that compiles. */
    public static Workshop of(Procedure procedure) {
        CheckGraph.Identity identity = procedure.graph().identity();
        Workshop empty = of("");
        return new Workshop(
                procedure.source().text(),
                empty.card,
                empty.tray,
                empty.engine,
                empty.date,
                "\"procedure\": \"" + identity.name() + "\", \"revision\": " + identity.revision(),
                List.of());
    }

    /** What is wrong with a procedure, on its own and together with the card and the tray of this bench. */
    public static List<Diagnostic> vetted(SourceText text) {
        Compiled compiled = Procedure.compile(text);
        List<Diagnostic> found = new ArrayList<>(compiled.diagnostics());
        Workshop bench = of("");
        compiled.procedure()
                .ifPresent(procedure -> found.addAll(procedure.vet(
                        bench.cardRead().content(), null, bench.trayRead().content())));
        found.sort(Diagnostic.BY_PLACE);
        return found;
    }

    /** With one more entry, as it stands in a sheet. */
    public Workshop enter(String entry) {
        return entries(Stream.concat(entries.stream(), Stream.of(entry)).toList());
    }

    /** With one more observation and its value, JSON. */
    public Workshop observe(String name, String value) {
        return enter("{ \"observe\": \"" + name + "\", \"value\": " + value + " }");
    }

    /** With one more entry of trials: {@code "passes 0.05 mm", "refuses 0.05 mm + 0.04 mm"}. */
    public Workshop feel(String name, String... trials) {
        return enter("{ \"observe\": \"" + name + "\", " + trials(trials) + " }");
    }

    private static String trials(String... trials) {
        List<String> written = new ArrayList<>();
        for (String trial : trials) {
            int blank = trial.indexOf(' ');
            String leaves = String.join("\", \"", trial.substring(blank + 1).split(" \\+ "));
            written.add("{ \"leaf\": [ \"" + leaves + "\" ], \"result\": \"" + trial.substring(0, blank) + "\" }");
        }
        return "\"trials\": [ " + String.join(", ", written) + " ]";
    }

    public Workshop entries(List<String> all) {
        return new Workshop(procedure, card, tray, engine, date, heading, all);
    }

    public Workshop engine(String json) {
        return new Workshop(procedure, card, tray, json, date, heading, entries);
    }

    public Workshop on(String day) {
        return new Workshop(procedure, card, tray, engine, day, heading, entries);
    }

    public Workshop heading(String json) {
        return new Workshop(procedure, card, tray, engine, date, json, entries);
    }

    public Workshop card(String written, String instead) {
        return new Workshop(procedure, replaced(card, written, instead), tray, engine, date, heading, entries);
    }

    public Workshop tray(String written, String instead) {
        return new Workshop(procedure, card, replaced(tray, written, instead), engine, date, heading, entries);
    }

    private static String replaced(String text, String written, String instead) {
        if (!text.contains(written)) {
            throw new IllegalArgumentException("nothing to replace: " + written);
        }
        return text.replace(written, instead);
    }

    public Procedure compiled() {
        return Procedure.compile(SourceText.of("trial.inspection", procedure)).orElseThrow();
    }

    private Document<EngineCard> cardRead() {
        return CardFile.parse("card.json", bytes(card)).orElseThrow();
    }

    private Document<GaugeTray> trayRead() {
        return TrayFile.parse("tray.json", bytes(tray)).orElseThrow();
    }

    public Document<JobSheet> sheetRead() {
        String text = "{ \"sheet\": \"0412\", " + heading + ", \"engine\": " + engine + ", \"date\": \"" + date
                + "\", \"entries\": [\n" + String.join(",\n", entries) + "\n] }";
        return SheetFile.parse("sheet.json", bytes(text)).orElseThrow();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    public Read<Evidence> evidence() {
        return evidence(compiled().graph());
    }

    /** The same sheet, held against a graph that was compiled elsewhere. */
    public Read<Evidence> evidence(CheckGraph graph) {
        return Evidence.of(graph, cardRead(), trayRead(), sheetRead());
    }

    public Judgement judged() {
        return BothJudges.judge(evidence().orElseThrow(), UnitSystem.METRIC);
    }

    public Verdict verdict(String check) {
        return judged().verdict(check).orElseThrow();
    }

    /** The bounds of a check that was judged. */
    public Conformity conformity(String check) {
        return Objects.requireNonNull(verdict(check).conformity());
    }

    public Outcome outcome(String check) {
        return verdict(check).outcome();
    }

    public Report report() {
        return Reporting.of(judged());
    }

    public Report.Check check(String name) {
        return report().checks().stream()
                .filter(check -> check.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** What is wrong with the files, as a person sees it. */
    public String problems() {
        return String.join(
                "\n", evidence().problems().stream().map(Problem::toString).toList());
    }
}
