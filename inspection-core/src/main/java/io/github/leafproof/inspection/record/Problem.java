package io.github.leafproof.inspection.record;

import org.jspecify.annotations.Nullable;

/**
 * One thing wrong with a file: where, what, and what to do about it.
 *
 * @param level whether the file cannot be used, or only looks odd
 * @param code the stable name of this kind of mistake, such as {@code LP610}; see {@link FileMistake}
 * @param file the file as it was named by whoever asked for it
 * @param place line and column (both from 1, columns in code points) and the JSON path: {@code 14:19 $.entries[3].value};
 *     line and column alone where the file is not even JSON, and empty where the whole file is meant
 * @param message what is wrong, in the reader's words, without a full stop
 * @param help what to do about it; null where the message leaves no doubt
 */
public record Problem(
        Level level,
        String code,
        String file,
        String place,
        String message,
        @Nullable String help) {

    /** How bad it is. */
    public enum Level {
        /** The file cannot be used. */
        ERROR,
        /** It can be used, but probably does not say what its writer means. */
        WARNING
    }

    /** An error. */
    public Problem(String code, String file, String place, String message, @Nullable String help) {
        this(Level.ERROR, code, file, place, message, help);
    }

    /** Whether the file cannot be used until this is mended. */
    public boolean isError() {
        return level == Level.ERROR;
    }

    /** As a person sees it, over one line, or two with the help. */
    @Override
    public String toString() {
        String where = place.isEmpty() ? file : file + ":" + place;
        String word = isError() ? "error" : "warning";
        String said = where + ": " + word + " " + code + ": " + message;
        return help == null ? said : said + "\n   help: " + help;
    }
}
