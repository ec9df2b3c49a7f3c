package io.github.leafproof.dsl.growth;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.draw.Picture;
import io.github.leafproof.dsl.draw.SvgDrawing;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judge;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.layout.Layout;
import io.github.leafproof.dsl.parse.ProcedureParser;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.dsl.report.TextReport;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.OpenSheet;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.ReportFile;
import io.github.leafproof.inspection.record.SheetFile;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;

/** The work of one long procedure, step by step, and what each step costs. DEVELOPERS.md tells how to run it. */
final class Growth {

    private static final com.sun.management.ThreadMXBean THREADS =
            (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();

    private final Map<String, Cost> costs = new LinkedHashMap<>();

    /** What a step took: processor time in seconds, and bytes that it allocated. */
    record Cost(double seconds, long bytes) {}

    private Growth() {}

    /** Prints the costs for each number of checks in the arguments. */
    public static void main(String[] arguments) throws Exception {
        of(1_000); // Java has to warm up before anything can be compared.
        of(1_000);
        for (String checks : arguments) {
            System.out.println(checks + " checks");
            Map<String, Cost> costs = of(Integer.parseInt(checks));
            costs.forEach((step, cost) -> System.out.printf(
                    Locale.ROOT, "  %-28s %8.3f s %10.1f MiB%n", step, cost.seconds(), cost.bytes() / 1048576.0));
        }
    }

    /** What each step costs for so many checks. */
    static Map<String, Cost> of(int checks) throws Exception {
        Growth growth = new Growth();
        LongProcedure procedure = new LongProcedure(checks);
        growth.run(procedure);
        growth.chain(LongProcedure.chain(checks));
        return growth.costs;
    }

    /** Observations that hang on each other, written from the end: the last decides whether any is asked for. */
    private void chain(SourceText source) throws Exception {
        CheckGraph graph = step(
                "compile a chain", () -> Procedure.compile(source).orElseThrow().graph());
        Evidence evidence = Evidence.of(
                        graph,
                        LongProcedure.card(),
                        LongProcedure.tray(),
                        LongProcedure.sheetRead("{ \"observe\": \"last\", \"value\": false }"))
                .orElseThrow();
        step("judge a chain", () -> Judge.judge(evidence, UnitSystem.METRIC));
    }

    private void run(LongProcedure written) throws Exception {
        SourceText source = written.source();
        byte[] sheetBytes = LongProcedure.sheet("long", written.entries());
        Document<EngineCard> card = LongProcedure.card();
        Document<GaugeTray> tray = LongProcedure.tray();
        step("parse", () -> ProcedureParser.parse(source));
        Procedure procedure =
                step("parse and compile", () -> Procedure.compile(source).orElseThrow());
        step("tidy", () -> Layout.of(source));
        Document<JobSheet> sheet = step(
                "read the sheet",
                () -> SheetFile.parse("sheet.json", sheetBytes).orElseThrow());
        Evidence evidence = step(
                "hold it against the graph",
                () -> Evidence.of(procedure.graph(), card, tray, sheet).orElseThrow());
        Judgement judgement = step("judge", () -> Judge.judge(evidence, UnitSystem.METRIC));
        Judgement before = Judge.judge(
                Evidence.of(procedure.graph(), card, tray, written.sheetButForOneEntry())
                        .orElseThrow(),
                UnitSystem.METRIC);
        List<Entry> entries = sheet.content().entries();
        OpenSheet longer =
                before.evidence().sheet().with(entries.get(entries.size() - 1)).orElseThrow();
        step("judge the first entry more", () -> before.continuedWith(longer).orElseThrow());
        step("order of steps", () -> procedure.graph().stepOrder());
        Picture picture = step("picture", () -> Picture.of(judgement));
        step("picture as SVG", () -> SvgDrawing.of(picture));
        Report report = step("report", () -> Reporting.of(judgement));
        step("report as text", () -> TextReport.of(report, false));
        String json = step("report as JSON", () -> ReportFile.toJson(report));
        byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
        boolean read = step(
                "read the report",
                () -> ReportFile.parse("report.json", bytes).value().isPresent());
        if (!read) {
            System.out.printf(Locale.ROOT, "  the report, %d MiB, is too large to be read%n", bytes.length >> 20);
        }
    }

    private <T> T step(String name, Callable<T> work) throws Exception {
        long thread = Thread.currentThread().getId();
        long bytes = THREADS.getThreadAllocatedBytes(thread);
        long time = THREADS.getCurrentThreadCpuTime();
        T result = work.call();
        costs.put(
                name,
                new Cost(
                        (THREADS.getCurrentThreadCpuTime() - time) / 1e9,
                        THREADS.getThreadAllocatedBytes(thread) - bytes));
        return result;
    }
}
