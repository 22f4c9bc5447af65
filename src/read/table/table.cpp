// SPDX-License-Identifier: MIT
#include "read/table/table.hpp"

#include "read/decimal.hpp"
#include "read/quantities.hpp"
#include "read/suggest.hpp"
#include "read/table/checked.hpp"
#include "read/table/layout.hpp"
#include "read/table/marks.hpp"
#include "read/table/nodes.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <utility>

namespace pelt::read {
namespace {

constexpr std::array<std::string_view, 4> head_keys{"vehicle", "demonstration", "body", "units"};
constexpr std::array<std::string_view, 3> overall_keys{"length", "width", "height"};
constexpr std::string_view overall_head = "overall ";

std::vector<std::string> known_headings() {
    std::vector<std::string> out;
    for (const Column& column : columns())
        out.emplace_back(column.heading);
    return out;
}

/// "van" of "cars/van.csv".
std::string stem_of(std::string_view path) {
    const std::string_view file = path.substr(path.find_last_of('/') + 1); // npos + 1 is 0
    return std::string(file.substr(0, file.find_last_of('.')));
}

class TableReader {
public:
    TableReader(const std::shared_ptr<const Source>& source, Context& context)
        : source_(source), context_(context), layout_(layout_of(source->text)),
          marks_(layout_.separator) {}

    std::optional<Node> read() {
        if (!is_text(source_, layout_.cells, context_) || !has_headings())
            return std::nullopt;
        read_head();
        read_headings();
        read_panels();
        tell_broken();
        if (panels_.entries.empty()) {
            if (context_.mark() == 0)
                context_.fault(at(layout_.heading_row, 0), "no panel stands below the headings",
                               "give every panel a row");
            return std::nullopt;
        }
        put(root_, "panels", std::move(panels_));
        return std::move(root_);
    }

private:
    Place at(std::size_t row, std::size_t column) const { return cell_at(source_, row, column); }

    bool has_headings() {
        if (layout_.has_headings())
            return true;
        if (layout_.cells.rows.empty() && !layout_.cells.broken) {
            context_.fault(at(0, 0), "the file is empty",
                           "'pelt list --form -o form.csv' gives a table to fill in");
            return false;
        }
        if (!tell_misspelt_heading() && !tell_broken())
            context_.fault(at(0, 0), "no cell of the file says 'panel'",
                           "give the table a row of headings, such as panel, sides, width, height");
        return false;
    }

    bool tell_misspelt_heading() {
        const std::vector<Row>& rows = layout_.cells.rows;
        for (std::size_t r = 0; r < rows.size(); ++r)
            for (std::size_t c = 0; c < rows[r].size(); ++c)
                if (!nearest(plain_heading(rows[r][c]), {"panel"}).empty()) {
                    context_.fault(at(r, c), "no heading is 'panel', but " + quoted(rows[r][c]),
                                   "did you mean 'panel'?");
                    return true;
                }
        return false;
    }

    bool tell_broken() { return read::tell_broken(source_, layout_.cells, context_); }

    void read_head() {
        root_ = map_node({source_, 0, 0});
        for (std::size_t r = 0; r < layout_.heading_row; ++r)
            if (const Row& row = layout_.cells.rows[r]; !is_blank(row))
                read_head_row(row, r);
        drop_repeated_keys_of(root_);
        if (root_.entry("vehicle") == nullptr)
            put(root_, "vehicle",
                scalar_node(stem_of(source_->name), root_.place));
    }

    void read_head_row(const Row& row, std::size_t r) {
        for (std::size_t c = 2; c < row.size(); ++c)
            if (!trimmed(row[c]).empty()) {
                context_.fault(at(r, c), "this cell stands above the headings, beside nothing",
                               "a row above them is a word and its value");
                return;
            }
        const std::string word = plain_heading(row[0]);
        const std::string value = row.size() > 1 ? text_of_cell(row[1]) : "";
        if (!is_head_word(word))
            tell_unknown_word(row[0], r);
        else if (word.starts_with(overall_head) && !value.empty())
            put_overall(word.substr(overall_head.size()), value, r);
        else if (!value.empty())
            put_at(root_, word, at(r, 0), scalar_node(value, at(r, 1)));
    }

