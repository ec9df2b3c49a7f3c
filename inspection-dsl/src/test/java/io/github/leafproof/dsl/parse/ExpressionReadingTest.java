package io.github.leafproof.dsl.parse;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Text;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How values and conditions are read: each is written back with brackets around every pair, so that the order shows. */
class ExpressionReadingTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.05 mm | 0.05<mm>",
                "0.05mm | 0.05<mm>",
                "95 % | 95<%>",
                "21 \u00B0C | 21<\u00B0C>",
                "21 degC | 21<degC>",
                "4 in | 4<in>",
                "4 in in mm | (4<in> in mm)",
                "0.5 in thou | (0.5<> in thou)",
                "0.45 mm per turn | 0.45<mm per turn>",
                "4.5 in\u00B7lbf | 4.5<in\u00B7lbf>",
                "4.5 in\u22C5lbf | 4.5<in\u00B7lbf>",
                "30 mm\u00B2 | 30<mm\u00B2>",
                "30 mm^2 | 30<mm2>",
                "60 km/h | 60<km/h>",
                "60 km / h | (60<km> / h)",
                "60 mm/2 | (60<mm> / 2<>)",
                "9 200 rpm | 9200<rpm>",
                "9\u00A0200.5 rpm | 9200.5<rpm>",
                "12\u2009345\u202F678 | 12345678<>",
                "1.5e-3 m | 1.5e-3<m>",
                "1.5e\u22123 m | 1.5e-3<m>",
                "3 mm \u2212 2 mm | (3<mm> - 2<mm>)",
                "a \u00D7 b \u00F7 c | ((a * b) / c)",
                "a + b * c ^ d ^ e | (a + (b * (c ^ (d ^ e))))",
                "a - b - c | ((a - b) - c)",
                "-a ^ 2 | (-(a ^ 2<>))",
                "2 ^ -1 | (2<> ^ (-1<>))",
                "(a - b) / p in turns | (((a - b) / p) in turns)",
                "(a - b) * (c + d) | ((a - b) * (c + d))",
                "engine.materials.push_rod | engine.materials.push_rod",
                "lash[valve][side] | lash[valve][side]",
                "f(a, 3 mm) + g() | (f(a, 3<mm>) + g())",
                "a or b and not c at most 3 | (a or (b and (not (c at most 3<>))))",
                "a = b | (a is b)",
                "a <= b or a >= c | ((a at most b) or (a at least c))",
                "a \u2264 b or a \u2265 c | ((a at most b) or (a at least c))",
                "a < b or a > c | ((a < b) or (a > c))",
                "a is not no | (a is not no)",
                "a is one | (a is one)",
                "a is one of b, \"c d\" | (a is one of b&c d)",
                "f(a is one of b, c) | f((a is one of b), c)",
                "f((a is one of b, c)) | f((a is one of b&c))",
                "a at least 1 mm + 2 mm tolerate to 0.5 mm | (a at least (1<mm> + 2<mm>) to 0.5<mm>)",
                "a between 1 and 2 and b | ((a between 1<> 2<>) and b)",
                "a between 1 and 2 tolerate to 0, 3 | (a between 1<> 2<> to 0<> 3<>)",
                "a within 1 of b tolerate to 2 | (a within 1<> of b to 2<>)",
                "engine.box has all of items | (engine.box has items)",
                "if a then 1 else if b then 2 else 3 | (if a 1<> (if b 2<> 3<>))",
                "choose x { metal: 0 plastic: 1 mm } | {x metal=0<> plastic=1<mm>}",
                "choose x { a: 0 mm \"b c\": 1 mm otherwise: 2 mm } | {x a=0<mm> b c=1<mm> 2<mm>}",
            })
    void an_expression_is_read_in_this_order(String written, String read) {
        assertThat(shown(expression(written))).isEqualTo(read);
    }

    @Test
    void an_answer_for_several_options_begins_on_its_own_line() {
        assertThat(shown(expression("choose x { a: 1\n b, c: 2 }"))).isEqualTo("{x a=1<> b&c=2<>}");
    }

    @Test
    void a_unit_stands_on_the_line_of_its_number() {
        assertThat(ProcedureParser.parse(SourceText.of("a", "let x = 3\nmm")).problems())
                .hasSize(1);
        assertThat(shown(expression("3 // three\n"))).isEqualTo("3<>");
    }

    @Test
    void a_hole_knows_its_place_unit_and_digits() {
        String written = "let x = \"Turn it {y + 1 mm in thou, 1 digit} \\\"now\\\" \\{\\}\"";
        Text text = ((Expression.Quoted) let(written)).text();

        assertThat(text.pieces()).hasSize(3);
        Text.Hole hole = (Text.Hole) text.pieces().get(1);
        assertThat(hole.digits()).isEqualTo(1);
        assertThat(shown(hole.value())).isEqualTo("((y + 1<mm>) in thou)");
        assertThat(written.substring(hole.span().start(), hole.span().end())).isEqualTo("{y + 1 mm in thou, 1 digit}");
        assertThat(written.substring(
                        hole.value().span().start(), hole.value().span().end()))
                .isEqualTo("y + 1 mm in thou");
        assertThat(text.plain()).isEqualTo("Turn it  \"now\" {}");
        assertThat(text.isPlain()).isFalse();
    }

    @Test
    void a_text_in_a_hole_of_a_text_is_a_text() {
        Text text = ((Expression.Quoted) let("let x = \"{choose y { a: \"one {z}\" b: \"two\" }}\"")).text();

        assertThat(shown(((Text.Hole) text.pieces().get(0)).value())).isEqualTo("{y a=\"one \" b=\"two\"}");
    }

    @Test
    void a_number_and_its_unit_know_their_places() {
        String written = "let x = 9 200 mm per turn";
        Expression.Amount amount = (Expression.Amount) let(written);

        assertThat(written.substring(amount.span().start(), amount.span().end()))
                .isEqualTo("9 200 mm per turn");
        assertThat(written.substring(
                        amount.unitSpan().start(), amount.unitSpan().end()))
                .isEqualTo("mm per turn");
    }

    @Test
    void brackets_belong_to_the_place_of_what_they_hold_together() {
        String written = "let x = (a - b) / (c - d)";
        Expression quotient = let(written);

        assertThat(written.substring(quotient.span().start(), quotient.span().end()))
                .isEqualTo("(a - b) / (c - d)");
    }

    private static Expression expression(String written) {
        return let("let x = " + written);
    }

    private static Expression let(String written) {
        Parsed parsed = ProcedureParser.parse(SourceText.of("test", written));
        assertThat(parsed.problems()).isEmpty();
        return ((Declaration.Let) parsed.tree().declarations().get(0)).value();
    }

    private static String shown(Expression expression) {
        if (expression instanceof Expression.Amount amount) {
            return amount.number() + "<" + amount.unit() + ">";
        } else if (expression instanceof Expression.Quoted quoted) {
            return "\"" + quoted.text().plain() + "\"";
        } else if (expression instanceof Expression.YesNo yesNo) {
            return yesNo.value() ? "yes" : "no";
        } else if (expression instanceof Expression.Reference reference) {
            return reference.target().toString();
        } else if (expression instanceof Expression.EngineFact fact) {
            return "engine." + fact.path().stream().map(Object::toString).collect(Collectors.joining("."));
        } else if (expression instanceof Expression.Call call) {
            return call.function()
                    + call.arguments().stream()
                            .map(ExpressionReadingTest::shown)
                            .collect(Collectors.joining(", ", "(", ")"));
        } else if (expression instanceof Expression.Negated negated) {
            return "(-" + shown(negated.operand()) + ")";
        } else if (expression instanceof Expression.Not not) {
            return "(not " + shown(not.operand()) + ")";
        } else if (expression instanceof Expression.InUnit inUnit) {
            return "(" + shown(inUnit.value()) + " in " + inUnit.unit() + ")";
        }
        return shownPair(expression);
    }

    private static String shownPair(Expression expression) {
        if (expression instanceof Expression.Arithmetic sum) {
            return "(" + shown(sum.left()) + " " + sum.operator().sign() + " " + shown(sum.right()) + ")";
        } else if (expression instanceof Expression.Joined joined) {
            return "(" + shown(joined.left()) + (joined.and() ? " and " : " or ") + shown(joined.right()) + ")";
        } else if (expression instanceof Expression.Compared compared) {
            String tolerated = compared.tolerated() == null ? "" : " to " + shown(compared.tolerated());
            return "(" + shown(compared.left()) + " " + compared.relation().words() + " " + shown(compared.right())
                    + tolerated + ")";
        } else if (expression instanceof Expression.Between between) {
            String tolerated = between.tolerated().isEmpty()
                    ? ""
                    : between.tolerated().stream()
                            .map(ExpressionReadingTest::shown)
                            .collect(Collectors.joining(" ", " to ", ""));
            return "(" + shown(between.value()) + " between " + shown(between.low()) + " " + shown(between.high())
                    + tolerated + ")";
        } else if (expression instanceof Expression.Within within) {
            String tolerated = within.tolerated() == null ? "" : " to " + shown(within.tolerated());
            return "(" + shown(within.value()) + " within " + shown(within.tolerance()) + " of "
                    + shown(within.middle()) + tolerated + ")";
        } else if (expression instanceof Expression.OneOf oneOf) {
            return "(" + shown(oneOf.value()) + " is one of " + options(oneOf.options()) + ")";
        } else if (expression instanceof Expression.HasAllOf has) {
            return "(" + shown(has.items()) + " has " + shown(has.wanted()) + ")";
        } else if (expression instanceof Expression.IfElse choice) {
            return "(if " + shown(choice.condition()) + " " + shown(choice.then()) + " " + shown(choice.otherwise())
                    + ")";
        }
        Expression.Choose choose = (Expression.Choose) expression;
        return "{" + shown(choose.subject()) + " "
                + choose.arms().stream()
                        .map(arm -> options(arm.options()) + "=" + shown(arm.value()))
                        .collect(Collectors.joining(" "))
                + (choose.otherwise() == null ? "" : " " + shown(choose.otherwise())) + "}";
    }

    private static String options(java.util.List<Expression.Option> options) {
        return options.stream().map(Expression.Option::text).collect(Collectors.joining("&"));
    }
}
