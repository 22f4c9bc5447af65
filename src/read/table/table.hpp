// SPDX-License-Identifier: MIT
// A vehicle as a table, a row a panel, turned into the tree that a YAML file gives, so that all
// rules of the key table hold for it. Inside read/ only.
#pragma once

#include "read/context.hpp"
#include "read/yaml.hpp"

#include <memory>
#include <optional>

namespace pelt::read {

/// The tree of a table; places in it are cells. Without one, what is wrong has been told.
std::optional<Node> vehicle_table(const std::shared_ptr<const Source>& source, Context& context);

/// Faults about values name them as YAML files do; here by the headings of their columns.
void call_by_headings(Faults& faults);

} // namespace pelt::read
