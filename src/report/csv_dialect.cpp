// SPDX-License-Identifier: MIT
#include "report/csv_dialect.hpp"

#include "report/csv_text.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

/// The length of the cell that `csv` begins with, quotes and all.
std::size_t length_of_cell(std::string_view csv) {
    bool quoted = false;
    std::size_t at = 0;
    for (; at < csv.size() && (quoted || (csv[at] != ',' && csv[at] != '\n')); ++at)
        quoted = csv[at] == '"' ? !quoted : quoted;
    return at;
}

std::string for_semicolons(std::string_view cell) {
    std::string out(cell);
    if (is_decimal(cell))
        std::replace(out.begin(), out.end(), '.', ',');
    else if (cell.find(';') != std::string_view::npos && cell.front() != '"')
        out = '"' + out + '"';
    return out;
}

} // namespace

std::string in_dialect(std::string_view csv, CsvDialect dialect) {
    if (dialect == CsvDialect::comma)
        return std::string(csv);
    const bool semicolons = dialect == CsvDialect::semicolon;
    std::string out;
    while (!csv.empty()) {
        const std::string_view cell = csv.substr(0, length_of_cell(csv));
        csv.remove_prefix(cell.size());
        out += semicolons ? for_semicolons(cell) : std::string(cell);
        if (csv.empty())
            break;
        const bool ends_line = csv.front() == '\n';
        csv.remove_prefix(1);
        if (ends_line)
            out += semicolons ? "\n" : "\r\n";
        else
            out += semicolons ? ';' : ',';
    }
    return out;
}

} // namespace pelt::report
