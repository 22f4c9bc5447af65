// SPDX-License-Identifier: MIT
// The same sheet in five formats: whether they tell the same.
#include "trial.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <map>

namespace pelt::generated {
namespace {

using nlohmann::json;

// CSV as in RFC 4180. -----------------------------------------------------------------------------

std::vector<std::vector<std::string>> rows_of(const std::string& csv) {
    std::vector<std::vector<std::string>> rows;
    std::vector<std::string> row(1);
    bool quoted = false;
    for (std::size_t i = 0; i < csv.size(); ++i) {
        const char c = csv[i];
        if (quoted && c == '"' && i + 1 < csv.size() && csv[i + 1] == '"')
            row.back() += csv[++i];
        else if (c == '"')
            quoted = !quoted;
        else if (!quoted && c == ',')
            row.emplace_back();
        else if (!quoted && c == '\n') {
            rows.push_back(row);
            row.assign(1, "");
        } else if (quoted || c != '\r')
            row.back() += c;
    }
    return rows;
}

std::map<int, json> pieces_of(const json& sheet) {
    std::map<int, json> out;
    for (const json& roll : sheet["rolls"])
        for (json piece : roll["pieces"]) {
            piece["roll"] = roll["roll"];
            piece["trim_mm"] = roll["trim_mm"];
            out[piece["number"]] = piece;
        }
    return out;
}

bool same_mm(const std::string& text, const json& mm) {
    return std::llround(std::stod(text) * 1'000) == um(mm);
}

void check_csv(const std::string& csv, const std::map<int, json>& pieces, Complaints& out) {
    const auto rows = rows_of(csv);
    if (rows.size() != pieces.size() + 1) {
        out.emplace_back("CSV: another number of pieces");
        return;
    }
    for (std::size_t i = 1; i < rows.size(); ++i) {
        if (rows[i].size() != rows[0].size()) {
            out.emplace_back("CSV: rows of different lengths");
            return;
        }
        std::map<std::string, std::string> row;
        for (std::size_t k = 0; k < rows[0].size(); ++k)
            row[rows[0][k]] = rows[i][k];
        const auto found = pieces.find(std::stoi(row["number"]));
        if (found == pieces.end()) {
            out.emplace_back("CSV: a number that JSON lacks");
            return;
        }
        const json& piece = found->second;
        if (row["panel"] != piece["panel"] || row["side"] != piece["side"] ||
            row["roll"] != piece["roll"] || !same_mm(row["from_free_end_mm"], piece["at_mm"][0]) ||
            !same_mm(row["from_near_edge_mm"], piece["at_mm"][1]) ||
            !same_mm(row["along_mm"], piece["size_mm"][0]) ||
            !same_mm(row["across_mm"], piece["size_mm"][1]))
            out.push_back("CSV: piece " + row["number"] + " is not where JSON has it");
    }
}

// Table and Markdown: one document, set in two ways. ----------------------------------------------

/// Letters, digits and points in runs, sorted; marks, frames and line ends fall away.
std::vector<std::string> words_of(const std::string& text) {
    std::vector<std::string> words(1);
    for (const char c : text)
        if (std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '.')
            words.back() += c;
        else if (!words.back().empty())
            words.emplace_back();
    std::sort(words.begin(), words.end());
    return words;
}

void check_words(const std::string& table, const std::string& markdown, Complaints& out) {
    const auto a = words_of(table);
    const auto b = words_of(markdown);
    std::vector<std::string> only_one;
    std::set_symmetric_difference(a.begin(), a.end(), b.begin(), b.end(),
                                  std::back_inserter(only_one));
    if (!only_one.empty())
        out.push_back("table and Markdown differ: " + listed(only_one, " ").substr(0, 120));
}

/// The cells of a row of a Markdown table, without blanks around them; none where it is none.
std::vector<std::string> cells_of(const std::string& line) {
    std::vector<std::string> cells;
    if (!line.starts_with("| "))
        return cells;
    for (std::size_t at = 1; at < line.size();) {
        const std::size_t end = std::min(line.find('|', at), line.size());
        std::string cell = line.substr(at, end - at);
        cell.erase(0, cell.find_first_not_of(' '));
        cell.erase(cell.find_last_not_of(' ') + 1);
        cells.push_back(cell);
        at = end + 1;
    }
    return cells;
}

/// "1616 × 1258", "0 / 212", "new 1: 0 / 212": the two numbers.
std::vector<std::int64_t> two_numbers(const std::string& text) {
    std::vector<std::int64_t> out;
    const std::size_t colon = text.rfind(": "); // a place on one of several rolls
    const std::string numbers = colon == std::string::npos ? text : text.substr(colon + 2);
    for (const std::string& word : words_of(numbers))
        if (!word.empty() && word.find_first_not_of("0123456789") == std::string::npos)
            out.push_back(std::stoll(word));
    return out;
}

/// Tables round to whole millimetres, sizes up.
bool is_about(std::int64_t mm, std::int64_t um) {
    return std::abs(mm * 1'000 - um) < 1'000;
}

bool row_agrees(const std::vector<std::string>& cells, const json& piece, bool straight) {
    // words_of sorts, so pairs are compared as sets
    std::vector<std::int64_t> size{um(piece["size_mm"][0]), um(piece["size_mm"][1])};
    std::vector<std::int64_t> place{um(piece["at_mm"][0]),
                                    um(piece["at_mm"][1]) - (straight ? um(piece["trim_mm"]) : 0)};
    const auto agree = [](std::vector<std::int64_t> told, std::vector<std::int64_t> is) {
        std::sort(told.begin(), told.end());
        std::sort(is.begin(), is.end());
        return told.size() == 2 && is_about(told[0], is[0]) && is_about(told[1], is[1]);
    };
    return agree(two_numbers(cells[4]), size) && agree(two_numbers(cells[6]), place);
}

/// The list in the order of laying, in millimetres.
void check_laying(const std::string& markdown, const std::map<int, json>& pieces, bool straight,
                  Complaints& out) {
    std::size_t rows = 0;
    std::size_t at = 0;
    while (at < markdown.size()) {
        const std::size_t end = std::min(markdown.find('\n', at), markdown.size());
        const std::vector<std::string> cells = cells_of(markdown.substr(at, end - at));
        at = end + 1;
        if (cells.size() < 7 || cells[0] != "\\[  \\]")
            continue;
        ++rows;
        const auto piece = pieces.find(std::stoi(cells[1]));
        if (piece == pieces.end() || !row_agrees(cells, piece->second, straight))
            out.push_back("Markdown: piece " + cells[1] + " is not as JSON has it");
    }
    if (rows != pieces.size())
        out.emplace_back("Markdown: another number of pieces than JSON");
}

void check_length(const std::string& markdown, const json& sheet, Complaints& out) {
    const std::string begin = "Length of film used: ";
    const std::size_t at = markdown.find(begin);
    if (at == std::string::npos) {
        out.emplace_back("Markdown: no length");
        return;
    }
    const auto mm = std::llround(std::stod(markdown.substr(at + begin.size())) * 1'000);
    if (!is_about(mm, um(sheet["length_mm"])))
        out.emplace_back("Markdown: another length than JSON");
}

// SVG ---------------------------------------------------------------------------------------------

bool is_entity(const std::string& text, std::size_t at) {
    for (const char* entity : {"&amp;", "&lt;", "&gt;", "&quot;"})
        if (text.compare(at, std::string(entity).size(), entity) == 0)
            return true;
    return false;
}

/// Tags close in turn, values stand in quotes, no & but of an entity. XML 1.0, section 2.1, as far
/// as a drawing without a prolog of its own needs it.
bool is_well_formed(const std::string& text) {
    std::vector<std::string> open;
    int elements = 0;
    for (std::size_t at = text.find_first_of("<&"); at != std::string::npos;
         at = text.find_first_of("<&", at + 1)) {
        if (text[at] == '&') {
            if (!is_entity(text, at))
                return false;
            continue;
        }
        const std::size_t end = text.find('>', at);
        if (end == std::string::npos || end == at + 1)
            return false;
        const std::string tag = text.substr(at + 1, end - at - 1);
        if (std::count(tag.begin(), tag.end(), '"') % 2 != 0 || tag.find('<') != std::string::npos)
            return false;
        if (tag.front() == '/') {
            if (open.empty() || open.back() != tag.substr(1))
                return false;
            open.pop_back();
        } else if (tag.front() != '?' && tag.back() != '/') {
            if (open.empty() && elements++ > 0)
                return false;
            open.push_back(tag.substr(0, tag.find_first_of(" \n")));
        }
    }
    return open.empty() && elements == 1;
}

} // namespace

void check_formats(const Job& job, const Outputs& outputs, const json& sheet, Complaints& out) {
    const std::map<int, json> pieces = pieces_of(sheet);
    check_csv(outputs.csv, pieces, out);
    check_words(outputs.table, outputs.markdown, out);
    if (job.units == "mm") {
        check_laying(outputs.markdown, pieces, !job.contour, out);
        check_length(outputs.markdown, sheet, out);
    }
    if (!is_well_formed(outputs.svg))
        out.emplace_back("SVG: not well-formed");
}

} // namespace pelt::generated
