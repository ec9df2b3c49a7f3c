package io.github.leafproof.inspection.record;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.leafproof.inspection.record.JsonWriting.ObjectBuilder;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A line of a journal: one JSON object, and at its end a check of its bytes. The check takes in that of the line before, so
 * that a line that was changed, lost or put elsewhere is found, and found to be that line.
 */
final class JournalLine {

    /** So many digits of a SHA-256 digest; that a damage goes unseen is less likely than one in 10 to the 19. */
    static final int CHECK_DIGITS = 16;

    private static final String CHECK = ",\"check\":\"";
    private static final String END = "\"}";
    private static final int TAIL = CHECK.length() + CHECK_DIGITS + END.length();

    private JournalLine() {}

    static Json head(JournalHead head) {
        return new ObjectBuilder()
                .put("format", JournalHead.FORMAT)
                .put("sheet", SheetWriting.sheet(head.sheet()))
                .put("procedure", input(head.procedure()))
                .put(
                        "parts",
                        JsonWriting.list(
                                head.parts().stream().map(JournalLine::input).toList()))
                .put("card", input(head.card()))
                .put("tray", input(head.tray()))
                .done();
    }

    private static Json input(Report.Input input) {
        return new ObjectBuilder()
                .put("name", input.name())
                .put("sha256", input.sha256())
                .done();
    }

    static Json act(Act act) {
        ObjectBuilder object = new ObjectBuilder();
        if (act instanceof Act.Entered entered) {
            return object.put("act", "enter")
                    .put("entry", SheetWriting.entry(entered.entry()))
                    .done();
        }
        if (act instanceof Act.Opened opened) {
            object.put("act", "open").put("process", JsonWriting.number(opened.process()));
        } else if (act instanceof Act.Brought brought) {
            object.put("act", "bring").put("state", brought.state()).put("to", brought.to());
        } else if (act instanceof Act.Skipped skipped) {
            object.put("act", "skip").put("observe", skipped.observe());
        } else if (act instanceof Act.PutOff putOff) {
            object.put("act", "later").put("observe", putOff.observe());
        } else if (act instanceof Act.Finished finished) {
            object.put("act", "finish").put("sha256", finished.sha256());
        } else {
            object.put("act", "undo");
        }
        return stamped(object, act.stamp());
    }

    private static Json stamped(ObjectBuilder object, Act.Stamp stamp) {
        if (stamp.by() != null) {
            object.put("by", stamp.by());
        }
        return object.put("at", SheetWriting.moment(stamp.at())).done();
    }

    /**
     * The bytes of a line, its end included.
     *
     * @param before the check of the line before; empty for the first line
     */
    static byte[] bytes(Json object, String before) {
        String text = JsonWriting.line(object);
        String content = text.substring(0, text.length() - 1);
        return (content + CHECK + check(before, content.getBytes(UTF_8)) + END + "\n").getBytes(UTF_8);
    }

    /** The check that a line states, its end left off; null where it states none. */
    static @Nullable String checkOf(byte[] line) {
        String tail = new String(line, Math.max(0, line.length - TAIL), Math.min(TAIL, line.length), UTF_8);
        boolean isWhole = tail.length() == TAIL && tail.startsWith(CHECK) && tail.endsWith(END);
        return isWhole ? tail.substring(CHECK.length(), CHECK.length() + CHECK_DIGITS) : null;
    }

    /** Whether a line, its end left off, is as it was written behind the line with this check. */
    static boolean isSound(byte[] line, String before) {
        String stated = checkOf(line);
        return stated != null && stated.equals(check(before, Arrays.copyOf(line, line.length - TAIL)));
    }

    private static String check(String before, byte[] content) {
        byte[] head = before.getBytes(UTF_8);
        byte[] all = Arrays.copyOf(head, head.length + content.length);
        System.arraycopy(content, 0, all, head.length, content.length);
        return FileBytes.sha256(all).substring(0, CHECK_DIGITS);
    }
}
