package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.message.NameDiagnostics;
import io.github.leafproof.dsl.message.TypeDiagnostics;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.inspection.engine.CardFact;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** The facts that a shop keeps on its engine cards beside the standard ones, as the procedure declares them. */
final class CardFacts {

    private final Problems problems;
    private final Map<String, Type> types = new HashMap<>();
    private final Set<String> declared;
    private final Predicate<String> mayBeLost;
    private final Set<String> used = new HashSet<>();

    CardFacts(Problems problems, Outline outline, TypeReader reader) {
        this.problems = problems;
        this.declared = outline.cardFacts.keySet();
        this.mayBeLost = outline::isBroken;
        outline.cardFacts.forEach((name, fact) -> {
            Type type = type(fact, reader);
            if (type != null) {
                types.put(name, type);
            }
        });
    }

    private @Nullable Type type(Declaration.CardFact fact, TypeReader reader) {
        String name = fact.name().text();
        boolean isStandard = CardFact.all().stream()
                .anyMatch(known -> known.name().equals(name) || known.name().startsWith(name + "."));
        if (isStandard) {
            problems.add(NameDiagnostics.standardFact(fact.name()));
        }
        Type type = reader.read(fact.type());
        if (type instanceof Type.Gap || type instanceof Type.Series) {
            problems.add(TypeDiagnostics.notOnACard(fact.type().span(), type.words()));
            return null;
        }
        return isStandard ? null : type;
    }

    /** Whether the procedure declares such a fact, be it in a way that makes sense or not, or may have done so where text is lost. */
    boolean isDeclared(String name) {
        return declared.contains(name) || mayBeLost.test(name);
    }

    /** The names that may be spoken of. */
    Set<String> names() {
        return declared;
    }

    /** What a declared fact is, or null where its declaration makes no sense. Whoever asks uses it. */
    @Nullable
    Type use(String name) {
        used.add(name);
        return types.get(name);
    }

    boolean isUsed(String name) {
        return used.contains(name);
    }
}
