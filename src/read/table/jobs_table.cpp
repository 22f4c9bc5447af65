// SPDX-License-Identifier: MIT
#include "read/table/jobs_table.hpp"

#include "read/decimal.hpp"
#include "read/keys.hpp"
#include "read/quantities.hpp"
#include "read/suggest.hpp"
#include "read/table/checked.hpp"
#include "read/table/layout.hpp"
#include "read/table/marks.hpp"
#include "read/table/nodes.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace pelt::read {
namespace {

constexpr std::string_view first_heading = "job";
constexpr std::string_view margin_least = "margin least";
constexpr std::array<std::string_view, 3> needed{"job", "vehicle", "film"};

/// Without a key: the least margin, which has a column of its own.
struct JobColumn {
    std::string heading;
    const Key* key = nullptr;
};

std::vector<JobColumn> all_columns() {
    std::vector<JobColumn> out;
    for (const Key* key : keys_of(In::job))
        if (key->works && key->name != "films")
            out.push_back({std::string(key->name), key});
    out.push_back({std::string(margin_least), nullptr});
    return out;
}

class JobsTableReader {
public:
    JobsTableReader(const std::shared_ptr<const Source>& source, Context& context)
        : source_(source), context_(context), layout_(layout_of(source->text, first_heading)),
          marks_(layout_.separator) {}

    JobsTable read() {
        if (!is_text(source_, layout_.cells, context_) || !has_headings())
            return std::move(out_);
        read_head();
        if (!read_headings())
            return std::move(out_);
        for (std::size_t r = layout_.heading_row + 1; r < whole_rows(layout_.cells); ++r)
            if (const Row& row = layout_.cells.rows[r]; !is_blank(row))
                read_row(row, r);
        const bool broken = tell_broken(source_, layout_.cells, context_);
        if (out_.rows.empty() && !broken)
            context_.fault(at(layout_.heading_row, 0), "no job stands below the headings",
                           "give every job a row");
        return std::move(out_);
    }

private:
    Place at(std::size_t row, std::size_t column) const { return cell_at(source_, row, column); }

    bool has_headings() {
        if (layout_.has_headings())
            return true;
        if (!tell_broken(source_, layout_.cells, context_))
            context_.fault(at(0, 0),
                           layout_.cells.rows.empty() ? "the file is empty"
                                                      : "no cell of the file says 'job'",
                           "give the table a row of headings, such as job, vehicle, film");
        return false;
    }

    /// Above the headings one word may stand: that the jobs are invented.
    void read_head() {
        for (std::size_t r = 0; r < layout_.heading_row; ++r) {
            const Row& row = layout_.cells.rows[r];
            if (is_blank(row))
                continue;
            const std::string value = row.size() > 1 ? text_of_cell(row[1]) : "";
            if (plain_heading(row[0]) == "demonstration" && (value == "yes" || value == "no"))
                out_.demonstration = value == "yes";
            else
                tell_no_head_word(source_, layout_, r,
                                  "there may be 'demonstration' with yes or no beside it",
                                  context_);
        }
    }

    bool read_headings() {
        const std::vector<JobColumn> known = all_columns();
        const Row& row = layout_.cells.rows[layout_.heading_row];
        const std::size_t before = context_.mark();
        for (std::size_t c = 0; c < row.size(); ++c) {
            const std::string heading = plain_heading(row[c]);
            const auto column = std::find_if(known.begin(), known.end(), [&](const JobColumn& k) {
                return k.heading == heading;
            });
            const bool twice =
                std::any_of(columns_.begin(), columns_.end(),
                            [&](const JobColumn& k) { return k.heading == heading; });
            if (!heading.empty() && (twice || column == known.end()))
                tell_heading(row[c], c, twice, known);
            columns_.push_back(column == known.end() ? JobColumn{} : *column);
        }
        for (const std::string_view name : needed)
            if (!context_.told_since(before) && !column_of(name))
                context_.fault(at(layout_.heading_row, 0),
                               "the table has no column '" + std::string(name) + "'",
                               "give every job its " + std::string(name));
        return !context_.told_since(before);
    }