    static bool is_head_word(std::string_view word) {
        if (std::find(head_keys.begin(), head_keys.end(), word) != head_keys.end())
            return true;
        return word.starts_with(overall_head) &&
               std::find(overall_keys.begin(), overall_keys.end(),
                         word.substr(overall_head.size())) != overall_keys.end();
    }

    void put_overall(std::string_view key, const std::string& value, std::size_t r) {
        Node& overall = map_under(root_, "overall", at(r, 0));
        put_at(overall, key, at(r, 0), number(value, at(r, 1), "overall " + std::string(key)));
        drop_repeated_keys_of(overall);
    }

    void tell_unknown_word(const std::string& word, std::size_t r) {
        std::vector<std::string> known(head_keys.begin(), head_keys.end());
        for (const std::string_view key : overall_keys)
            known.push_back(std::string(overall_head) + std::string(key));
        tell_no_head_word(source_, layout_, r,
                          did_you_mean(plain_heading(word), known, "there may be", "and"),
                          context_);
    }

    /// The same word twice, told as of cells.
    void drop_repeated_keys_of(Node& map) {
        std::vector<Entry> kept;
        for (Entry& entry : map.entries) {
            const auto first = std::find_if(kept.begin(), kept.end(),
                                            [&](const Entry& k) { return k.key == entry.key; });
            if (first == kept.end()) {
                kept.push_back(std::move(entry));
                continue;
            }
            context_.fault(entry.place,
                           quoted(entry.key) + " stands here again, after " +
                               cell_name(first->place.line, first->place.column),
                           "keep one of the two");
        }
        map.entries = std::move(kept);
    }

    void read_headings() {
        const Row& row = layout_.cells.rows[layout_.heading_row];
        for (std::size_t c = 0; c < row.size(); ++c) {
            const Column* column = column_named(row[c]);
            const auto first = std::find(columns_.begin(), columns_.end(), column);
            if (column != nullptr && first != columns_.end())
                context_.fault(at(layout_.heading_row, c),
                               "the heading " + quoted(row[c]) + " stands twice",
                               "keep one of the two columns");
            else if (column == nullptr && !trimmed(row[c]).empty())
                context_.fault(at(layout_.heading_row, c),
                               "there is no column " + quoted(trimmed(row[c])),
                               did_you_mean(plain_heading(row[c]), known_headings(),
                                            "the columns are", "and"));
            columns_.push_back(column);
        }
        for (const ColumnOf needed : {ColumnOf::width, ColumnOf::height})
            if (!column_of(needed))
                context_.fault(at(layout_.heading_row, 0),
                               std::string("the table has no column '") +
                                   (needed == ColumnOf::width ? "width'" : "height'"),
                               "give every panel its width and its height");
    }

    std::optional<std::size_t> column_of(ColumnOf of) const {
        for (std::size_t c = 0; c < columns_.size(); ++c)
            if (columns_[c] != nullptr && columns_[c]->of == of)
                return c;
        return std::nullopt;
    }

    std::string_view cell(const Row& row, std::optional<std::size_t> column) const {
        return column && *column < row.size() ? trimmed(row[*column]) : std::string_view{};
    }

    void read_panels() {
        panels_ = map_node(at(layout_.heading_row, 0));
        for (std::size_t r = layout_.heading_row + 1; r < whole_rows(layout_.cells); ++r)
            if (const Row& row = layout_.cells.rows[r]; !is_blank(row))
                read_panel(row, r);
        drop_repeated_keys_of(panels_);
    }

    void read_panel(const Row& row, std::size_t r) {
        const std::size_t named = *column_of(ColumnOf::panel);
        const std::string name = text_of_cell(cell(row, named));
        if (name.empty()) {
            context_.fault(at(r, named), "the row names no panel",
                           "name the panel, or empty the row");
            return;
        }
        context_.panel = name;
        Node panel = map_node(at(r, named));
        add_size(panel, row, r);
        for (std::size_t c = 0; c < row.size(); ++c)
            if (const std::string_view text = cell(row, c); !text.empty())
                add(panel, text, r, c);
        put(panels_, name, std::move(panel));
        context_.panel.clear();
    }

