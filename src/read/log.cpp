// SPDX-License-Identifier: MIT
#include "read/log.hpp"

#include "read/decimal.hpp"
#include "read/quantities.hpp"
#include "read/suggest.hpp"
#include "read/table/checked.hpp"
#include "read/table/layout.hpp"
#include "read/table/marks.hpp"
#include "read/times.hpp"
#include "trade/names.hpp"

#include <algorithm>
#include <array>
#include <unordered_map>
#include <utility>

namespace pelt::read {
namespace {

constexpr std::string_view guess_word = "guess";

enum Column : std::size_t {
    date,
    job,
    who,
    film_kind,
    panel,
    pieces,
    spoiled,
    minutes,
    vehicle,
    reckoned,
    measured,
    columns_in_all
};
constexpr std::array<std::string_view, columns_in_all> headings{
    "date",    "job",     "who",     "film kind", "panel",   "pieces",
    "spoiled", "minutes", "vehicle", "reckoned",  "measured"};
constexpr std::array<Column, 5> needed{date, film_kind, panel, pieces, spoiled};

constexpr std::array<FilmKind, 4> film_kinds{FilmKind::cast, FilmKind::hybrid, FilmKind::calendered,
                                             FilmKind::polyurethane};

class LogReader {
public:
    LogReader(const std::shared_ptr<const Source>& source, Context& context)
        : source_(source), context_(context), layout_(layout_of(source->text)),
          marks_(layout_.separator) {}

    Log read() {
        Log out;
        out.source = source_;
        if (!is_text(source_, layout_.cells, context_) || !has_headings() || !read_headings())
            return out;
        read_head();
        for (std::size_t r = layout_.heading_row + 1; r < whole_rows(layout_.cells); ++r)
            if (const Row& row = layout_.cells.rows[r]; !is_blank(row))
                read_row(row, r, out);
        tell_broken(source_, layout_.cells, context_);
        return out;
    }

private:
    Place at(std::size_t column) const {
        const auto& cell = places_[column];
        return cell_at(source_, row_, cell.value_or(0));
    }

    bool has_headings() {
        if (layout_.has_headings())
            return true;
        if (!tell_broken(source_, layout_.cells, context_))
            context_.fault(cell_at(source_, 0, 0),
                           layout_.cells.rows.empty() ? "the file is empty"
                                                      : "no cell of the file says 'panel'",
                           "begin it with date,job,who,film kind,panel,pieces,spoiled,minutes");
        return false;
    }

    /// Above the headings one word may stand: that the log is invented.
    void read_head() {
        for (std::size_t r = 0; r < layout_.heading_row; ++r) {
            const Row& row = layout_.cells.rows[r];
            if (!is_blank(row) && plain_heading(row[0]) != "demonstration")
                tell_no_head_word(source_, layout_, r,
                                  "there may be 'demonstration' with yes or no beside it",
                                  context_);
        }
    }

    bool read_headings() {
        const Row& row = layout_.cells.rows[layout_.heading_row];
        const std::size_t before = context_.mark();
        row_ = layout_.heading_row;
        for (std::size_t c = 0; c < row.size(); ++c) {
            const std::string heading = plain_heading(row[c]);
            const auto known = std::find(headings.begin(), headings.end(), heading);
            const auto column = static_cast<std::size_t>(known - headings.begin());
            if (known == headings.end() && !heading.empty())
                context_.fault(cell_at(source_, row_, c),
                               "there is no column " + read::quoted(trimmed(row[c])),
                               did_you_mean(heading, {headings.begin(), headings.end()},
                                            "the columns are", "and"));
            else if (known != headings.end() && places_[column])
                context_.fault(cell_at(source_, row_, c),
                               "the heading " + read::quoted(row[c]) + " stands twice",
                               "keep one of the two columns");
            else if (known != headings.end())
                places_[column] = c;
        }
        for (const Column column : needed)
            if (!places_[column] && !context_.told_since(before))
                context_.fault(cell_at(source_, row_, 0),
                               "the log has no column '" + std::string(headings[column]) + "'",
                               "begin it with date,job,who,film kind,panel,pieces,spoiled,minutes");
        return !context_.told_since(before);
    }

    std::string_view cell(const Row& row, Column column) const {
        const auto& place = places_[column];
        return place && *place < row.size() ? trimmed(row[*place]) : std::string_view{};
    }

    void read_row(const Row& row, std::size_t r, Log& out) {
        if (context_.full())
            return;
        row_ = r;
        const std::size_t before = context_.mark();
        if (cell(row, panel) == guess_word) {
            GuessRow guess = guess_in(row);
            if (!context_.told_since(before))
                out.guesses.push_back(std::move(guess));
            return;
        }
        LogRow work = work_in(row);
        if (!context_.told_since(before))
            out.rows.push_back(std::move(work));
    }

    void tell(Column column, const Refusal& refusal) {
        context_.fault(at(column), std::string(headings[column]) + " " + refusal.what,
                       refusal.remedy);
    }

