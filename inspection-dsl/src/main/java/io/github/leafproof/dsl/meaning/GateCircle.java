package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.syntax.Declaration;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds checks that wait for each other in a circle, and says so with the path. */
final class GateCircle {

    private GateCircle() {}

    static boolean look(Problems problems, Outline outline, Map<String, Set<String>> gates) {
        List<List<String>> circles = Circles.among(gates);
        for (List<String> circle : circles) {
            Item<Declaration.Check> check = outline.checks.get(circle.get(0));
            if (check != null) {
                problems.add(StructureDiagnostics.gateCircle(
                        check.declaration().target().span(), circle));
            }
        }
        return !circles.isEmpty();
    }
}
