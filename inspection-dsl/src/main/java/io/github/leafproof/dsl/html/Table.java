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
    private final List<List<Element>> groups = new ArrayList<>();
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
        rows().add(made(cells));
        return this;
    }

    /** A row in a class of the style sheet; in none, where its name is empty. */
    public Table row(String style, Part... cells) {
        rows().add(style.isEmpty() ? made(cells) : made(cells).style(style));
        return this;
    }

    /** A row that links lead to. */
    public Table row(String style, String id, Part... cells) {
        rows().add(made(cells).style(style).id(id));
        return this;
    }

    /** A heading over the rows that follow. */
    public Table group(String heading) {
        Element head = role("rowheader", Html.element("th", heading))
                .with("scope", "rowgroup")
                .with("colspan", columns.size());
        groups.add(new ArrayList<>(List.of(role("row", Html.element("tr", head)).style("group"))));
        return this;
    }

    private List<Element> rows() {
        if (groups.isEmpty()) {
            groups.add(new ArrayList<>());
        }
        return groups.get(groups.size() - 1);
    }

    private Element made(Part... cells) {
        List<Element> row = new ArrayList<>();
        row.add(role("rowheader", Html.element("th", cells[0]).with("scope", "row")));
        for (int i = 1; i < cells.length; i++) {
            Element cell = role("cell", Html.element("td", cells[i]));
            Element named = cards ? cell.with("data-column", columns.get(i)) : cell;
            row.add(numbers.contains(columns.get(i)) ? named.style("number") : named);
        }
        return role("row", Html.element("tr", row));
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
        List<Element> parts = new ArrayList<>(List.of(Html.element("caption", Html.unseen(caption)), head));
        groups.forEach(rows -> parts.add(role("rowgroup", Html.element("tbody", rows))));
        Element table = role("table", Html.element("table", parts));
        return cards ? table.style("cards") : table;
    }

    /** Said again of a table that can fall into cards, since some browsers forget what it was. */
    private Element role(String role, Element element) {
        return cards ? element.with("role", role) : element;
    }
}
