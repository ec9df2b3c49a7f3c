package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.coverage.Coverage;
import io.github.leafproof.dsl.coverage.CoverageHtml;
import io.github.leafproof.dsl.coverage.CoverageJson;
import io.github.leafproof.dsl.coverage.CoverageText;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

    @Option(
            names = "--coverage-json",
            paramLabel = "F",
            description = "Write the coverage there as JSON, for other programs.")
    private @Nullable Path json;

    @Option(
            names = "--coverage-html",
            paramLabel = "F",
            description =
                    "Write it there as a page for a browser: the procedures' own text, with what is shown marked.")
    private @Nullable Path html;

    /** Whether its text goes to standard output. */
    boolean isPrinted() {
        return coverage;
    }

    /** Whether anybody wants to know: counting takes as long as playing. */
    boolean isAsked() {
        return coverage || least != null || json != null || html != null;
    }

    /** Whether a file would be written over one that was read; says so where it would. */
    boolean overwrite(List<Path> inputs, Console console) {
        return Stream.of(
                        Optional.ofNullable(Target.of(json, "--coverage-json", "coverage")),
                        Optional.ofNullable(Target.of(html, "--coverage-html", "coverage")))
                .flatMap(Optional::stream)
                .anyMatch(target -> inputs.stream().anyMatch(input -> target.overwrites(input, console)));
    }

    /**
     * Tells what the rehearsals of these procedures show, where somebody asked for it.
     *
     * @param text whether a person reads standard output; where a program does, only the files are written
     */
    Exit tell(List<Coverage> procedures, boolean text, Console console) {
        BigDecimal wanted = least;
        Exit exit = Exit.GOOD;
        for (Coverage each : procedures) {
            if (text && (coverage || wanted != null)) {
                console.print(CoverageText.of(each));
            }
            if (wanted != null && !each.share().isAtLeast(wanted)) {
                console.err()
                        .print(each.procedure().source().name() + ": its rehearsals show "
                                + each.share().words() + ", less than the " + wanted.toPlainString()
                                + " % asked for\n");
                exit = Exit.NOT_GOOD;
            }
        }
        boolean written = (json == null || console.wrote(json, CoverageJson.write(procedures)))
                && (html == null || console.wrote(html, CoverageHtml.write(procedures)));
        return written ? exit : Exit.BAD_INPUT;
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
