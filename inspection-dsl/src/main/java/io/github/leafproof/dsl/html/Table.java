package io.github.leafproof.dsl.html;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A table whose heads say what they are the heads of. On paper the heads stand on every sheet, and no row is parted.
 */
public final class Table {

    private final String caption;
    private final List<String> columns;
    private final Set<String> numbers = new HashSet<>();
    private final List<Element> rows = new ArrayList<>();
    private boolean cards = false;

    private Table(String caption, List<String> columns) {
        this.caption = caption;
        this.columns = columns;
    }

    /**
     * A table without rows.
     *
     * @param caption what is in it, for those who have it read to them
     * @param columns the name of each column; the first is that of the rows' heads
     */
    public static Table of(String caption, String... columns) {
        return new Table(caption, List.of(columns));
    }

    /** These columns hold numbers, which stand one below the other. Said before the rows. */
    public Table numbers(String... columns) {
        numbers.addAll(List.of(columns));
        return this;
    }

    /** Too wide for a phone: there each row becomes a card, every cell with its column's name before it. */
    public Table cards() {
        cards = true;
        return this;
    }

    /** A row; the first cell is its head. As many cells as there are columns. */
    public Table row(Part... cells) {
        return row("", cells);
    }

    /** A row in a class of the style sheet. */
    public Table row(String style, Part... cells) {
        List<Element> row = new ArrayList<>();
        row.add(role("rowheader", Html.element("th", cells[0]).with("scope", "row")));
        for (int i = 1; i < cells.length; i++) {
            Element cell = role("cell", Html.element("td", cells[i]));
            Element named = cards ? cell.with("data-column", columns.get(i)) : cell;
            row.add(numbers.contains(columns.get(i)) ? named.style("number") : named);
        }
        Element whole = role("row", Html.element("tr", row));
        rows.add(style.isEmpty() ? whole : whole.style(style));
        return this;
    }

    /** The table. */
    public Element element() {
        List<Element> heads = columns.stream()
                .map(column -> numbers.contains(column)
                        ? Html.element("th", column).style("number")
                        : Html.element("th", column))
                .map(head -> role("columnheader", head.with("scope", "col")))
                .toList();
        Element head = role("rowgroup", Html.element("thead", role("row", Html.element("tr", heads))));
        Element body = role("rowgroup", Html.element("tbody", rows));
        Element words = Html.element("caption", Html.unseen(caption));
        Element table = role("table", Html.element("table", words, head, body));
        return cards ? table.style("cards") : table;
    }

    /** Said again of a table that can fall into cards, since some browsers forget what it was. */
    private Element role(String role, Element element) {
        return cards ? element.with("role", role) : element;
    }
}
