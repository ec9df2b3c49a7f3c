package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.message.NameDiagnostics;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.inspection.engine.CardFact;
import io.github.leafproof.inspection.engine.FactKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The facts of an engine: the standard ones of its card, those that the shop adds, and what the job sheet says of it. */
final class EngineFacts {

    private final Problems problems;
    private final Names names;

    EngineFacts(Problems problems, Names names) {
        this.problems = problems;
        this.names = names;
    }

    @Nullable
    Typed fact(Expression.EngineFact fact) {
        String path = fact.path().stream().map(Object::toString).collect(Collectors.joining("."));
        Optional<CardFact> known = CardFact.named(path);
        if (known.isEmpty() && names.cardFacts().isDeclared(path)) {
            Type own = names.cardFacts().use(path);
            return own == null ? null : new Typed(names.fact(path, own), own);
        }
        if (known.isEmpty()) {
            List<String> all = new ArrayList<>(problems.near(names.cardFacts().names()));
            CardFact.all().forEach(each -> all.add(each.name()));
            problems.add(NameDiagnostics.unknownFact(fact.span(), path, all));
            return null;
        }
        Type type = type(known.get().kind());
        names.expressions().sites().facts.putIfAbsent("engine." + path, fact.span());
        return new Typed(names.fact(path, type), type);
    }

    private static Type type(FactKind kind) {
        if (kind instanceof FactKind.Measure measure) {
            return new Type.Measure(measure.dimension());
        }
        if (kind instanceof FactKind.OneOf oneOf) {
            return new Type.Choice(oneOf.choices(), false);
        }
        if (kind instanceof FactKind.YesNo) {
            return new Type.YesNo();
        }
        return kind instanceof FactKind.Text ? new Type.Text() : new Type.Items();
    }
}
