package io.github.leafproof.inspection.record;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** From the bytes of a journal to what was done. What was acknowledged is all there, or the journal is refused. */
final class JournalReading {

    private static final List<String> HEAD_KEYS =
            List.of("format", "sheet", "procedure", "parts", "card", "tray", "check");
    private static final List<String> ACTS = List.of("open", "enter", "bring", "skip", "later", "undo", "finish");

    private final String file;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Act> acts = new ArrayList<>();
    private final Set<String> observed = new HashSet<>();
    private @Nullable JournalHead head;
    private String lastCheck = "";

    private JournalReading(String file) {
        this.file = file;
    }

    /**
     * What a journal holds.
     *
     * @param head empty where not even the first line is whole, so that nothing was ever acknowledged
     * @param wholeBytes how many bytes the whole lines take
     * @param lastCheck the check of the last whole line
     */
    record Content(Optional<JournalHead> head, List<Act> acts, long wholeBytes, String lastCheck) {}

    /**
     * Reads a journal.
     *
     * @param file what problems call it
     * @return its content, with a warning where its last line was cut off; refused where a line is not as it was written
     */
    static Read<Content> read(String file, byte[] bytes) {
        return new JournalReading(file).read(bytes);
    }

    private Read<Content> read(byte[] bytes) {
        int from = 0;
        int number = 0;
        for (int end = lineEnd(bytes, from); end >= 0; end = lineEnd(bytes, from)) {
            number++;
            take(Arrays.copyOfRange(bytes, from, end), number);
            from = end + 1;
            if (!problems.isEmpty()) {
                return new Read.Refused<>(problems);
            }
        }
        if (from < bytes.length && number > 0) {
            problems.add(cutOff(number + 1, bytes.length - from));
        }
        return new Read.Done<>(new Content(Optional.ofNullable(head), List.copyOf(acts), from, lastCheck), problems);
    }

    private static int lineEnd(byte[] bytes, int from) {
        for (int i = from; i < bytes.length; i++) {
            if (bytes[i] == '\n') {
                return i;
            }
        }
        return -1;
    }

    private Problem cutOff(int line, int bytes) {
        return new Problem(
                Problem.Level.WARNING,
                FileMistake.LP766.name(),
                file,
                line + ":1",
                "the last line was cut off and is dropped: " + bytes + (bytes == 1 ? " byte" : " bytes") + " of it",
                "it was being written when the program ended, and was not acknowledged; enter again what was last entered, if"
                        + " it is not there");
    }

    private void take(byte[] line, int number) {
        if (!JournalLine.isSound(line, lastCheck)) {
            problems.add(number == 1 ? notOurs(line) : damaged(number));
            return;
        }
        lastCheck = String.valueOf(JournalLine.checkOf(line));
        if (number == 1) {
            then(JsonFile.parse(file, line, number, JournalReading::head), found -> head = found);
        } else {
            then(JsonFile.parse(file, line, number, this::act), acts::add);
        }
    }

    private <T> void then(Read<Document<T>> read, Consumer<T> taking) {
        problems.addAll(read.problems().stream().filter(Problem::isError).toList());
        read.value().ifPresent(document -> taking.accept(document.content()));
    }

    /** A first line of another form is no damage, and of which form it is can still be told. */
    private Problem notOurs(byte[] line) {
        // What says nothing of its form is of none: a blank stands for it.
        String format = JsonFile.parse(
                        file,
                        line,
                        1,
                        spot -> spot.anyFields("a journal")
                                .map(fields -> fields.optional("format")
                                        .flatMap(Spot::anyText)
                                        .orElse("")))
                .value()
                .map(Document::content)
                .orElse("");
        if (format.equals(JournalHead.FORMAT)) {
            return damaged(1);
        }
        return Findings.whole(
                file,
                FileMistake.LP769,
                format.isEmpty()
                        ? "the file is no journal of this program"
                        : "this program keeps journals of the form " + JournalHead.FORMAT + ", and this one is "
                                + Shown.quoted(format),
                "go on with the version of the program that began it; if the file is something else, move it away");
    }

    private Problem damaged(int line) {
        String kept = line == 1
                ? "nothing in it can be relied on: restore the file from a copy, or move it away and begin anew"
                : "what stands above it is whole; restore the file from a copy, or, to go on from there, move this line and"
                        + " all below it into another file and enter again what they say";
        return new Problem(
                FileMistake.LP764.name(),
                file,
                line + ":1",
                "this line is not as it was written: it was changed or damaged, or a line before it is missing",
                kept);
    }

