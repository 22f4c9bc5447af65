// SPDX-License-Identifier: MIT
#pragma once

#include "model/fault.hpp"
#include "read/context.hpp"

#include <optional>
#include <set>
#include <string>
#include <string_view>

namespace pelt::read {

/// Names of one sort that a file gives ("hardware"), for references to them. Without a list the
/// file's own was unreadable, and nothing is said about references.
struct Names {
    std::string sort;
    std::optional<std::set<std::string>> known;
};

/// Tells a reference to a name that the file does not give. Empty references are none.
void check_reference(const std::string& name, std::string_view label, const Place& place,
                     const Names& names, Context& context);

} // namespace pelt::read
