package io.github.leafproof.inspection.record;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.github.leafproof.inspection.quantity.Quantity;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A job sheet that is being filled in: entries are added at its end, and taken back from there. It never changes, each entry
 * makes another one; but the two share all that stands above, so that an entry costs no more on a long sheet than on a
 * short one.
 *
 * <p>What it says is what its file would be read back as, word for word: an entry that could not be written and read again
 * is refused.
 */
public final class OpenSheet {

    private final Document<JobSheet> begun;
    private final JobSheet heading;
    private final int size;
    private final @Nullable Added added;
    private volatile @Nullable Foot foot;
    private volatile @Nullable Document<JobSheet> document;

    /** An entry below another sheet. */
    private record Added(OpenSheet above, Entry entry) {}

    /**
     * The foot of a sheet's file, where the next entry is written.
     *
     * @param line the number of its line
     * @param bytes how large the file is
     * @param last when the last entry was made; null where none says
     * @param running how long the engine had run by then; null where nothing says
     */
    private record Foot(
            int line,
            long bytes,
            @Nullable OffsetDateTime last,
            @Nullable Quantity running) {}

    /** The first entries of a sheet. */
    private OpenSheet(Document<JobSheet> begun, int size) {
        this.begun = begun;
        this.heading = begun.content().withEntries(List.of());
        this.size = size;
        this.added = null;
    }

    private OpenSheet(Added added, Foot foot) {
        this.begun = added.above.begun;
        this.heading = added.above.heading;
        this.size = added.above.size + 1;
        this.added = added;
        this.foot = foot;
    }

    /** The sheet of this file. */
    public static OpenSheet of(Document<JobSheet> sheet) {
        return new OpenSheet(sheet, sheet.content().entries().size());
    }

    /** What the sheet's file is called. */
    public String name() {
        return begun.name();
    }

    /** The sheet without its entries. */
    public JobSheet heading() {
        return heading;
    }

    /** How many entries there are. */
    public int size() {
        return size;
    }

    /** The entry at the end; empty where there is none. */
    public Optional<Entry> last() {
        return size == 0 ? Optional.empty() : Optional.of(lastEntry());
    }

    private Entry lastEntry() {
        return added == null ? begun.content().entries().get(size - 1) : added.entry;
    }

    /** All entries, in the order of the sheet. */
    public List<Entry> entries() {
        Entry[] entries = new Entry[size];
        OpenSheet sheet = this;
        while (sheet.added != null) {
            entries[sheet.size - 1] = sheet.added.entry;
            sheet = sheet.added.above;
        }
        List<Entry> first = begun.content().entries().subList(0, sheet.size);
        System.arraycopy(first.toArray(), 0, entries, 0, sheet.size);
        return List.of(entries);
    }

    /**
     * The sheet with one more entry at its end.
     *
     * @param entry its place is found anew
     * @return the sheet, with a warning where something looks odd about the entry; or all that is wrong with it
     */
    public Read<OpenSheet> with(Entry entry) {
        Foot foot = foot();
        boolean isNew = !Objects.equals(entry.runningTime(), foot.running);
        Json written = SheetWriting.entry(isNew ? entry : entry.after(null));
        String text = JsonWriting.text(new JsonWriting.ObjectBuilder()
                .put("entries", JsonWriting.list(List.of(written)))
                .done());
        byte[] bytes = text.getBytes(UTF_8);
        Read<byte[]> fits = FileBytes.fit(name(), bytes, foot.bytes + bytes.length);
        if (fits.value().isEmpty()) {
            return new Read.Refused<>(fits.problems());
        }
        // Two lines lead to the entry, and two behind it end the text.
        Timeline timeline = new Timeline(observedBefore(entry), foot.last, foot.running);
        return JsonFile.parse(name(), bytes, foot.line - 2L, spot -> next(spot, timeline))
                .map(read -> below(read.content(), foot, lines(text) - 4, bytes.length));
    }

    private Optional<Entry> next(Spot spot, Timeline timeline) {
        return spot.fields("a job sheet", List.of("entries"))
                .flatMap(fields -> fields.optional("entries"))
                .flatMap(list -> list.items("a list of entries", size))
                .flatMap(spots -> timeline.entries(spots).stream().findFirst());
    }

    private OpenSheet below(Entry entry, Foot foot, int lines, int bytes) {
        OffsetDateTime last = entry.at() == null ? foot.last : entry.at();
        Foot next = new Foot(foot.line + lines, foot.bytes + bytes, last, entry.runningTime());
        return new OpenSheet(new Added(this, entry), next);
    }

    /** Only who corrects something asks whether it was observed before. */
    private Set<String> observedBefore(Entry entry) {
        boolean isKnown = entry.corrects()
                && entries().stream()
                        .anyMatch(before -> before.observe().equals(entry.observe())
                                && !(before.given() instanceof Given.Adjusted));
        return new HashSet<>(isKnown ? Set.of(entry.observe()) : Set.of());
    }

    private Foot foot() {
        Foot known = foot;
        if (known == null) {
            known = footOfText();
            foot = known;
        }
        return known;
    }

    private Foot footOfText() {
        JobSheet sheet = content();
        String text = SheetFile.toJson(sheet);
        @Nullable OffsetDateTime last = null;
        for (Entry entry : sheet.entries()) {
            last = entry.at() == null ? last : entry.at();
        }
        // A bracket in a line of its own ends the entries, where there are any.
        return new Foot(
                lines(text) - (size == 0 ? 0 : 1),
                text.getBytes(UTF_8).length,
                last,
                size == 0 ? sheet.runningTime() : lastEntry().runningTime());
    }

    private static int lines(String text) {
        return (int) text.chars().filter(c -> c == '\n').count();
    }

    /**
     * The sheet without its last entry.
     *
     * @throws NoSuchElementException if there is none
     */
    public OpenSheet withoutLast() {
        if (size == 0) {
            throw new NoSuchElementException("nothing is entered on the sheet");
        }
        return added == null ? new OpenSheet(begun, size - 1) : added.above;
    }

    /** Where a value of the heading stands in the file; see {@link Document#place}. */
    public String place(String path) {
        return begun.place(path);
    }

    /** Whether both are the same sheet, begun and filled in by the same hands. */
    boolean isSame(OpenSheet other) {
        return this == other || (added == null && other.added == null && isRelated(other) && size == other.size);
    }

    /** Whether both began as the same sheet, the very same: what was made from one another shares it. */
    @SuppressWarnings("ReferenceEquality")
    boolean isRelated(OpenSheet other) {
        return begun == other.begun;
    }

    private JobSheet content() {
        return begun.content().withEntries(entries());
    }

    /**
     * The sheet as its file says it: the one it was begun as, as long as its entries are the same, and else the one that
     * would be written. It takes time for each of the entries when it is first asked for.
     */
    public Document<JobSheet> document() {
        Document<JobSheet> known = document;
        if (known == null) {
            boolean isAsBegun =
                    added == null && size == begun.content().entries().size();
            known = isAsBegun
                    ? begun
                    : SheetFile.parse(name(), SheetFile.toJson(content()).getBytes(UTF_8))
                            .orElseThrow();
            document = known;
        }
        return known;
    }
}
