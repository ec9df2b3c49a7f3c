package io.github.leafproof.dsl.mutants;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The mutants that a shop lets survive, each with the reason: a line {@code NAME because REASON} for each, blank lines and
 * comments between them.
 */
public final class Accepted {

    private static final String BECAUSE = " because ";

    private final Map<String, Entry> byName = new LinkedHashMap<>();
    private final List<Diagnostic> problems = new ArrayList<>();

    private Accepted() {}

    private record Entry(Span name, String reason) {}

    /** Nothing is accepted. */
    public static Accepted none() {
        return new Accepted();
    }

    /** What the text of such a list says. */
    public static Accepted of(SourceText text) {
        Accepted accepted = new Accepted();
        for (int number = 1; number <= text.lines(); number++) {
            String line = text.line(number);
            if (!line.isBlank() && !line.strip().startsWith("//")) {
                accepted.take(line, text.lineStart(number), text);
            }
        }
        return accepted;
    }

    private void take(String line, int start, SourceText text) {
        int because = line.indexOf(BECAUSE);
        String name = because < 0 ? line : line.substring(0, because);
        String reason =
                because < 0 ? "" : line.substring(because + BECAUSE.length()).strip();
        int from = start + line.length() - line.stripLeading().length();
        Span span =
                text.span(from, Math.max(from + 1, start + name.stripTrailing().length()));
        if (reason.isEmpty()) {
            problems.add(Diagnostic.error(Code.LP740, span, "this line gives no reason")
                    .help("write the mutant's name, the word because, and why it may survive"));
        } else if (byName.putIfAbsent(name.strip(), new Entry(span, reason)) != null) {
            problems.add(Diagnostic.error(Code.LP742, span, "this mutant is accepted above already")
                    .help("take out one of the two lines"));
        }
    }

    /** Why a mutant may survive; empty where it may not. */
    public Optional<String> reason(Mutant mutant) {
        return Optional.ofNullable(byName.get(mutant.name())).map(Entry::reason);
    }

    /** Everything that is wrong with the list, in its order: lines that nobody can read, and those that apply to nothing. */
    public List<Diagnostic> problemsWith(MutantReport report) {
        Map<String, Fate> fates = report.mutants().stream()
                .collect(Collectors.toMap(each -> each.mutant().name(), MutantReport.Judged::fate));
        List<Diagnostic> all = new ArrayList<>(problems);
        byName.forEach((name, entry) -> {
            Fate fate = fates.get(name);
            if (!(fate instanceof Fate.Survives)) {
                all.add(Diagnostic.error(Code.LP741, entry.name(), "no such mutant survives" + why(fate))
                        .help("take the line out"));
            }
        });
        all.sort(Diagnostic.BY_PLACE);
        return all;
    }

    private static String why(@Nullable Fate fate) {
        if (fate instanceof Fate.Noticed noticed) {
            return ": the rehearsal \"" + noticed.title() + "\" notices it";
        } else if (fate instanceof Fate.SameMeaning) {
            return ": it decides just as the procedure does";
        }
        return fate instanceof Fate.Refused
                ? ": it does not compile"
                : "; none of these procedures has one of this name";
    }
}
