package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.verdict.Release;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** From JSON to a report. */
final class ReportReading {
    private static final List<String> KEYS = List.of(
            "format",
            "procedure",
            "sheet",
            "card",
            "tray",
            "engine",
            "date",
            "release",
            "release_reason",
            "checks",
            "next",
            "cautions",
            "notes");

    static final List<String> RELEASES =
            Arrays.stream(Release.values()).map(Release::word).toList();

    private ReportReading() {}

    static Optional<Report> report(Spot spot) {
        Optional<Fields> object = spot.anyFields("a report");
        if (object.isEmpty() || !isOfKnownForm(object.get())) {
            return Optional.empty();
        }
        Fields fields = object.get();
        fields.allow(KEYS);
        int before = spot.errors();
        Optional<Report.Procedure> procedure = must(fields, "procedure", ReportReading::procedure);
        Optional<Report.Input> sheet = must(fields, "sheet", ReportReading::input);
        Optional<Report.Input> card = fields.unlessNull("card").flatMap(ReportReading::input);
        Optional<Report.Input> tray = fields.unlessNull("tray").flatMap(ReportReading::input);
        Optional<Report.Engine> engine = must(fields, "engine", ReportReading::engine);
        Optional<LocalDate> date = must(fields, "date", Spot::date);
        Optional<Release> release =
                must(fields, "release", s -> s.word("a release", RELEASES)).flatMap(Release::named);
        Optional<String> reason = must(fields, "release_reason", Spot::anyText);
        List<Report.Check> checks = each(fields, "checks", CheckReading::check);
        List<Report.Step> next = each(fields, "next", ReportReading::step);
        List<String> cautions = texts(fields, "cautions");
        List<String> notes = texts(fields, "notes");
        return spot.errors() > before
                ? Optional.empty()
                : Optional.of(new Report(
                        procedure.orElseThrow(),
                        sheet.orElseThrow(),
                        card.orElse(null),
                        tray.orElse(null),
                        engine.orElseThrow(),
                        date.orElseThrow(),
                        release.orElseThrow(),
                        reason.orElseThrow(),
                        checks,
                        next,
                        cautions,
                        notes));
    }

    /** A report of another form may mean something else by the same keys, so nothing more is said of it. */
    private static boolean isOfKnownForm(Fields fields) {
        return must(fields, "format", Spot::anyText)
                .filter(format -> {
                    boolean known = format.equals(Report.FORMAT);
                    if (!known) {
                        fields.optional("format")
                                .ifPresent(
                                        spot -> spot.complain(
                                                FileMistake.LP661,
                                                "this program reads reports of the form " + Report.FORMAT
                                                        + ", and this one is " + Shown.quoted(format),
                                                "read it with the version of the program that wrote it, or judge the sheet again"));
                    }
                    return known;
                })
                .isPresent();
    }

    static <T> Optional<T> must(Fields fields, String key, Function<Spot, Optional<T>> question) {
        if (!fields.has(key)) {
            fields.complain(
                    FileMistake.LP613,
                    "the key \"" + key + "\" is missing",
                    "every report has it; this one was changed after it was written, so judge the sheet again");
        }
        return fields.optional(key).flatMap(question);
    }

    static <T> List<T> each(Fields fields, String key, Function<Spot, Optional<T>> question) {
        List<T> all = new ArrayList<>();
        must(fields, key, spot -> spot.items("a list"))
                .ifPresent(spots -> spots.forEach(spot -> question.apply(spot).ifPresent(all::add)));
        return all;
    }

    static List<String> texts(Fields fields, String key) {
        return each(fields, key, Spot::anyText);
    }

    private static Optional<Report.Procedure> procedure(Spot spot) {
        return spot.fields("a procedure", List.of("name", "title", "revision", "sha256", "parts"))
                .flatMap(fields -> {
                    Optional<String> name = must(fields, "name", Spot::anyText);
                    Optional<String> title = must(fields, "title", Spot::anyText);
                    Optional<Integer> revision =
                            must(fields, "revision", s -> s.whole("a revision", Integer.MIN_VALUE, Integer.MAX_VALUE));
                    Optional<String> sha256 = must(fields, "sha256", Spot::anyText);
                    // Reports written before procedures could use other files name none.
                    List<Report.Input> parts = fields.optional("parts").isPresent()
                            ? each(fields, "parts", ReportReading::input)
                            : List.of();
                    return name.isPresent() && title.isPresent() && revision.isPresent() && sha256.isPresent()
                            ? Optional.of(
                                    new Report.Procedure(name.get(), title.get(), revision.get(), sha256.get(), parts))
                            : Optional.empty();
                });
    }

    private static Optional<Report.Input> input(Spot spot) {
        return spot.fields("a file with its digest", List.of("name", "sha256")).flatMap(fields -> {
            Optional<String> name = must(fields, "name", Spot::anyText);
            Optional<String> sha256 = must(fields, "sha256", Spot::anyText);
            return name.isPresent() && sha256.isPresent()
                    ? Optional.of(new Report.Input(name.get(), sha256.get()))
                    : Optional.empty();
        });
    }

    private static Optional<Report.Engine> engine(Spot spot) {
        return spot.fields("an engine", List.of("model", "maker", "serial", "variant", "condition"))
                .map(fields -> new Report.Engine(
                        said(fields, "model").orElse(null),
                        said(fields, "maker").orElse(null),
                        said(fields, "serial").orElse(null),
                        said(fields, "variant").orElse(null),
                        said(fields, "condition").orElse(null)));
    }

    /** A text that may be null or left out. */
    static Optional<String> said(Fields fields, String key) {
        return fields.unlessNull(key).flatMap(Spot::anyText);
    }

    private static Optional<Report.Step> step(Spot spot) {
        return spot.fields("a step", List.of("step", "cautions")).flatMap(fields -> {
            Optional<String> step = must(fields, "step", Spot::anyText);
            List<String> cautions = texts(fields, "cautions");
            return step.map(what -> new Report.Step(what, cautions));
        });
    }
}
