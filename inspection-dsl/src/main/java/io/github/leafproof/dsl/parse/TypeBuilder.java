package io.github.leafproof.dsl.parse;

import static io.github.leafproof.dsl.parse.SmallThings.need;
import static io.github.leafproof.dsl.parse.SmallThings.span;

import io.github.leafproof.dsl.syntax.TypeWords;
import java.util.stream.Collectors;
import org.antlr.v4.runtime.tree.ParseTree;
import org.jspecify.annotations.Nullable;

/** Types as written. */
final class TypeBuilder extends InspectionParserBaseVisitor<TypeWords> {

    private final SmallThings things;

    TypeBuilder(SmallThings things) {
        this.things = things;
    }

    TypeWords type(InspectionParser.@Nullable TypeContext context) {
        return need(context).accept(this);
    }

    @Override
    public TypeWords visitYesNoType(InspectionParser.YesNoTypeContext context) {
        return new TypeWords.YesNo(span(context));
    }

    @Override
    public TypeWords visitOneOfType(InspectionParser.OneOfTypeContext context) {
        return new TypeWords.OneOf(things.options(context.option()), span(context));
    }

    @Override
    public TypeWords visitGradeType(InspectionParser.GradeTypeContext context) {
        return new TypeWords.Grade(things.options(context.option()), span(context));
    }

    @Override
    public TypeWords visitSeriesType(InspectionParser.SeriesTypeContext context) {
        return new TypeWords.Series(named(context.typeWords()), span(context));
    }

    @Override
    public TypeWords visitNamedType(InspectionParser.NamedTypeContext context) {
        return named(context.typeWords());
    }

    private static TypeWords.Named named(InspectionParser.@Nullable TypeWordsContext context) {
        InspectionParser.TypeWordsContext words = need(context);
        String written = words.children.size() == 1
                ? words.getStart().getText()
                : words.children.stream().map(ParseTree::getText).collect(Collectors.joining(" "));
        return new TypeWords.Named(written, span(words));
    }
}
