// SPDX-License-Identifier: MIT
#include "model/csv_quotes.hpp"

namespace pelt {

std::string in_csv_quotes(std::string_view field) {
    std::string out = "\"";
    for (const char c : field)
        out.append(c == '"' ? 2 : 1, c);
    return out + "\"";
}

} // namespace pelt
