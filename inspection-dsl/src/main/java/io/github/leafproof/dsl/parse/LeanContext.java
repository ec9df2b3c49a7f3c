package io.github.leafproof.dsl.parse;

import java.util.ArrayList;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.tree.ParseTree;
import org.jspecify.annotations.Nullable;

/** A part of a tree. Most have one part or two themselves, so that room for ten, as it is usual, would stay empty. */
abstract class LeanContext extends ParserRuleContext {

    private static final int FEW = 2;

    LeanContext() {}

    LeanContext(@Nullable ParserRuleContext parent, int invokingState) {
        super(parent, invokingState);
    }

    @Override
    public <T extends ParseTree> T addAnyChild(T part) {
        if (children == null) {
            children = new ArrayList<>(FEW);
        }
        children.add(part);
        return part;
    }
}
