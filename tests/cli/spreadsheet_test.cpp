// SPDX-License-Identifier: MIT
// CSV of the whole program, as a spreadsheet takes it: with hostile names in every place that a
// file can put one, and with its columns told in the manual.
#include "program.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <sstream>
#include <string>
#include <vector>

using namespace pelt;

namespace {

using Row = std::vector<std::string>;

/// RFC 4180, section 2, with any separator: fields as they are written, quotes taken off.
std::vector<Row> rows_of(const std::string& text, char separator) {
    std::vector<Row> rows(1, Row(1));
    bool quoted = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        std::string& field = rows.back().back();
        if (quoted && text[i] == '"' && i + 1 < text.size() && text[i + 1] == '"')
            field += text[i++];
        else if (text[i] == '"')
            quoted = !quoted;
        else if (!quoted && text[i] == separator)
            rows.back().emplace_back();
        else if (!quoted && text[i] == '\n')
            rows.emplace_back(1);
        else
            field += text[i];
    }
    rows.pop_back(); // behind the last line end
    return rows;
}

/// A number as CSV has it, in either dialect.
bool is_number(std::string field) {
    if (!field.empty() && field.front() == '-')
        field.erase(0, 1);
    return !field.empty() && field.find_first_not_of("0123456789.,") == std::string::npos;
}

/// OWASP, "CSV Injection": what a cell must not begin with.
bool would_run(const std::string& field) {
    return !field.empty() && std::string("=+-@\t\r\n").find(field.front()) != std::string::npos &&
           !is_number(field);
}

const std::vector<std::vector<std::string>>& commands_with_csv() {
    static const std::vector<std::vector<std::string>> all{
        {"cut", "bad.yaml", "bad-film.yaml", "--with", "+extra"},
        {"cut", "bad.yaml", "bad-film.yaml", "--summary"},
        {"cut", "like.yaml", "bad-film.yaml"},
        {"area", "bad.yaml", "bad-film.yaml"},
        {"compare", "bad.yaml", "bad-film.yaml"},
        {"strip", "bad.yaml", "bad-film.yaml"},
        {"quote", "bad-jobs.yaml"},
    };
    return all;
}

void write_hostile_files(const cli_test::Program& pelt) {
    pelt.folder().write(
        "bad.yaml",
        "vehicle: '=cmd|calc;=2'\noverall: {length: 4000, width: 1700, height: 1500}\npanels:\n"
        "  '+hood': {size: [1200.5, 800], forward: up, edges: none, is: hood, group: '@top'}\n"
        "  '-roof': {size: [1300, 900], forward: up, edges: none, is: roof}\n"
        "  '1.5': {size: [300, 200], forward: up, edges: none, is: plain panel, extra: '+extra'}\n"
        "hardware:\n  '@jets': {tool: '=screw;driver', with: ['+hood'], minutes: 2.5}\n"
        "  '+rail': {tool: '-key', with: ['-roof'], after: ['@jets'], minutes: 3}\n");
    pelt.folder().write(
        "like.yaml",
        "vehicle: '@like'\nlike: bad.yaml\noverall: {length: 4100, width: 1700, height: 1500}\n");
    pelt.folder().write(
        "bad-film.yaml",
        "film: '-film;x'\nroll: {width: 1524 mm, trim: 6 mm}\ndirection: two-way\n"
        "allowances: {tuck: 0 mm, bleed: 10 mm, margin: 40 mm, overlap: 10 mm, "
        "spacing: 4 mm, flush: 2 mm}\nsold: [{by: 1 m, price: 10.55}]\ncurrency: EUR\n");
    pelt.folder().write(
        "bad-jobs.yaml",
        "jobs:\n  - {job: '=job', vehicle: bad.yaml, film: bad-film.yaml, customer: '+c'}\n"
        "  - {job: '@none', vehicle: '-none.yaml', film: bad-film.yaml}\n");
}

std::string csv_of(const cli_test::Program& pelt, std::vector<std::string> words,
                   const std::string& dialect) {
    words.insert(words.end(), {"-q", "--format", "csv", "--csv", dialect});
    return pelt(words).output;
}

/// The words behind `.It Li` in the manual's section of columns.
std::set<std::string> columns_in_manual() {
    const std::string page = support::contents_of(std::string(PELT_TOP) + "/man/pelt.1.in");
    const std::size_t begin = page.find(".Ss Columns of CSV");
    std::istringstream section(page.substr(begin, page.find(".Sh ENVIRONMENT") - begin));
    std::set<std::string> out;
    const std::string item = ".It Li ";
    for (std::string line; std::getline(section, line);) {
        std::istringstream words(line.rfind(item, 0) == 0 ? line.substr(item.size()) : "");
        for (std::string word; words >> word;)
            if (word != ",")
                out.insert(word);
    }
    return out;
}

} // namespace

TEST_CASE("no cell of any CSV begins a formula, whatever files call things, and rows are whole") {
    const cli_test::Program pelt;
    write_hostile_files(pelt);
    std::size_t guarded = 0;
    for (const auto& words : commands_with_csv())
        for (const std::string dialect : {"comma", "semicolon"}) {
            CAPTURE(words.front());
            CAPTURE(words[1]);
            CAPTURE(dialect);
            const auto rows = rows_of(csv_of(pelt, words, dialect), dialect == "comma" ? ',' : ';');
            REQUIRE(rows.size() >= 2);
            for (const Row& row : rows) {
                CHECK(row.size() == rows.front().size());
                for (const std::string& field : row) {
                    CAPTURE(field);
                    CHECK_FALSE(would_run(field));
                    guarded += field.rfind('\'', 0) == 0 ? 1 : 0;
                }
            }
        }
    CHECK(guarded >= 40); // the hostile names did come through
}

TEST_CASE("the dialects say the same, but for how numbers are written") {
    const cli_test::Program pelt;
    write_hostile_files(pelt);
    for (const auto& words : commands_with_csv()) {
        CAPTURE(words.front());
        const std::string comma = csv_of(pelt, words, "comma");
        const auto plain = rows_of(comma, ',');
        const auto other = rows_of(csv_of(pelt, words, "semicolon"), ';');
        REQUIRE(plain.size() == other.size());
        for (std::size_t r = 0; r < plain.size(); ++r)
            for (std::size_t c = 0; c < plain[r].size(); ++c) {
                std::string number = plain[r][c];
                if (is_number(number) && number != "1.5") // that is the name of a panel
                    std::replace(number.begin(), number.end(), '.', ',');
                CHECK(other[r].at(c) == number);
            }
        std::string strict = csv_of(pelt, words, "rfc4180");
        CHECK(std::count(strict.begin(), strict.end(), '\r') ==
              std::count(comma.begin(), comma.end(), '\n'));
        std::erase(strict, '\r');
        CHECK(strict == comma);
    }
}

TEST_CASE("the manual tells every column of every CSV, and no other") {
    const cli_test::Program pelt;
    write_hostile_files(pelt);
    std::set<std::string> columns;
    for (const auto& words : commands_with_csv()) {
        const std::vector<Row> rows = rows_of(csv_of(pelt, words, "comma"), ',');
        columns.insert(rows.at(0).begin(), rows.at(0).end());
    }
    CHECK(columns.size() > 60);
    CHECK(columns == columns_in_manual());
}
