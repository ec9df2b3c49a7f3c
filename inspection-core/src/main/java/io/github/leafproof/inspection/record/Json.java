package io.github.leafproof.inspection.record;

import java.util.List;
import java.util.Map;

/**
 * JSON as it was written, each value with its offset in the text. Numbers keep their digits, so that nothing overflows or
 * is rounded before somebody asks for it.
 */
sealed interface Json {
    /** The offset of a value that was not read from a text. */
    int NOWHERE = -1;

    /** Where in the text the value begins. */
    int offset();

    /** What it is, for a message. */
    String words();

    record Members(int offset, Map<String, Member> byKey) implements Json {
        @Override
        public String words() {
            return "an object in braces";
        }
    }

    /** A key's place and its value. */
    record Member(int keyOffset, Json value) {}

    record Items(int offset, List<Json> values) implements Json {
        @Override
        public String words() {
            return "a list in brackets";
        }
    }

    record Text(int offset, String text) implements Json {
        @Override
        public String words() {
            return "a text in quotes";
        }
    }

    record Digits(int offset, String digits) implements Json {
        @Override
        public String words() {
            return "a number without quotes";
        }
    }

    record Truth(int offset, boolean yes) implements Json {
        @Override
        public String words() {
            return String.valueOf(yes);
        }
    }

    record Nothing(int offset) implements Json {
        @Override
        public String words() {
            return "null";
        }
    }
}
