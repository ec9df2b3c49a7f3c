package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.coverage.Coverage;
import io.github.leafproof.dsl.coverage.CoverageText;
import io.github.leafproof.dsl.rehearsal.Played;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** How much of what procedures can say their rehearsals show: asked for beside running them. */
final class CoverageOptions {

    @Option(
            names = "--coverage",
            description = "Tell how much of what each procedure can say its rehearsals show, and what they do not.")
    private boolean coverage;

    @Option(
            names = "--min",
            paramLabel = "PERCENT",
            converter = Percent.class,
            description = "Tell the coverage, and exit 1 where the rehearsals of a procedure show less: --min 90.")
    private @Nullable BigDecimal least;

    private final List<Coverage> told = new ArrayList<>();

    /** Whether it is to be told at all. */
    boolean isAsked() {
        return coverage || least != null;
    }

    /** Tells what these rehearsals of a procedure show; says whether it is enough. */
    Exit tell(Procedure procedure, List<Played> rehearsals, Console console) {
        if (!isAsked()) {
            return Exit.GOOD;
        }
        Coverage shown = Coverage.of(procedure, rehearsals);
        told.add(shown);
        console.print(CoverageText.of(shown));
        if (least == null || shown.share().isAtLeast(least)) {
            return Exit.GOOD;
        }
        console.print("  less than the " + least.toPlainString() + " % asked for\n");
        return Exit.NOT_GOOD;
    }

    /** {@code 90}, {@code 90%}, {@code 90 %}, {@code 99.5}. */
    static final class Percent implements ITypeConverter<BigDecimal> {
        @Override
        public BigDecimal convert(String text) {
            try {
                BigDecimal percent =
                        new BigDecimal(text.replaceFirst("\\s*%\\s*$", "").strip());
                if (percent.signum() >= 0 && percent.compareTo(BigDecimal.valueOf(100)) <= 0) {
                    return percent;
                }
            } catch (NumberFormatException noNumber) {
                // Said below, with everything else that is no share of a hundred.
            }
            throw new TypeConversionException("'" + text + "' is not a percentage from 0 to 100, such as 90");
        }
    }
}
