package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.parse.Passage.Group;
import io.github.leafproof.dsl.parse.Passage.Shape;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Predicate;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.tree.ParseTree;
import org.antlr.v4.runtime.tree.TerminalNode;

/**
 * From the grammar's tree to passages. It names as few rules as it can: a rule that is new to the grammar becomes a row
 * of its parts, a list where it has commas, and a block where it has braces, without a word about it here.
 */
final class PageBuilder {

    private final PageWords words;

    PageBuilder(PageWords words) {
        this.words = words;
    }

    Group file(InspectionParser.FileContext file) {
        return new Group(Shape.FILE, each(file.children));
    }

    private List<Passage> each(List<ParseTree> trees) {
        List<Passage> parts = new ArrayList<>();
        for (ParseTree tree : trees) {
            if (tree instanceof TerminalNode || tree.getChildCount() > 0) {
                parts.add(passage(tree));
            }
        }
        return parts;
    }

    private Passage passage(ParseTree tree) {
        if (tree instanceof TerminalNode node) {
            return word(node);
        }
        ParserRuleContext rule = (ParserRuleContext) tree;
        if (rule instanceof InspectionParser.ItemContext) {
            return new Group(Shape.DECLARATION, row(rule.children));
        }
        if (rule instanceof InspectionParser.ObserveClausesContext) {
            return new Group(Shape.CLAUSES, each(rule.children));
        }
        if (isSign(rule.getChild(0), InspectionParser.LBRACE)) {
            Shape shape = rule instanceof InspectionParser.ArmsContext ? Shape.CHOICE : Shape.BLOCK;
            return new Group(shape, each(rule.children));
        }
        return rule.getChildCount() == 1 ? passage(rule.getChild(0)) : joined(rule);
    }

    private Passage joined(ParserRuleContext rule) {
        if (isChain(rule)) {
            return chain(rule);
        }
        if (rule instanceof InspectionParser.IfElseContext) {
            return group(Shape.CHAIN, rule.children, PageBuilder::beginsBranch);
        }
        if (rule instanceof InspectionParser.ComparisonContext) {
            List<ParseTree> flat = new ArrayList<>();
            rule.children.forEach(part -> flat.addAll(
                    part instanceof ParserRuleContext inner && isComparing(part) ? inner.children : List.of(part)));
            return group(Shape.CHAIN, flat, PageBuilder::beginsRelation);
        }
        if (isList(rule)) {
            return list(rule.children);
        }
        return new Group(Shape.ROW, row(rule.children));
    }

    private static boolean isComparing(ParseTree tree) {
        return tree instanceof InspectionParser.ComparingContext;
    }

    private static boolean beginsBranch(ParseTree tree) {
        return isSign(tree, InspectionParser.THEN) || isSign(tree, InspectionParser.ELSE);
    }

    /** The first word behind the value that is compared; the second limit of two; what is tolerated. */
    private static boolean beginsRelation(ParseTree tree) {
        boolean firstOfRelation =
                isComparing(tree.getParent()) && tree.getParent().getChild(0) == tree;
        return firstOfRelation
                || isSign(tree, InspectionParser.AND)
                || tree instanceof InspectionParser.TolerateContext
                || tree instanceof InspectionParser.TolerateBothContext;
    }

    private static boolean isList(ParserRuleContext rule) {
        return rule instanceof InspectionParser.ConditionContext
                || rule instanceof InspectionParser.BothContext
                || rule instanceof InspectionParser.OutcomesContext
                || rule instanceof InspectionParser.GradeTypeContext
                || rule instanceof InspectionParser.TrialsContext;
    }

    private static boolean isChain(ParserRuleContext rule) {
        return rule instanceof InspectionParser.AndContext
                || rule instanceof InspectionParser.OrContext
                || rule instanceof InspectionParser.ProductContext
                || rule instanceof InspectionParser.AdditionContext
                || rule instanceof InspectionParser.PowerContext;
    }

    /** A chain leans to the left as deep as it is long, so it is followed by a loop. */
    private Passage chain(ParserRuleContext last) {
        Deque<ParserRuleContext> links = new ArrayDeque<>();
        ParseTree left = last;
        while (left.getClass() == last.getClass()) {
            links.push((ParserRuleContext) left);
            left = left.getChild(0);
        }
        List<Passage> parts = new ArrayList<>();
        parts.add(passage(left));
        links.forEach(link -> parts.add(rowOf(link.children.subList(1, link.children.size()))));
        return new Group(Shape.CHAIN, parts);
    }

