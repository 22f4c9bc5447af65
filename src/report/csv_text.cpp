// SPDX-License-Identifier: MIT
#include "report/csv_text.hpp"

#include "model/csv_quotes.hpp"

namespace pelt::report {

std::string csv_text(std::string_view text) {
    std::string field(text);
    if (!field.empty() && std::string_view("=+-@\t\r\n").find(field.front()) != std::string::npos)
        field.insert(field.begin(), '\'');
    if (field.find_first_of(",\"\r\n") == std::string::npos)
        return field;
    return in_csv_quotes(field);
}

std::string csv_line(const std::vector<std::string>& fields) {
    std::string line;
    for (std::size_t i = 0; i < fields.size(); ++i)
        line += (i == 0 ? "" : ",") + fields[i];
    return line + "\n";
}

} // namespace pelt::report
