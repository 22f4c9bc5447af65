// SPDX-License-Identifier: MIT
#include "model/csv_quotes.hpp"
#include "read/table/table_of.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace pelt::read {
namespace {

bool is_formula(const std::string& cell) {
    const bool number = cell.size() > 1 && cell[0] == '-' && cell[1] >= '0' && cell[1] <= '9';
    return !cell.empty() && !number && std::string_view("=+-@").find(cell[0]) != std::string::npos;
}

} // namespace

std::string table_line(const std::vector<std::string>& cells) {
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const std::string text = is_formula(cells[i]) ? "'" + cells[i] : cells[i];
        const bool plain = text.find_first_of(",;\t\"\r\n") == std::string::npos;
        line += (i == 0 ? "" : ",") + (plain ? text : in_csv_quotes(text));
    }
    return line + "\n";
}

std::string table_number(double value) {
    constexpr double thousandths = 1000;
    constexpr std::size_t could_be_thousands = 4; // with its point
    const double kept = std::round(value * thousandths) / thousandths;
    std::array<char, 40> out{};
    const auto end =
        std::to_chars(out.data(), out.data() + out.size(), kept, std::chars_format::fixed);
    std::string text(out.data(), end.ptr);
    const std::size_t point = text.find('.');
    if (point != std::string::npos && text.size() - point == could_be_thousands)
        text += '0';
    return text;
}

} // namespace pelt::read
