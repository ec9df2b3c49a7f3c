package io.github.leafproof.dsl.message;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;
import java.util.List;

/** What does not go together in a procedure, a certain engine card and a certain gauge tray. */
public final class BenchDiagnostics {

    private BenchDiagnostics() {}

    public static Diagnostic upsideDownOnCard(Span limit, String model) {
        return Diagnostic.error(Code.LP461, limit, "for " + model + " the lower limit lies above the upper one")
                .help("look at the limits that the card states; nothing could ever pass between these");
    }

    public static Diagnostic notOnCard(Span fact, String lack) {
        return Diagnostic.warning(Code.LP462, fact, lack).help("write it on the card; what rests on it stays untested");
    }

    public static Diagnostic noGauge(Span gauge, String name, String needed, String tray, List<String> held) {
        return Diagnostic.error(Code.LP463, gauge, "the tray " + tray + " holds no gauge " + name)
                .help("put " + needed + " of that name on the tray; it holds: " + String.join(", ", held));
    }

    public static Diagnostic otherGauge(Span gauge, String name, String needed, String tray, String found) {
        return Diagnostic.error(Code.LP463, gauge, "on the tray " + tray + " " + name + " is " + found)
                .help("put " + needed + " of that name on the tray");
    }

    public static Diagnostic notForThisEngine(Span condition, String model) {
        return Diagnostic.error(Code.LP464, condition, "the procedure is not meant for " + model)
                .labelled("this does not hold for it")
                .help("take a procedure that is, or let this one apply to it");
    }

    public static Diagnostic mayNotApply(Span condition, String model, String lack) {
        return Diagnostic.error(
                        Code.LP464,
                        condition,
                        "whether the procedure is meant for " + model + " cannot be told: " + lack)
                .help("write it on the card");
    }

    /**
     * A limit that a gauge of this tray is not good enough for.
     *
     * @param why what the gauge lacks
     * @param better what would do instead
     */
    public static Diagnostic neverProven(Span limit, String check, String gauge, String why, String better) {
        return Diagnostic.error(
                        Code.LP465,
                        limit,
                        "with " + gauge + " of this tray " + check + " can never be shown to pass: " + why)
                .help("take " + better + ", or wider limits");
    }

    public static Diagnostic toleranceTooSmall(Span limit, String gauge, String half, String expanded) {
        return Diagnostic.warning(
                        Code.LP466,
                        limit,
                        "the limits lie ± " + half + " about their middle, and " + gauge + " of this tray knows only ± "
                                + expanded + " (k = 2)")
                .help("most engines will stay open: take a better gauge, or wider limits");
    }

    public static Diagnostic noVariant(Span header, String variant, String model, List<String> known) {
        return Diagnostic.error(Code.LP467, header, "the card of " + model + " knows no variant \"" + variant + "\"")
                .help(known.isEmpty() ? "it knows none; leave it out" : "it knows: " + String.join(", ", known));
    }
}
