package io.github.leafproof.dsl.mutants;

import io.github.leafproof.dsl.mutants.MutantReport.Judged;
import java.util.List;

/** What the rehearsals notice, as a person reads it in a terminal. */
public final class MutantsText {

    private MutantsText() {}

    /** The survivors with what each changes, then the sum; the same report gives the same text. */
    public static String of(MutantReport report, Accepted accepted) {
        StringBuilder text = new StringBuilder();
        List<Judged> surviving = report.surviving();
        surviving.stream()
                .filter(each -> accepted.reason(each.mutant()).isEmpty())
                .forEach(each -> survivor(each, text));
        long reasons = surviving.stream()
                .filter(each -> accepted.reason(each.mutant()).isPresent())
                .count();
        long asked = report.noticed() + surviving.size();
        report.files().forEach(file -> text.append(file).append('\n'));
        text.append("   ")
                .append(asked)
                .append(asked == 1 ? " mutant, " : " mutants, ")
                .append(report.rehearsals())
                .append(report.rehearsals() == 1 ? " rehearsal: " : " rehearsals: ")
                .append(report.noticed())
                .append(" noticed, ");
        if (reasons > 0) {
            text.append(reasons).append(" accepted with a reason, ");
        }
        text.append(surviving.size() - reasons).append(" not noticed\n");
        text.append("   (no mutants: ")
                .append(report.same())
                .append(" that decide just alike, ")
                .append(report.refused())
                .append(" that do not compile)\n");
        return text.toString();
    }

    private static void survivor(Judged judged, StringBuilder text) {
        Mutant mutant = judged.mutant();
        text.append(mutant.place())
                .append(": not noticed: ")
                .append(mutant.kind().words())
                .append('\n');
        mutant.before()
                .forEach(line -> text.append("   - ").append(line.strip()).append('\n'));
        mutant.after().forEach(line -> text.append("   + ").append(line.strip()).append('\n'));
        text.append("   name:    ").append(mutant.name()).append('\n');
        text.append("   nearest: ")
                .append(nearest((Fate.Survives) judged.fate()))
                .append('\n');
        text.append("   noticed by ").append(mutant.kind().noticedBy()).append("\n\n");
    }

    private static String nearest(Fate.Survives survives) {
        if (survives.nearest().isEmpty()) {
            return "no rehearsal; it makes no difference in any";
        }
        Nearest nearest = survives.nearest().get();
        String change = nearest.of() + " " + nearest.was() + ", and would be " + nearest.becomes();
        return nearest.place() + " \"" + nearest.title() + "\"\n            "
                + (nearest.isOtherwise() ? change + ", and nothing expects it there" : change);
    }
}
