package io.github.leafproof.inspection.record;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;

/** A program that enters something again and again, and says the number of each entry once it is acknowledged. */
final class KeepsAJournal {

    /** Far more than are made before somebody kills it. */
    private static final int MOST = 2_000;

    private KeepsAJournal() {}

    /** Goes on with the journal of a sheet until somebody kills it. It begins fast, and so does without all that it does not need. */
    public static void main(String[] arguments) {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        Act.Stamp stamp = new Act.Stamp("mk", OffsetDateTime.of(2026, 3, 4, 10, 12, 0, 0, ZoneOffset.UTC));
        try (Journal journal = Journal.open(Path.of(arguments[0])).orElseThrow()) {
            long number = journal.acts().stream()
                    .filter(Act.Entered.class::isInstance)
                    .count();
            append(journal, new Act.Opened(ProcessHandle.current().pid(), stamp));
            for (int i = 0; i < MOST; i++) {
                number++;
                Given given = new Given.Words(number + " mm");
                append(
                        journal,
                        new Act.Entered(new Entry("depth", given, false, stamp.by(), stamp.at(), null, null, "")));
                out.println(number);
            }
        }
    }

    private static void append(Journal journal, Act act) {
        journal.append(act).ifPresent(problem -> {
            throw new AssertionError(problem.toString());
        });
    }
}
