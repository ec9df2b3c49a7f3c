package io.github.leafproof.dsl.seal;

import io.github.leafproof.dsl.seal.FoundFile.State;
import io.github.leafproof.dsl.seal.Verification.Again;
import io.github.leafproof.dsl.seal.Verification.SealState;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.FileMistake;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.ReportFile;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One report being verified, step by step: its seal, whose it is, the files it rests on, and these judged again. */
final class Verifying {

    private final Document<byte[]> file;
    private final List<Document<VerifyingKey>> keys;
    private final Places places;
    private final SealCheck seal;
    private final Read<Document<Report>> report;
    private final List<Problem> problems = new ArrayList<>();

    Verifying(
            Document<byte[]> file,
            Optional<Document<byte[]>> sealFile,
            List<Document<VerifyingKey>> keys,
            Places places) {
        this.file = file;
        this.keys = keys;
        this.places = places;
        this.seal =
                sealFile.map(found -> SealCheck.of(file, found, keys)).orElseGet(() -> SealCheck.noSeal(file.name()));
        this.report = ReportFile.parse(file.name(), file.content());
    }

    Verification verification() {
        problems.addAll(seal.problems());
        List<FoundFile> found = report.value()
                .map(read -> FileSearch.of(read.content(), places))
                .orElse(List.of());
        List<byte[]> again = JudgedAgain.reports(found, places);
        Optional<byte[]> sealed = seal.state() == SealState.REPORT_CHANGED ? seal.sealedOne(again) : Optional.empty();
        if (seal.state() == SealState.REPORT_CHANGED) {
            tellWhereItWasChanged(sealed, again);
        }
        if (report.value().isEmpty()) {
            problems.addAll(report.problems());
        }
        // What was sealed says which files they were; the digests of a changed report may be what was changed.
        List<FoundFile> files = sealed.flatMap(original -> read(original))
                .map(original -> FileSearch.of(original, places))
                .orElse(found);
        boolean procedureIsMissing =
                files.stream().anyMatch(each -> each.is(NamedFile.Role.PROCEDURE) && each.state() == State.MISSING);
        files.stream()
                .filter(each -> !(procedureIsMissing && each.is(NamedFile.Role.PART) && each.state() == State.MISSING))
                .forEach(this::tellOf);
        Again said = seal.state() == SealState.REPORT_CHANGED ? Again.NOT_JUDGED : said(files, again);
        VerifyingKey key = seal.key();
        Optional<String> knownAs = keys.stream()
                .filter(each -> key != null && each.content().equals(key))
                .map(Document::name)
                .findFirst();
        if (key != null && knownAs.isEmpty() && !keys.isEmpty()) {
            tellOfTheKey(key);
        }
        return new Verification(
                file.name(),
                report.value().map(Document::content),
                seal.state(),
                Optional.ofNullable(key),
                knownAs,
                !keys.isEmpty(),
                files,
                said,
                problems);
    }

    private static Optional<Report> read(byte[] text) {
        return ReportFile.parse("", text).value().map(Document::content);
    }

    private void tellWhereItWasChanged(Optional<byte[]> sealed, List<byte[]> again) {
        Optional<Difference> sure = sealed.flatMap(original -> Difference.of(file.content(), original));
        Optional<Difference> likely = Difference.least(file.content(), again);
        String message = sure.map(first -> "the report was changed after it was sealed: " + first.words("sealed was"))
                .or(() -> likely.map(
                        first -> "this is not the report that was sealed; where it first differs from what its"
                                + " files give today, " + first.words("they give")))
                .orElse("this is not the report that was sealed, or the seal is that of another");
        tell(
                FileMistake.LP789,
                file.name(),
                sure.or(() -> likely).map(Difference::place).orElse(""),
                message,
                "trust nothing in it; have it handed over again, or judge the engine again");
    }

    private void tellOf(FoundFile found) {
        NamedFile named = found.named();
        switch (found.state()) {
            case UNCHANGED -> {}
            case CHANGED ->
                tell(
                        FileMistake.LP792,
                        found.orElseThrow().name(),
                        "",
                        "this " + named.role().word() + " is not as it was when the engine was judged",
                        "find the file as it was; where it was changed on purpose, judge the engine again");
            case MISSING ->
                tell(
                        FileMistake.LP793,
                        file.name(),
                        "",
                        "the " + named + " that the report rests on is not found",
                        named.role() == NamedFile.Role.PROCEDURE
                                ? "name it with --procedure, or its folder with --inputs"
                                : "name the folder that it lies in with --inputs");
        }
    }

    /** What the files say today; only files that are all as they were can say anything against the report. */
    private Again said(List<FoundFile> files, List<byte[]> again) {
        boolean unchanged = files.stream().allMatch(each -> each.state() == State.UNCHANGED);
        Optional<Difference> first = Difference.least(file.content(), again);
        if (again.stream().anyMatch(text -> Difference.of(file.content(), text).isEmpty())) {
            return Again.SAME;
        }
        if (!unchanged || first.isEmpty()) {
            return Again.NOT_JUDGED;
        }
        Map<String, String> decided =
                report.value().map(Document::content).map(Verifying::decisions).orElse(Map.of());
        boolean alike = again.stream()
                .flatMap(text -> read(text).stream())
                .anyMatch(today -> decisions(today).equals(decided));
        tell(
                alike ? FileMistake.LP795 : FileMistake.LP794,
                file.name(),
                first.get().place(),
                (alike
                                ? "judged again, the same files decide alike in another text: "
                                : "judged again, the same files decide otherwise: ")
                        + first.get().words("they give"),
                alike
                        ? "another version of the program wrote it, or somebody did by hand; its decisions stand"
                        : "ask whoever sealed it; another version of the program wrote it, or somebody did by hand");
        return alike ? Again.OTHER_WORDS : Again.OTHER_DECISIONS;
    }

    /** The release, and each check with its outcome. */
    private static Map<String, String> decisions(Report report) {
        Map<String, String> decisions = new LinkedHashMap<>();
        Release release = report.release();
        decisions.put("", release.word());
        report.checks().forEach(check -> {
            Outcome outcome = check.outcome();
            decisions.put(check.name(), outcome.word());
        });
        return decisions;
    }

    private void tellOfTheKey(VerifyingKey key) {
        StringBuilder asked = new StringBuilder();
        keys.forEach(each -> asked.append(asked.isEmpty() ? "" : " or ")
                .append(each.content().fingerprint())
                .append(" (")
                .append(each.name())
                .append(')'));
        tell(
                FileMistake.LP791,
                file.name(),
                "",
                "the key that its seal names is " + key.fingerprint() + ", and not " + asked,
                "ask the shop for the fingerprint of its key, by another way than the report came");
    }

    private void tell(FileMistake mistake, String name, String place, String message, String help) {
        problems.add(new Problem(mistake.level(), mistake.name(), name, place, message, help));
    }
}
