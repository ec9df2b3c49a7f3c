package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.quantity.Spelling;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The members of one object in a file. */
final class Fields {
    private final Spot whole;
    private final Json.Members members;
    private final Trail trail;
    private final Findings findings;

    Fields(Spot whole, Json.Members members, Trail trail, Findings findings) {
        this.whole = whole;
        this.members = members;
        this.trail = trail;
        this.findings = findings;
    }

    /** Complains of every key that is not among these, as long as anybody listens: looking for the nearest takes its time. */
    void allow(List<String> known) {
        for (String key : keys()) {
            if (!known.contains(key) && !findings.isFull()) {
                complainAtKey(
                        key,
                        FileMistake.LP612,
                        "the key " + Shown.quoted(key) + " is not known here",
                        Spelling.nearest(key, known)
                                .map(near -> "did you mean " + near + "?")
                                .orElse("known are " + String.join(", ", known)));
            }
        }
    }

    List<String> keys() {
        return List.copyOf(members.byKey().keySet());
    }

    boolean has(String key) {
        return members.byKey().containsKey(key);
    }

    /** What stands under this key, whether or not it may be left out. */
    Optional<Spot> optional(String key) {
        return Optional.ofNullable(members.byKey().get(key))
                .map(member -> new Spot(member.value(), trail.key(key), findings));
    }

    /** What stands under this key; null counts as left out. */
    Optional<Spot> unlessNull(String key) {
        return optional(key).filter(spot -> !(spot.json() instanceof Json.Nothing));
    }

    /** What stands under this key, which must be there. */
    Optional<Spot> required(String key, String meaning) {
        Optional<Spot> found = optional(key);
        if (found.isEmpty()) {
            complain(FileMistake.LP613, "the key \"" + key + "\" is missing", "it gives " + meaning);
        }
        return found;
    }

    /** The answer for this key, or null where it is left out or wrong. */
    <T> @Nullable T orNull(String key, Function<Spot, Optional<T>> question) {
        return optional(key).flatMap(question).orElse(null);
    }

    /** Complains of the object as a whole. */
    void complain(FileMistake mistake, String message, @Nullable String help) {
        whole.complain(mistake, message, help);
    }

    /** Complains of a key rather than of what stands under it. */
    void complainAtKey(String key, FileMistake mistake, String message, @Nullable String help) {
        Json.Member member = members.byKey().get(key);
        int offset = member == null ? members.offset() : member.keyOffset();
        findings.add(mistake, offset, trail.key(key), message, help);
    }

    String place() {
        return whole.place();
    }
}
