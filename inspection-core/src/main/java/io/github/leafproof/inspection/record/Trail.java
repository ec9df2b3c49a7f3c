package io.github.leafproof.inspection.record;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The way from the whole file to one value in it; as text a JSON path (RFC 9535, from memory). */
record Trail(@Nullable Trail parent, String step) {
    static final Trail ROOT = new Trail(null, "$");

    private static final Pattern PLAIN = Pattern.compile("[A-Za-z_][A-Za-z0-9_]*");
    private static final int LONGEST_KEY_SHOWN = 60;

    Trail key(String key) {
        if (PLAIN.matcher(key).matches() && key.length() <= LONGEST_KEY_SHOWN) {
            return new Trail(this, "." + key);
        }
        return new Trail(
                this,
                "['"
                        + Shown.briefly(key, LONGEST_KEY_SHOWN)
                                .replace("\\", "\\\\")
                                .replace("'", "\\'") + "']");
    }

    Trail item(int index) {
        return new Trail(this, "[" + index + "]");
    }

    @Override
    public String toString() {
        return parent == null ? step : parent + step;
    }
}