    private Passage group(Shape shape, List<ParseTree> trees, Predicate<ParseTree> beginsNext) {
        List<Passage> parts = new ArrayList<>();
        int start = 0;
        for (int at = 1; at <= trees.size(); at++) {
            if (at == trees.size() || beginsNext.test(trees.get(at))) {
                parts.add(rowOf(trees.subList(start, at)));
                start = at;
            }
        }
        return parts.size() == 1 ? parts.get(0) : new Group(shape, parts);
    }

    private Passage rowOf(List<ParseTree> trees) {
        List<Passage> parts = row(trees);
        return parts.size() == 1 ? parts.get(0) : new Group(Shape.ROW, parts);
    }

    /** The parts of a rule, those between which commas stand taken together. */
    private List<Passage> row(List<ParseTree> trees) {
        int first = 0;
        while (first < trees.size() && !isComma(trees.get(first))) {
            first++;
        }
        int last = trees.size() - 1;
        while (last > first && !isComma(trees.get(last))) {
            last--;
        }
        if (first == 0 || first >= last + 1 || last + 1 >= trees.size()) {
            return each(trees);
        }
        List<Passage> parts = each(trees.subList(0, first - 1));
        parts.add(list(trees.subList(first - 1, last + 2)));
        parts.addAll(each(trees.subList(last + 2, trees.size())));
        return parts;
    }

    private Passage list(List<ParseTree> trees) {
        List<Passage> parts = new ArrayList<>();
        int start = 0;
        for (int at = 1; at <= trees.size(); at++) {
            if (at == trees.size() || isComma(trees.get(at - 1)) || beginsPart(trees.get(at))) {
                List<Passage> part = each(trees.subList(start, at));
                parts.add(part.size() == 1 ? part.get(0) : new Group(Shape.ROW, part));
                start = at;
            }
        }
        return parts.size() == 1 ? parts.get(0) : new Group(Shape.LIST, parts);
    }

    private static boolean beginsPart(ParseTree tree) {
        return isSign(tree, InspectionParser.AND)
                || isSign(tree, InspectionParser.OR)
                || isSign(tree, InspectionParser.LESS)
                || tree instanceof InspectionParser.TrialContext;
    }

    private static boolean isComma(ParseTree tree) {
        return isSign(tree, InspectionParser.COMMA) || isSign(tree, InspectionParser.ARGUMENT_COMMA);
    }

    private static boolean isSign(ParseTree tree, int type) {
        return tree instanceof TerminalNode node && node.getSymbol().getType() == type;
    }

    private Passage.Word word(TerminalNode node) {
        ParseTree parent = node.getParent();
        boolean leansBack = false;
        boolean leansOn = false;
        switch (node.getSymbol().getType()) {
            case InspectionParser.COMMA,
                    InspectionParser.ARGUMENT_COMMA,
                    InspectionParser.RPAREN,
                    InspectionParser.RBRACKET -> leansBack = true;
            case InspectionParser.LBRACKET, InspectionParser.FULL_STOP -> {
                leansBack = true;
                leansOn = true;
            }
            case InspectionParser.LPAREN -> {
                leansBack = isBehindName(node, parent, 1) || isBehindName(node, parent, 2);
                leansOn = true;
            }
            case InspectionParser.COLON -> leansBack = parent instanceof InspectionParser.ArmContext;
            case InspectionParser.MINUS -> leansOn = parent.getChild(0) == node;
            case InspectionParser.DIVIDED_BY -> {
                leansBack = parent instanceof InspectionParser.YesNoTypeContext;
                leansOn = leansBack;
            }
            default -> {}
        }
        return words.next(node.getSymbol(), leansBack, leansOn);
    }

    /** Whether a parenthesis is the one of a function. */
    private static boolean isBehindName(TerminalNode parenthesis, ParseTree parent, int place) {
        return parent.getChild(place) == parenthesis
                && parent.getChild(place - 1) instanceof InspectionParser.NameContext;
    }
}
