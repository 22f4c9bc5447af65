// SPDX-License-Identifier: MIT
// Building the tree of a table. Inside read/ only.
#pragma once

#include "read/context.hpp"
#include "read/table/marks.hpp"
#include "read/yaml.hpp"

#include <string>
#include <string_view>

namespace pelt::read {

Node scalar_node(std::string text, const Place& place);
/// A value that is wrong, which has been told.
Node refused_node(const Place& place);
Node map_node(const Place& place);
/// A number with a decimal point, whatever mark the table has; what is wrong with it is told.
Node number_node(std::string_view text, const Place& place, const std::string& label,
                 DecimalMarks& marks, Context& context);

/// The key stands where its value does, or at a place of its own.
void put(Node& map, std::string_view key, Node value);
void put_at(Node& map, std::string_view key, const Place& place, Node value);

/// The map under a key, made where there is none.
Node& map_under(Node& map, std::string_view key, const Place& place);

} // namespace pelt::read
