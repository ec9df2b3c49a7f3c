package io.github.leafproof.dsl.junit;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.rehearsal.Played;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Part;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.platform.commons.JUnitException;
import org.junit.platform.engine.TestTag;
import org.junit.platform.engine.UniqueId;
import org.junit.platform.engine.support.descriptor.AbstractTestDescriptor;
import org.junit.platform.engine.support.descriptor.FileSource;
import org.junit.platform.engine.support.hierarchical.Node;

/** A procedure: the container of its rehearsals. One with mistakes has none, and fails with what is wrong with it. */
final class ProcedureDescriptor extends AbstractTestDescriptor implements Node<RehearsalContext> {

    static final String SEGMENT = "procedure";

    private final Path file;
    private final Path root;
    private final Compiled compiled;

    /** By their titles, which stay the same when rehearsals change places; the compiler lets no title stand twice. */
    private final Map<String, Declaration.Rehearse> cases = new LinkedHashMap<>();

    private ProcedureDescriptor(UniqueId id, String name, Path file, Path root, Compiled compiled) {
        super(id, name, FileSource.from(file.toFile()));
        this.file = file;
        this.root = root;
        this.compiled = compiled;
        compiled.procedure()
                .map(Procedure::rehearsals)
                .orElse(List.of())
                .forEach(each -> cases.put(each.title().plain(), each));
    }

    /**
     * The procedure in a file.
     *
     * @param root the folder that the files it uses are named from; null where it is the file's own
     */
    static ProcedureDescriptor of(UniqueId id, Path file, @Nullable Path root) {
        Path named = root == null ? file.resolveSibling("") : root;
        Compiled compiled = Procedure.read(file, named);
        String name = compiled.procedure()
                .map(procedure -> procedure.graph().identity().title())
                .orElse(String.valueOf(file.getFileName()));
        return new ProcedureDescriptor(id, name, file, named, compiled);
    }

    /** The unique ids of its rehearsals, in the order of the file. */
    List<UniqueId> caseIds() {
        return cases.keySet().stream().map(this::idOf).toList();
    }

    /** The rehearsal that a line of the procedure's own file stands in. */
    Optional<UniqueId> caseAt(int line) {
        return cases.entrySet().stream()
                .filter(each -> isAt(each.getValue(), line))
                .findFirst()
                .map(each -> idOf(each.getKey()));
    }

    private boolean isAt(Declaration.Rehearse each, int line) {
        SourceText source = each.span().source();
        boolean isOwn = compiled.procedure()
                .filter(procedure -> procedure.source() == source)
                .isPresent();
        return isOwn
                && source.at(each.span().start()).line() <= line
                && source.at(each.span().end()).line() >= line;
    }

    private UniqueId idOf(String name) {
        return getUniqueId().append(RehearsalDescriptor.SEGMENT, name);
    }

    /** A rehearsal by the name that its unique id has for it. */
    Optional<RehearsalDescriptor> rehearsal(String name) {
        return Optional.ofNullable(cases.get(name)).map(written -> new RehearsalDescriptor(idOf(name), name, written));
    }

    Played play(Declaration.Rehearse written, RehearsalContext context) {
        return Rehearsing.of(compiled.orElseThrow(), file.resolveSibling(""), root, context.files())
                .play(written);
    }

    @Override
    public Type getType() {
        return Type.CONTAINER;
    }

    /** Otherwise one that has no tests, for it has mistakes, would be left out, and nobody would hear of them. */
    @Override
    public boolean mayRegisterTests() {
        return compiled.procedure().isEmpty();
    }

    /** The procedure's name, and what the parts it uses are called, without folder and ending. */
    @Override
    public Set<TestTag> getTags() {
        Set<TestTag> tags = new LinkedHashSet<>();
        compiled.procedure().ifPresent(procedure -> {
            tags.add(TestTag.create(procedure.graph().identity().name()));
            procedure.parts().stream()
                    .map(ProcedureDescriptor::nameOf)
                    .filter(TestTag::isValid)
                    .forEach(name -> tags.add(TestTag.create(name)));
        });
        return tags;
    }

    private static String nameOf(Part part) {
        String name = part.name().substring(part.name().lastIndexOf('/') + 1);
        return name.substring(0, name.lastIndexOf('.'));
    }

    @Override
    public String getLegacyReportingName() {
        return compiled.procedure()
                .map(procedure -> procedure.graph().identity().name())
                .orElseGet(this::getDisplayName);
    }

    @Override
    public RehearsalContext before(RehearsalContext context) {
        if (compiled.procedure().isEmpty()) {
            throw new JUnitException(
                    "the procedure has mistakes\n" + DiagnosticPrinter.print(compiled.diagnostics(), false));
        }
        return context;
    }
}
