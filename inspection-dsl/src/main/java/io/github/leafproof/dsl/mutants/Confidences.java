package io.github.leafproof.dsl.mutants;

import io.github.leafproof.dsl.syntax.Declaration;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

/** The confidences that are usual, in per cent (common practice in statistics; 50 % is simple acceptance). */
final class Confidences {

    private static final List<BigDecimal> USUAL =
            Stream.of("50", "90", "95", "99", "99.9").map(BigDecimal::new).toList();

    private Confidences() {}

    /** The usual ones right below and right above one. */
    static List<String> beside(Declaration.Confidence confidence) {
        BigDecimal own = new BigDecimal(confidence.percent());
        Stream<BigDecimal> below =
                USUAL.stream().filter(usual -> usual.compareTo(own) < 0).reduce((one, other) -> other).stream();
        Stream<BigDecimal> above = USUAL.stream().filter(usual -> usual.compareTo(own) > 0).findFirst().stream();
        return Stream.concat(below, above).map(BigDecimal::toPlainString).toList();
    }
}
