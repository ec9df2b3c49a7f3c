package io.github.leafproof.dsl.seal;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.parts.ProcedureFolder;
import io.github.leafproof.dsl.parts.Shelf;
import io.github.leafproof.dsl.seal.NamedFile.Role;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Part;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.ReportFile;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrayFile;
import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** The reports that the files give today, judged by this program: what a report on them should have said. */
final class JudgedAgain {

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final Map<Role, FoundFile> files = new HashMap<>();
    private final Map<String, Document<byte[]>> parts = new HashMap<>();
    private final Places places;

    private JudgedAgain(List<FoundFile> found, Places places) {
        this.places = places;
        for (FoundFile file : found) {
            if (file.is(Role.PART)) {
                parts.put(file.named().name(), file.orElseThrow());
            } else {
                files.put(file.named().role(), file);
            }
        }
    }

    /**
     * All texts that a report on these files can have had: by the units that it was asked for in, and by how the files were
     * named. None where one of the files is missing, or cannot be judged.
     */
    static List<byte[]> reports(List<FoundFile> found, Places places) {
        boolean all = found.stream().noneMatch(file -> file.state() == FoundFile.State.MISSING)
                && Set.of(Role.PROCEDURE, Role.SHEET, Role.CARD, Role.TRAY).stream()
                        .allMatch(role -> found.stream().anyMatch(file -> file.is(role)));
        return all ? new JudgedAgain(found, places).reports() : List.of();
    }

    private List<byte[]> reports() {
        Document<byte[]> own = of(Role.PROCEDURE);
        Compiled compiled = Procedure.compile(source(own.name(), own.content()), shelf(Path.of(own.name())));
        Set<String> texts = new LinkedHashSet<>();
        if (compiled.procedure().isPresent()) {
            Procedure procedure = compiled.procedure().get();
            for (UnitSystem units : UnitSystem.values()) {
                report(procedure, units, file -> file.named().name()).ifPresent(texts::add);
                report(procedure, units, this::asItLiesNow).ifPresent(texts::add);
            }
        }
        List<byte[]> reports = new ArrayList<>();
        texts.forEach(text -> reports.add(text.getBytes(StandardCharsets.UTF_8)));
        return reports;
    }

    private Optional<String> report(Procedure procedure, UnitSystem units, Function<FoundFile, String> name) {
        Function<Role, String> named = role -> name.apply(file(role));
        var card = CardFile.parse(named.apply(Role.CARD), of(Role.CARD).content());
        var tray = TrayFile.parse(named.apply(Role.TRAY), of(Role.TRAY).content());
        var sheet = SheetFile.parse(named.apply(Role.SHEET), of(Role.SHEET).content());
        return card.value().isEmpty() || tray.value().isEmpty() || sheet.value().isEmpty()
                ? Optional.empty()
                : procedure
                        .judge(card.orElseThrow(), tray.orElseThrow(), sheet.orElseThrow(), units)
                        .value()
                        .map(ReportFile::toJson);
    }

    /** The name of a file seen from the folder that it was found in: in a changed report the name may be what was changed. */
    private String asItLiesNow(FoundFile file) {
        Path path = Path.of(file.orElseThrow().name());
        return places.folders().stream()
                .map(Path::normalize)
                .filter(folder -> !folder.toString().isEmpty() && path.startsWith(folder))
                .map(folder -> folder.relativize(path))
                .findFirst()
                .orElse(path)
                .toString()
                .replace(File.separatorChar, '/');
    }

    private FoundFile file(Role role) {
        return Optional.ofNullable(files.get(role)).orElseThrow();
    }

    private Document<byte[]> of(Role role) {
        return file(role).orElseThrow();
    }

    /** The parts as they were found, under their names; one that the report does not name, where the procedure looks for it. */
    private Shelf shelf(Path procedure) {
        Path folder = Optional.ofNullable(places.root())
                .or(() -> Optional.ofNullable(procedure.getParent()))
                .orElse(Path.of(""));
        return name -> Optional.ofNullable(parts.get(name))
                .<Shelf.Found>map(part -> new Shelf.Found.There(new Part(name, source(name, part.content()))))
                .orElseGet(() -> ProcedureFolder.of(folder).find(name));
    }

    private static SourceText source(String name, byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        return SourceText.ofFile(name, text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text, bytes);
    }
}
