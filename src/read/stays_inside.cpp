// SPDX-License-Identifier: MIT
#include "read/stays_inside.hpp"

#include <algorithm>
#include <cstddef>

namespace pelt::read {

bool stays_inside(std::string_view path) {
    if (path.empty() || path.front() == '/' || path.find('\\') != std::string_view::npos)
        return false;
    while (!path.empty()) {
        const std::size_t end = std::min(path.find('/'), path.size());
        if (path.substr(0, end) == "..")
            return false;
        path.remove_prefix(std::min(end + 1, path.size()));
    }
    return true;
}

} // namespace pelt::read
