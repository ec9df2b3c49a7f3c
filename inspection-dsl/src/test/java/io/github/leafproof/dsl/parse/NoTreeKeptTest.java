package io.github.leafproof.dsl.parse;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Expression;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A compiled procedure holds on to nothing of the parser: neither a tree nor a word of one, which would be many times as
 * large as the text. Everything is looked at that can be reached from it through the fields of our classes, of what Java
 * makes of our lambda expressions, and through collections.
 */
class NoTreeKeptTest {

    private static final Path BENCH = Path.of("..", "examples", "bench");

    @ParameterizedTest
    @MethodSource("procedures")
    void a_compiled_procedure_holds_nothing_of_the_parser(String file) {
        Compiled compiled = Procedure.read(BENCH.resolve(file));
        Procedure procedure = compiled.orElseThrow();
        procedure.sayings();

        List<Object> held = reachable(compiled);

        assertThat(held).hasAtLeastOneElementOfType(Expression.class).hasAtLeastOneElementOfType(LimitsHeld.class);
        assertThat(held).contains(procedure.graph()).noneMatch(NoTreeKeptTest::isOfTheParser);
        assertThat(reachable(procedure.written())).noneMatch(NoTreeKeptTest::isOfTheParser);
    }

    static Stream<String> procedures() {
        return Stream.of("first_look.inspection", "running_in.inspection", "used_engine.inspection");
    }

    @Test
    void nor_do_the_mistakes_of_a_text_that_was_read_twice() {
        Compiled compiled = Procedure.compile(SourceText.of("slips.inspection", """
                procedure slips "Slips" revision 1
                observe play : length ask "Play? {play in}"
                chek loose "Loose" { require play at most 0.1 mm }
                check play_held "Play" { require play at most at most }
                """));

        assertThat(compiled.diagnostics()).hasSizeGreaterThan(2);
        assertThat(reachable(compiled)).noneMatch(NoTreeKeptTest::isOfTheParser);
    }

    @Test
    void a_tree_that_something_held_would_be_found() {
        Problems problems = new Problems(SourceText.of("one.inspection", "use \"a\""));
        Words words = WordReading.read(problems, 0, 7);
        InspectionParser parser = new InspectionParser(new CommonTokenStream(new ListTokenSource(words.list())));
        parser.allowNesting(1);
        InspectionParser.FileContext tree = parser.file();
        Supplier<String> later = () -> tree.getText();

        assertThat(reachable(Optional.of(Map.of("later", List.of(later)))))
                .anyMatch(InspectionParser.UseContext.class::isInstance)
                .anyMatch(NoTreeKeptTest::isOfTheParser);
    }

    private static boolean isOfTheParser(Object object) {
        for (Class<?> type = object.getClass(); type != null; type = type.getSuperclass()) {
            if (type.getName().startsWith("org.antlr.")
                    || type.getPackage() == ProcedureParser.class.getPackage()
                    || Arrays.stream(type.getInterfaces())
                            .anyMatch(face -> face.getName().startsWith("org.antlr."))) {
                // What is written in this class is no part of the parser.
                return type != NoTreeKeptTest.class && !type.getName().startsWith(NoTreeKeptTest.class.getName());
            }
        }
        return false;
    }

    /** All that an object leads to, each thing once. */
    private static List<Object> reachable(Object from) {
        Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<Object> left = new ArrayDeque<>();
        add(from, seen, left);
        while (!left.isEmpty()) {
            next(left.remove()).forEach(each -> add(each, seen, left));
        }
        return List.copyOf(seen);
    }

    private static void add(@Nullable Object object, Set<Object> seen, Deque<Object> left) {
        if (object != null && !(object instanceof Class) && !(object instanceof Enum) && seen.add(object)) {
            left.add(object);
        }
    }

    private static Stream<?> next(Object object) {
        if (object instanceof Map<?, ?> map) {
            return map.entrySet().stream().flatMap(entry -> Stream.of(entry.getKey(), entry.getValue()));
        }
        if (object instanceof Collection<?> many) {
            return many.stream();
        }
        if (object instanceof Optional<?> one) {
            return one.stream();
        }
        if (object instanceof Object[] many) {
            return Arrays.stream(many);
        }
        return fields(object);
    }

    /** What the fields of our own classes, and of the parser generator's, hold. Those of Java and of the core know neither. */
    private static Stream<Object> fields(Object object) {
        Stream<Object> all = Stream.of();
        for (Class<?> type = object.getClass(); type != null; type = type.getSuperclass()) {
            boolean known = type.getName().startsWith("io.github.leafproof.dsl.")
                    || type.getName().startsWith("org.antlr.");
            if (known) {
                all = Stream.concat(
                        all,
                        Arrays.stream(type.getDeclaredFields())
                                .filter(field -> !Modifier.isStatic(field.getModifiers()))
                                .filter(field -> !field.getType().isPrimitive())
                                .flatMap(field -> Stream.ofNullable(held(field, object))));
            }
        }
        return all;
    }

    private static @Nullable Object held(Field field, Object object) {
        try {
            field.setAccessible(true);
            return field.get(object);
        } catch (IllegalAccessException e) {
            throw new AssertionError("a field that nobody can look into: " + field, e);
        }
    }
}
