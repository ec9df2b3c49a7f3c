package io.github.leafproof.dsl.junit;

import io.github.leafproof.dsl.rehearsal.Played;
import io.github.leafproof.dsl.rehearsal.RehearsalText;
import io.github.leafproof.dsl.rehearsal.Rehearsed;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import java.io.File;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.platform.commons.JUnitException;
import org.junit.platform.engine.TestSource;
import org.junit.platform.engine.TestTag;
import org.junit.platform.engine.UniqueId;
import org.junit.platform.engine.support.descriptor.AbstractTestDescriptor;
import org.junit.platform.engine.support.descriptor.FilePosition;
import org.junit.platform.engine.support.descriptor.FileSource;
import org.junit.platform.engine.support.hierarchical.Node;
import org.opentest4j.AssertionFailedError;

/** A rehearsal: a test that fails where something comes out otherwise than expected. */
final class RehearsalDescriptor extends AbstractTestDescriptor implements Node<RehearsalContext> {

    static final String SEGMENT = "rehearsal";

    private final Declaration.Rehearse written;

    RehearsalDescriptor(UniqueId id, String name, Declaration.Rehearse written) {
        super(id, name, source(written.title().span()));
        this.written = written;
    }

    /** The file that it stands in, which may be a part, and the place of its title in it. */
    private static TestSource source(Span title) {
        SourceText.Position at = title.source().at(title.start());
        return FileSource.from(new File(title.source().name()), FilePosition.from(at.line(), at.column()));
    }

    @Override
    public Type getType() {
        return Type.TEST;
    }

    @Override
    public Set<TestTag> getTags() {
        return getParent().map(parent -> Set.copyOf(parent.getTags())).orElse(Set.of());
    }

    @Override
    public RehearsalContext execute(RehearsalContext context, Node.DynamicTestExecutor dynamic) {
        ProcedureDescriptor procedure = (ProcedureDescriptor) getParent().orElseThrow();
        Played played = procedure.play(written, context);
        Rehearsed rehearsed = played.rehearsed();
        if (!rehearsed.problems().isEmpty()) {
            throw new JUnitException("the rehearsal cannot be run\n" + RehearsalText.why(played));
        }
        if (!rehearsed.isAsExpected()) {
            throw new AssertionFailedError(
                    RehearsalText.why(played),
                    words(rehearsed.surprises(), Rehearsed.Surprise::expected),
                    words(rehearsed.surprises(), Rehearsed.Surprise::got));
        }
        return context;
    }

    /** Expected and got, side by side in editors that show both. */
    private static String words(List<Rehearsed.Surprise> surprises, Function<Rehearsed.Surprise, String> outcome) {
        return surprises.stream()
                .map(surprise -> surprise.of() + " " + outcome.apply(surprise))
                .collect(Collectors.joining("\n"));
    }
}
