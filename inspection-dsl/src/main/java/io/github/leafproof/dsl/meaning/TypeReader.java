package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.message.NameDiagnostics;
import io.github.leafproof.dsl.message.SeriesDiagnostics;
import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.message.TypeDiagnostics;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.TypeWords;
import io.github.leafproof.inspection.quantity.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The type that its words stand for. */
final class TypeReader {

    /** Nobody chooses among more; and looking each up in a longer list would take its time. */
    static final int MOST_OPTIONS = 1_000;

    private static final Map<String, Type> WORDS = Map.of(
            "number", Type.number(),
            "count", new Type.Count(),
            "text", new Type.Text(),
            "date", new Type.Date(),
            "gap", new Type.Gap(),
            "items", new Type.Items());

    private final Problems problems;

    TypeReader(Problems problems) {
        this.problems = problems;
    }

    @Nullable
    Type read(TypeWords words) {
        if (words instanceof TypeWords.YesNo) {
            return new Type.YesNo();
        }
        if (words instanceof TypeWords.OneOf oneOf) {
            return choice(oneOf.options(), false);
        }
        if (words instanceof TypeWords.Grade grade) {
            return choice(grade.options(), true);
        }
        if (words instanceof TypeWords.Named named) {
            return named(named);
        }
        return series((TypeWords.Series) words);
    }

    private @Nullable Type series(TypeWords.Series words) {
        Type of = named(words.of());
        if (of == null) {
            return null;
        }
        if (!(of instanceof Type.Measure) && !(of instanceof Type.Count)) {
            problems.add(SeriesDiagnostics.ofNoQuantity(words.of().span(), of.words()));
            return null;
        }
        return new Type.Series(of);
    }

    private @Nullable Type named(TypeWords.Named named) {
        Type word = WORDS.get(named.words());
        if (word != null) {
            return word;
        }
        Optional<Type> measure = dimension(named.words()).map(Type.Measure::new);
        if (measure.isEmpty()) {
            List<String> known = new ArrayList<>(Dimension.names());
            known.addAll(WORDS.keySet().stream().sorted().toList());
            problems.add(TypeDiagnostics.unknownType(named.span(), named.words(), known));
        }
        return measure.orElse(null);
    }

    /** A dimension in words, or a quotient of two: {@code length per time}. */
    private static Optional<Dimension> dimension(String words) {
        Optional<Dimension> whole = Dimension.named(words);
        int per = words.lastIndexOf(" per ");
        if (whole.isPresent() || per < 0) {
            return whole;
        }
        return dimension(words.substring(0, per))
                .flatMap(above -> divisor(words.substring(per + 5)).map(above::dividedBy));
    }

    private static Optional<Dimension> divisor(String words) {
        return switch (words) {
            case "turn", "degree" -> Optional.of(Dimension.ANGLE);
            case "second", "minute", "hour" -> Optional.of(Dimension.TIME);
            default -> Dimension.named(words);
        };
    }

    private @Nullable Type choice(List<Expression.Option> options, boolean graded) {
        if (options.size() > MOST_OPTIONS) {
            problems.add(
                    StructureDiagnostics.listTooLong(options.get(MOST_OPTIONS).span(), MOST_OPTIONS));
            return null;
        }
        Set<String> words = new LinkedHashSet<>();
        for (Expression.Option option : options) {
            if (!words.add(option.text())) {
                problems.add(NameDiagnostics.optionTwice(option.span(), option.text()));
            }
        }
        return new Type.Choice(List.copyOf(words), graded);
    }
}