    /// The value of a cell, read by a parser; what is wrong, or missing, is told.
    template <class T, class Parser>
    std::optional<T> value(const Row& row, Column column, const std::string& missing,
                           Parser parse) {
        const std::string_view text = cell(row, column);
        if (text.empty()) {
            context_.fault(at(column), "the row has no " + std::string(headings[column]), missing);
            return std::nullopt;
        }
        const Parsed<T> parsed = parse(text);
        if (!parsed.value)
            tell(column, parsed.refusal);
        return parsed.value;
    }

    std::int64_t count(const Row& row, Column column, const std::string& missing) {
        constexpr std::int64_t most = 100'000;
        const auto found = value<std::int64_t>(row, column, missing, parse_count);
        if (found && (*found < 0 || *found > most))
            tell(column, {read::quoted(cell(row, column)) + " is not a number of pieces",
                          "give 0 to 100,000"});
        return found.value_or(0);
    }

    LogRow work_in(const Row& row) {
        LogRow out;
        if (const auto day = value<Day>(row, date, "write it like 2026-12-24", parse_day))
            out.date = *day;
        out.job = text_of_cell(cell(row, job));
        out.who = text_of_cell(cell(row, who));
        out.film = film_in(row);
        out.panel = text_of_cell(cell(row, panel));
        if (out.panel.empty())
            context_.fault(at(panel), "the row names no panel", "name the panel, or empty the row");
        out.is = kind_of(out.panel);
        out.stayed = count(row, pieces, "write how many stayed on, such as 1");
        out.spoiled = count(row, spoiled, "write 0 where none was spoiled");
        if (!cell(row, minutes).empty())
            out.minutes = minutes_in(row);
        return out;
    }

    std::optional<double> minutes_in(const Row& row) {
        constexpr double most = 100'000;
        const Parsed<std::string> plain = marks_.with_points(cell(row, minutes), at(minutes));
        if (!plain.value) {
            tell(minutes, plain.refusal);
            return std::nullopt;
        }
        const Parsed<double> number = parse_number(*plain.value);
        if (!number.value)
            tell(minutes, number.refusal);
        else if (*number.value < 1 || *number.value > most)
            tell(minutes, {read::quoted(cell(row, minutes)) + " is not a time that work takes",
                           "give 1 to 100,000, or leave the cell empty where it was not timed"});
        return number.value;
    }

    FilmKind film_in(const Row& row) {
        const std::string text = plain_heading(cell(row, film_kind));
        std::vector<std::string> words;
        for (const FilmKind kind : film_kinds) {
            if (name_of(kind) == text)
                return kind;
            words.emplace_back(name_of(kind));
        }
        context_.fault(at(film_kind),
                       text.empty()
                           ? "the row has no film kind"
                           : "film kind " + read::quoted(cell(row, film_kind)) + " is not known",
                       "it is one of " + listed(words));
        return FilmKind::cast;
    }

    /// Of a name that could be several things none: no table knows which.
    std::optional<PanelKind> kind_of(const std::string& name) {
        const auto known = kinds_.find(name);
        if (known != kinds_.end())
            return known->second;
        return kinds_.emplace(name, trade::named(name).is).first->second;
    }

    Um length(std::string_view text, Column column) {
        const Parsed<std::string> plain = marks_.with_points(text, at(column));
        if (!plain.value) {
            tell(column, plain.refusal);
            return 0;
        }
        const auto parsed = parse_length(*plain.value, Unit::mm);
        if (!parsed.value) {
            tell(column, parsed.refusal);
            return 0;
        }
        const Um um = parsed.value->length.floor_um();
        if (um <= 0)
            tell(column, {read::quoted(text) + " is not a length of film", "give more than 0"});
        return um;
    }

    GuessRow guess_in(const Row& row) {
        GuessRow out;
        out.vehicle = text_of_cell(cell(row, vehicle));
        for (const Column column : {vehicle, reckoned, measured})
            if (cell(row, column).empty())
                context_.fault(at(column), "the guess has no " + std::string(headings[column]),
                               "a guess has the columns vehicle, reckoned and measured");
        const std::string_view span = cell(row, reckoned);
        if (span.empty() || cell(row, measured).empty())
            return out;
        const std::size_t dots = span.find("..");
        out.low = length(span.substr(0, dots), reckoned);
        out.high =
            dots == std::string_view::npos ? out.low : length(span.substr(dots + 2), reckoned);
        if (out.high < out.low)
            tell(reckoned, {read::quoted(span) + " ends before it begins",
                            "write the shorter length, two dots, the longer one"});
        out.measured = length(cell(row, measured), measured);
        return out;
    }

    std::shared_ptr<const Source> source_;
    Context& context_;
    Layout layout_;
    DecimalMarks marks_;
    std::array<std::optional<std::size_t>, columns_in_all> places_{};
    std::unordered_map<std::string, std::optional<PanelKind>> kinds_;
    std::size_t row_ = 0; ///< the one that is read
};

} // namespace

Log log_of(const std::shared_ptr<const Source>& source, Context& context) {
    return LogReader(source, context).read();
}

} // namespace pelt::read
