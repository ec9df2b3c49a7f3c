package io.github.leafproof.dsl.mutants;

import io.github.leafproof.dsl.syntax.Expression;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The expressions that an expression is made of, as written. */
final class Parts {

    private Parts() {}

    /** Those right below it; the holes of a text are no part of what it decides. */
    static List<Expression> of(Expression whole) {
        if (whole instanceof Expression.Uncertain uncertain) {
            return List.of(uncertain.value());
        } else if (whole instanceof Expression.Call call) {
            return call.arguments();
        } else if (whole instanceof Expression.Negated negated) {
            return List.of(negated.operand());
        } else if (whole instanceof Expression.Not not) {
            return List.of(not.operand());
        } else if (whole instanceof Expression.Arithmetic arithmetic) {
            return List.of(arithmetic.left(), arithmetic.right());
        } else if (whole instanceof Expression.Joined joined) {
            return List.of(joined.left(), joined.right());
        } else if (whole instanceof Expression.Compared compared) {
            return Stream.concat(Stream.of(compared.left(), compared.right()), Stream.ofNullable(compared.tolerated()))
                    .toList();
        } else if (whole instanceof Expression.InTime inTime) {
            return List.of(inTime.left(), inTime.right());
        } else if (whole instanceof Expression.Between between) {
            return Stream.concat(
                            Stream.of(between.value(), between.low(), between.high()), between.tolerated().stream())
                    .toList();
        } else if (whole instanceof Expression.Within within) {
            return Stream.concat(
                            Stream.of(within.value(), within.tolerance(), within.middle()),
                            Stream.ofNullable(within.tolerated()))
                    .toList();
        } else if (whole instanceof Expression.OneOf oneOf) {
            return List.of(oneOf.value());
        } else if (whole instanceof Expression.HasAllOf all) {
            return List.of(all.items(), all.wanted());
        } else if (whole instanceof Expression.IfElse ifElse) {
            return List.of(ifElse.condition(), ifElse.then(), ifElse.otherwise());
        } else if (whole instanceof Expression.Choose choose) {
            List<Expression> parts = new ArrayList<>(List.of(choose.subject()));
            choose.arms().forEach(arm -> parts.add(arm.value()));
            Stream.ofNullable(choose.otherwise()).forEach(parts::add);
            return parts;
        } else if (whole instanceof Expression.InUnit inUnit) {
            return List.of(inUnit.value());
        }
        return List.of();
    }
}
