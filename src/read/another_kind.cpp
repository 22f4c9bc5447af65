// SPDX-License-Identifier: MIT
#include "read/another_kind.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace pelt::read {
namespace {

bool begins_with_name_of_thing(std::string_view line) {
    static constexpr std::array<std::string_view, 3> names{"vehicle", "film", "stock"};
    line.remove_prefix(std::min(line.size(), line.find_first_not_of(" \t{\"'")));
    for (const std::string_view name : names)
        if (line.starts_with(name)) {
            line.remove_prefix(name.size());
            line.remove_prefix(std::min(line.size(), line.find_first_not_of(" \"'")));
            return line.starts_with(':');
        }
    return false;
}

} // namespace

bool is_another_kind(const Source& source) {
    if (source.name == "-" || source.name.ends_with(".yaml") || source.name.ends_with(".yml"))
        return false;
    std::string_view text = source.text;
    while (!text.empty()) {
        const std::string_view line = text.substr(0, text.find('\n'));
        if (begins_with_name_of_thing(line))
            return false;
        text.remove_prefix(std::min(text.size(), line.size() + 1));
    }
    return true;
}

Fault another_kind_of_file(const std::shared_ptr<const Source>& source) {
    return {Severity::file,
            {source, 0, 0},
            "",
            "is no vehicle, film or stock file: it is not YAML, and no line of it begins with "
            "'vehicle:', 'film:' or 'stock:'",
            "write one like those that 'pelt list' names; a scan is named in a vehicle file, under "
            "'surface'"};
}

} // namespace pelt::read
