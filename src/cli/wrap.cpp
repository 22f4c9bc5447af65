// SPDX-License-Identifier: MIT
#include "cli/wrap.hpp"

namespace pelt::cli {

std::string wrapped(std::string_view text, std::string_view first, std::size_t indent) {
    std::string out(first);
    std::size_t column = first.size();
    if (column > indent) {
        out += '\n';
        column = 0;
    }
    out += std::string(indent - column, ' ');
    column = indent;
    while (!text.empty()) {
        const std::size_t end = text.find(' ');
        const std::string_view word = text.substr(0, end);
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        if (column > indent && column + 1 + word.size() > help_width) {
            out += '\n' + std::string(indent, ' ');
            column = indent;
        } else if (column > indent) {
            out += ' ';
            ++column;
        }
        out += word;
        column += word.size();
    }
    return out + '\n';
}

} // namespace pelt::cli