    private static Optional<JournalHead> head(Spot spot) {
        return spot.fields("the beginning of a journal", HEAD_KEYS).flatMap(fields -> {
            int before = spot.errors();
            Optional<JobSheet> sheet =
                    fields.required("sheet", "the sheet before its first entry").flatMap(SheetReading::sheet);
            Optional<Report.Input> procedure = input(fields, "procedure");
            List<Report.Input> parts = fields
                    .required("parts", "the files that the procedure uses")
                    .flatMap(list -> list.items("a list of files"))
                    .orElse(List.of())
                    .stream()
                    .flatMap(each -> input(each).stream())
                    .toList();
            Optional<Report.Input> card = input(fields, "card");
            Optional<Report.Input> tray = input(fields, "tray");
            return spot.errors() > before
                    ? Optional.empty()
                    : Optional.of(new JournalHead(
                            sheet.orElseThrow(),
                            procedure.orElseThrow(),
                            parts,
                            card.orElseThrow(),
                            tray.orElseThrow()));
        });
    }

    private static Optional<Report.Input> input(Fields fields, String key) {
        return fields.required(key, "a file with its digest").flatMap(JournalReading::input);
    }

    private static Optional<Report.Input> input(Spot spot) {
        return spot.fields("a file with its digest", List.of("name", "sha256")).flatMap(fields -> {
            Optional<String> name = fields.required("name", "the file").flatMap(Spot::anyText);
            Optional<String> sha256 = fields.required("sha256", "its digest").flatMap(Spot::anyText);
            return name.flatMap(file -> sha256.map(digest -> new Report.Input(file, digest)));
        });
    }

    private Optional<Act> act(Spot spot) {
        return spot.anyFields("an act")
                .flatMap(fields -> fields.required("act", "what was done")
                        .flatMap(word -> word.word("an act", ACTS))
                        .flatMap(word -> act(word, fields)));
    }

    private Optional<Act> act(String word, Fields fields) {
        return switch (word) {
            case "enter" -> entered(fields);
            case "open" ->
                stamped(fields, "process")
                        .flatMap(stamp -> fields.required("process", "the number of the program's process")
                                .flatMap(spot -> spot.number("a process"))
                                .map(process -> new Act.Opened(process.longValue(), stamp)));
            case "bring" ->
                stamped(fields, "state", "to")
                        .flatMap(stamp -> text(fields, "state")
                                .flatMap(state -> text(fields, "to").map(to -> new Act.Brought(state, to, stamp))));
            case "skip" ->
                stamped(fields, "observe")
                        .flatMap(stamp -> text(fields, "observe").map(name -> new Act.Skipped(name, stamp)));
            case "later" ->
                stamped(fields, "observe")
                        .flatMap(stamp -> text(fields, "observe").map(name -> new Act.PutOff(name, stamp)));
            case "finish" ->
                stamped(fields, "sha256")
                        .flatMap(stamp -> text(fields, "sha256").map(digest -> new Act.Finished(digest, stamp)));
            default -> stamped(fields).map(Act.TookBack::new);
        };
    }

    private Optional<Act> entered(Fields fields) {
        fields.allow(List.of("act", "entry", "check"));
        return fields.required("entry", "what was entered, as it stands on a sheet")
                .flatMap(spot -> EntryReading.entry(spot, observed)
                        .filter(entry -> entry.at() != null
                                || spot.no(
                                                FileMistake.LP613,
                                                "the key \"at\" is missing",
                                                "it gives when it was entered")
                                        .isPresent())
                        .map(Act.Entered::new));
    }

    private static Optional<Act.Stamp> stamped(Fields fields, String... more) {
        List<String> known = new ArrayList<>(List.of("act", "by", "at", "check"));
        known.addAll(List.of(more));
        fields.allow(known);
        @Nullable String by = fields.orNull("by", s -> s.text("who did it, as text"));
        Optional<OffsetDateTime> at = fields.required("at", "when it was done").flatMap(Spot::moment);
        return at.map(moment -> new Act.Stamp(by, moment));
    }

    private static Optional<String> text(Fields fields, String key) {
        return fields.required(key, "what it is about").flatMap(Spot::anyText);
    }
}