    void tell_heading(const std::string& cell, std::size_t c, bool twice,
                      const std::vector<JobColumn>& known) {
        const Place place = at(layout_.heading_row, c);
        if (twice)
            return context_.fault(place, "the heading " + quoted(cell) + " stands twice",
                                  "keep one of the two columns");
        if (plain_heading(cell) == "films")
            return context_.fault(place, "a table has one film a job",
                                  "write jobs of several films as YAML, pelt-jobs(5)");
        std::vector<std::string> words;
        for (const JobColumn& column : known)
            words.push_back(column.heading);
        context_.fault(place, "there is no column " + quoted(trimmed(cell)),
                       did_you_mean(plain_heading(cell), words, "the columns are", "and"));
    }

    std::optional<std::size_t> column_of(std::string_view heading) const {
        for (std::size_t c = 0; c < columns_.size(); ++c)
            if (columns_[c].heading == heading)
                return c;
        return std::nullopt;
    }

    void read_row(const Row& row, std::size_t r) {
        JobRow made{map_node(at(r, *column_of(first_heading))), {}};
        Context own;
        for (const std::string_view name : needed) {
            const std::size_t c = *column_of(name);
            if (c < row.size() && !trimmed(row[c]).empty())
                continue;
            if (name == first_heading)
                own.fault(at(r, c), "the row names no job",
                          "write into this cell what it is called");
            else
                own.fault(at(r, c), "the job has no " + std::string(name),
                          "write its " + std::string(name) + " into this cell");
            put(made.job, name, refused_node(at(r, c)));
        }
        for (std::size_t c = 0; c < row.size(); ++c)
            if (!trimmed(row[c]).empty())
                add(made.job, row[c], r, c, own);
        std::size_t unlisted = 0;
        std::move(own).finish(made.faults, unlisted);
        out_.rows.push_back(std::move(made));
    }

    void add(Node& job, std::string_view cell, std::size_t r, std::size_t c, Context& own) {
        const Place place = at(r, c);
        if (c >= columns_.size() || columns_[c].heading.empty())
            return own.fault(place, "this cell has no heading",
                             "give its column a heading, or empty it");
        const JobColumn& column = columns_[c];
        const std::string text = text_of_cell(cell);
        if (column.key == nullptr)
            return add_margin(job, "least", number_node(text, place, column.heading, marks_, own));
        switch (column.key->kind) {
        case ValueKind::names:
            return put(job, column.key->name, list_of(text, place));
        case ValueKind::count:
        case ValueKind::length:
        case ValueKind::percent:
            return put(job, column.key->name,
                       number_node(text, place, column.heading, marks_, own));
        case ValueKind::map:
            return add_margin(job, "want", number_node(text, place, column.heading, marks_, own));
        default:
            put(job, column.key->name, scalar_node(text, place));
        }
    }

    /// Panels and parts between commas.
    static Node list_of(std::string_view text, const Place& place) {
        Node list;
        list.kind = Node::Kind::list;
        list.place = place;
        for (bool more = true; more;) {
            const std::size_t comma = text.find(',');
            list.items.push_back(scalar_node(std::string(trimmed(text.substr(0, comma))), place));
            more = comma != std::string_view::npos;
            text.remove_prefix(more ? comma + 1 : text.size());
        }
        return list;
    }

    static void add_margin(Node& job, std::string_view key, Node value) {
        const Place place = value.place;
        put(map_under(job, "margin", place), key, std::move(value));
    }

    std::shared_ptr<const Source> source_;
    Context& context_;
    Layout layout_;
    DecimalMarks marks_;
    std::vector<JobColumn> columns_; ///< without a heading: none that is known
    JobsTable out_;
};

} // namespace

JobsTable jobs_table(const std::shared_ptr<const Source>& source, Context& context) {
    return JobsTableReader(source, context).read();
}

} // namespace pelt::read
