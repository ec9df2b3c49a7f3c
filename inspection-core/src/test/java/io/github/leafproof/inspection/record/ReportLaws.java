package io.github.leafproof.inspection.record;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import io.github.leafproof.inspection.verdict.Severity;
import io.github.leafproof.inspection.verdict.Side;
import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class ReportLaws {

    @Property(tries = 60, seed = "1")
    void every_report_read_back_equals_the_one_written_and_its_schema_accepts_it(@ForAll("reports") Report report) {
        String json = ReportFile.toJson(report);

        Read<Document<Report>> read = ReportFile.parse("r.json", json.getBytes(UTF_8));

        assertThat(read.problems()).isEmpty();
        assertThat(read.orElseThrow().content()).isEqualTo(report);
        assertThat(Schemas.complaints(Format.REPORT, json)).isEmpty();
    }

    @Property(tries = 100, seed = "1")
    void the_same_report_gives_the_same_bytes_and_ends_in_a_line_end(@ForAll("reports") Report report) {
        String json = ReportFile.toJson(report);

        assertThat(ReportFile.toJson(report)).isEqualTo(json).endsWith("}\n").doesNotContain("\r");
    }

    @Provide
    Arbitrary<Report> reports() {
        Arbitrary<Report.Input> inputs = Combinators.combine(texts(), texts()).as(Report.Input::new);
        return Combinators.combine(
                        Combinators.combine(
                                        texts(),
                                        texts(),
                                        Arbitraries.integers(),
                                        texts(),
                                        inputs.list().ofMaxSize(2))
                                .as(Report.Procedure::new),
                        inputs,
                        inputs.injectNull(0.5),
                        inputs.injectNull(0.5),
                        Combinators.combine(maybe(), maybe(), maybe(), maybe(), maybe())
                                .as(Report.Engine::new),
                        Arbitraries.longs().between(-700_000, 1_000_000).map(LocalDate::ofEpochDay),
                        Combinators.combine(Arbitraries.of(Release.values()), texts())
                                .as(Ending::new),
                        Combinators.combine(
                                        checks().list().ofMaxSize(3),
                                        Combinators.combine(texts(), lists())
                                                .as(Report.Step::new)
                                                .list()
                                                .ofMaxSize(2),
                                        lists(),
                                        lists())
                                .as(Lists::new))
                .as((procedure, sheet, card, tray, engine, date, ending, lists) -> new Report(
                        procedure,
                        sheet,
                        card,
                        tray,
                        engine,
                        date,
                        ending.release(),
                        ending.reason(),
                        lists.checks(),
                        lists.next(),
                        lists.cautions(),
                        lists.notes()));
    }

    private record Ending(Release release, String reason) {}

    private record Lists(
            List<Report.Check> checks, List<Report.Step> next, List<String> cautions, List<String> notes) {}

    private record Heads(
            String name,
            String title,
            Severity severity,
            boolean gate,
            Outcome outcome,
            Side side,
            Report.Probability p) {}

    private record Tails(
            List<String> a, List<String> b, List<String> c, List<String> d, List<String> e, List<String> f) {}

    private static Arbitrary<Report.Check> checks() {
        Arbitrary<Heads> heads = Combinators.combine(
                        texts(),
                        texts(),
                        Arbitraries.of(Severity.values()),
                        Arbitraries.of(true, false),
                        Arbitraries.of(Outcome.values()),
                        Arbitraries.of(Side.values()),
                        probabilities())
                .as(Heads::new);
        Arbitrary<Tails> tails = Combinators.combine(lists(), lists(), lists(), lists(), lists(), lists())
                .as(Tails::new);
        Arbitrary<Report.AsFound> asFound =
                Combinators.combine(Arbitraries.of(Outcome.values()), maybe()).as(Report.AsFound::new);
        return Combinators.combine(heads, maybe(), maybe(), maybe(), tails, asFound.injectNull(0.5))
                .as((head, stage, value, requirement, tail, before) -> new Report.Check(
                        head.name(),
                        head.title(),
                        stage,
                        head.severity(),
                        head.gate(),
                        head.outcome(),
                        head.side(),
                        head.p(),
                        value,
                        requirement,
                        tail.a(),
                        tail.b(),
                        tail.c(),
                        tail.d(),
                        tail.e(),
                        tail.f(),
                        before));
    }

    private static Arbitrary<Report.Probability> probabilities() {
        Arbitrary<Double> shares = Arbitraries.doubles()
                .between(0, 1)
                .ofScale(18)
                .edgeCases(edges -> edges.add(0.0, 1.0, Double.MIN_VALUE, 1e-300, Math.nextDown(1.0), 2.0E-3));
        return Combinators.combine(shares, shares)
                .as((a, b) -> new Report.Probability(Math.min(a, b), Math.max(a, b)))
                .injectNull(0.3);
    }

    /** Anything a person could read: not control characters, which no file of ours may hold. */
    private static Arbitrary<String> texts() {
        return Arbitraries.strings()
                .withChars("abcXYZ 0123456789.,:;\"\\/'{}[]<>&%±°µ·²…ıİßé€日\n\t")
                .ofMaxLength(12);
    }

    private static Arbitrary<String> maybe() {
        return texts().injectNull(0.3);
    }

    private static Arbitrary<List<String>> lists() {
        return texts().list().ofMaxSize(2);
    }
}
