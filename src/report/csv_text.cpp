// SPDX-License-Identifier: MIT
#include "report/csv_text.hpp"

#include "model/csv_quotes.hpp"

#include <algorithm>

namespace pelt::report {

std::string csv_text(std::string_view text) {
    std::string field(text);
    if (!field.empty() && std::string_view("=+-@\t\r\n").find(field.front()) != std::string::npos)
        field.insert(field.begin(), '\'');
    if (field.find_first_of(",\"\r\n") == std::string::npos && !is_decimal(field))
        return field;
    return in_csv_quotes(field);
}

bool is_decimal(std::string_view field) {
    const auto is_digit = [](char c) { return c >= '0' && c <= '9'; };
    if (!field.empty() && field.front() == '-')
        field.remove_prefix(1);
    const std::size_t point = field.find('.');
    if (point == 0 || point == std::string_view::npos || point + 1 == field.size())
        return false;
    const std::string_view whole = field.substr(0, point);
    const std::string_view part = field.substr(point + 1);
    return std::all_of(whole.begin(), whole.end(), is_digit) &&
           std::all_of(part.begin(), part.end(), is_digit);
}

std::string csv_line(const std::vector<std::string>& fields) {
    std::string line;
    for (std::size_t i = 0; i < fields.size(); ++i)
        line += (i == 0 ? "" : ",") + fields[i];
    return line + "\n";
}

} // namespace pelt::report
