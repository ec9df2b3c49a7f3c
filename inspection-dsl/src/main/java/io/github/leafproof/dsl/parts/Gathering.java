package io.github.leafproof.dsl.parts;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.message.PartDiagnostics;
import io.github.leafproof.dsl.parse.Parsed;
import io.github.leafproof.dsl.parse.ProcedureParser;
import io.github.leafproof.dsl.parse.SourceReading;
import io.github.leafproof.dsl.source.Damage;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Part;
import io.github.leafproof.dsl.syntax.ProcedureText;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Puts a procedure together: its own file, and in the place of each {@code use} what the used file says, where it is used
 * first. A file that is used again says nothing new.
 */
public final class Gathering {

    /** A bench has a few dozen procedures; no single one is made of more files than this. */
    static final int MOST_FILES = 200;

    /** With so many mistakes in the files read so far, nobody needs those of further ones. */
    private static final int MOST_PROBLEMS = 100;

    private final Shelf shelf;
    private final List<Declaration> declarations = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final List<SourceText> sources = new ArrayList<>();
    private final List<Diagnostic> problems = new ArrayList<>();
    private final List<Damage> damage = new ArrayList<>();
    private final List<Span> lost = new ArrayList<>();
    private final Map<String, Shelf.Found> looked = new HashMap<>();
    private final Set<String> taken = new HashSet<>();
    // Not Java's own stack: a stranger's files may use each other in a chain of any length.
    private final Deque<Open> underway = new ArrayDeque<>();
    private long letters;
    private boolean full;

    private Gathering(Shelf shelf) {
        this.shelf = shelf;
    }

    /** A file that is being gone through: what it has still to say, and what it has used so far. */
    private record Open(String name, Iterator<Declaration> left, Map<String, Span> used) {}

    /**
     * The procedure that a text begins, with all that it uses.
     *
     * @param name the text's own name on the shelf, by which other files would use it
     */
    public static Gathered gather(SourceText text, String name, Shelf shelf) {
        return new Gathering(shelf).gather(text, name);
    }

    private Gathered gather(SourceText text, String name) {
        enter(name, text, ProcedureParser.parse(text));
        while (!underway.isEmpty()) {
            Open file = underway.getLast();
            if (!file.left.hasNext()) {
                underway.removeLast();
                continue;
            }
            Declaration next = file.left.next();
            declarations.add(next);
            if (next instanceof Declaration.Use use) {
                use(file, use);
            } else {
                refuseUseWithin(next);
            }
        }
        problems.sort(Diagnostic.inOrderOf(sources));
        // Whatever stood in a file that could not be had may have been declared there.
        Damage whole = Damage.of(lost, !lost.isEmpty());
        for (Damage each : damage) {
            whole = whole.and(each);
        }
        return new Gathered(new ProcedureText(text, declarations, parts, whole), problems);
    }

    private void enter(String name, SourceText text, Parsed parsed) {
        taken.add(name);
        letters += text.text().length();
        sources.add(text);
        problems.addAll(parsed.problems());
        if (!parsed.tree().damage().isNone()) {
            damage.add(parsed.tree().damage());
        }
        underway.add(new Open(name, parsed.tree().declarations().iterator(), new HashMap<>()));
    }

    private void use(Open file, Declaration.Use use) {
        Optional<Diagnostic> complaint = PartName.complaint(use.file());
        if (complaint.isPresent()) {
            lose(use, complaint.get());
            return;
        }
        String name = use.file().plain();
        Span first = file.used.putIfAbsent(name, use.file().span());
        if (first != null) {
            problems.add(PartDiagnostics.usedTwice(use.file().span(), first));
        } else if (full || problems.size() >= MOST_PROBLEMS) {
            lost.add(use.span());
        } else if (!isCircle(name, use)) {
            take(looked.computeIfAbsent(name, shelf::find), name, use);
        }
    }

    private void lose(Declaration.Use use, Diagnostic why) {
        problems.add(why);
        lost.add(use.span());
    }

    /** Blocks nest no deeper than the parser lets them, so Java's stack bears this. */
    private void refuseUseWithin(Declaration block) {
        List<Declaration> body = block instanceof Declaration.Stage stage
                ? stage.body()
                : block instanceof Declaration.For loop ? loop.body() : List.of();
        for (Declaration inner : body) {
            if (inner instanceof Declaration.Use use) {
                lose(use, PartDiagnostics.useInBlock(use.span()));
            } else {
                refuseUseWithin(inner);
            }
        }
    }

    private void take(Shelf.Found found, String name, Declaration.Use use) {
        Span place = use.file().span();
        if (found instanceof Shelf.Found.There there) {
            take(there.part(), use);
        } else if (found instanceof Shelf.Found.Missing missing) {
            List<String> others = missing.others().stream()
                    .filter(other -> !taken.contains(other))
                    .toList();
            lose(use, PartDiagnostics.missing(place, name, others));
        } else if (found instanceof Shelf.Found.Outside) {
            lose(use, PartDiagnostics.linkLeadsOut(place, name));
        } else if (found instanceof Shelf.Found.Unreadable unreadable && taken.add(name)) {
            unreadable.problems().forEach(problem -> {
                sources.add(problem.source());
                lose(use, PartDiagnostics.usedHere(problem, place));
            });
        }
    }

    private void take(Part part, Declaration.Use use) {
        Span place = use.file().span();
        if (isCircle(part.name(), use) || taken.contains(part.name())) {
            return;
        }
        if (parts.size() == MOST_FILES || letters + part.source().text().length() > SourceReading.LARGEST) {
            lose(use, PartDiagnostics.tooMuch(place, MOST_FILES, SourceReading.LARGEST_MEBIBYTES));
            full = true;
            return;
        }
        Parsed parsed = ProcedureParser.parse(part.source());
        Optional<Declaration.Header> header = headerOf(parsed);
        if (header.isPresent()) {
            taken.add(part.name());
            sources.add(part.source());
            lose(use, PartDiagnostics.headerInPart(header.get().span(), place));
            return;
        }
        parts.add(part);
        enter(part.name(), part.source(), parsed);
    }

    private static Optional<Declaration.Header> headerOf(Parsed parsed) {
        return parsed.tree().declarations().stream()
                .filter(Declaration.Header.class::isInstance)
                .map(Declaration.Header.class::cast)
                .findFirst();
    }

    /** Says so when a file would be read in order to read itself. */
    private boolean isCircle(String name, Declaration.Use use) {
        List<String> chain = underway.stream().map(Open::name).toList();
        int start = chain.indexOf(name);
        if (start < 0) {
            return false;
        }
        List<String> path = new ArrayList<>(chain.subList(start, chain.size()));
        path.add(name);
        problems.add(PartDiagnostics.circle(use.file().span(), path));
        return true;
    }
}