    void add_size(Node& panel, const Row& row, std::size_t r) {
        Node size;
        size.kind = Node::Kind::list;
        size.place = panel.place;
        bool whole = true;
        for (const ColumnOf of : {ColumnOf::width, ColumnOf::height}) {
            const auto column = column_of(of);
            whole = whole && column;
            if (!column)
                continue; // told with the headings
            const std::string_view text = cell(row, column);
            const std::string heading(columns_[*column]->heading);
            if (text.empty()) {
                context_.fault(at(r, *column), "it has no " + heading,
                               "write its " + heading + " into this cell");
                whole = false;
                continue;
            }
            size.items.push_back(number(text, at(r, *column), heading));
        }
        put(panel, "size", whole ? std::move(size) : refused_node(panel.place));
    }

    void add(Node& panel, std::string_view text, std::size_t r, std::size_t c) {
        const Place place = at(r, c);
        if (c >= columns_.size()) {
            context_.fault(place, "this cell has no heading",
                           "give its column a heading, or empty it");
            return;
        }
        const Column* column = columns_[c];
        if (column == nullptr)
            return tell_stray(c, place);
        const std::string heading(column->heading);
        switch (column->of) {
        case ColumnOf::panel:
        case ColumnOf::width:
        case ColumnOf::height:
            break;
        case ColumnOf::text:
            put(panel, column->key, scalar_node(text_of_cell(text), place));
            break;
        case ColumnOf::measure:
            put(panel, column->key, number(text, place, heading));
            break;
        case ColumnOf::rise:
            put(map_under(panel, "crown", place), column->key, number(text, place, heading));
            break;
        case ColumnOf::tuck:
            add_tuck(panel, *column, number(text, place, heading));
        }
    }

    /// Of a column without a heading; a wrong heading has been told.
    void tell_stray(std::size_t c, const Place& place) {
        if (trimmed(layout_.cells.rows[layout_.heading_row][c]).empty())
            context_.fault(place, "this cell has no heading",
                           "give its column a heading, or empty it");
    }

    /// What holds for all edges stands first, so that the others override it.
    void add_tuck(Node& panel, const Column& column, Node tuck) {
        const Place place = tuck.place;
        Node rule = map_node(place);
        put(rule, "tuck", std::move(tuck));
        Node& edges = map_under(panel, "edges", place);
        put(edges, column.key, std::move(rule));
        if (column.key == "all")
            std::rotate(edges.entries.begin(), edges.entries.end() - 1, edges.entries.end());
    }

    Node number(std::string_view text, const Place& place, const std::string& label) {
        return number_node(text, place, label, marks_, context_);
    }

    std::shared_ptr<const Source> source_;
    Context& context_;
    Layout layout_;
    DecimalMarks marks_;
    std::vector<const Column*> columns_; ///< none: no known heading
    Node root_;
    Node panels_;
};

/// What readers of single values call them, and so how their sentences begin.
constexpr std::array<std::string_view, 5> labels{"size: x ", "size: y ", "wide ", "high ", "tuck "};

} // namespace

std::optional<Node> vehicle_table(const std::shared_ptr<const Source>& source, Context& context) {
    return TableReader(source, context).read();
}

void call_by_headings(Faults& faults) {
    std::map<const Source*, Row> headings; // by file, as one vehicle may be like another one
    const auto headings_of = [&](const Source& source) -> const Row& {
        const auto known = headings.find(&source);
        if (known != headings.end())
            return known->second;
        const Layout layout = layout_of(source.text);
        return headings[&source] = layout.cells.rows[layout.heading_row];
    };
    for (Fault& fault : faults) {
        if (!fault.place.source || !fault.place.source->is_table)
            continue;
        const auto label = std::find_if(labels.begin(), labels.end(), [&](std::string_view one) {
            return fault.what.starts_with(one);
        });
        if (label == labels.end())
            continue;
        const Row& row = headings_of(*fault.place.source);
        const auto column = static_cast<std::size_t>(fault.place.column - 1);
        if (column < row.size())
            fault.what = plain_heading(row[column]) + " " + fault.what.substr(label->size());
    }
}

} // namespace pelt::read
