// SPDX-License-Identifier: MIT
// Messages that a page on the same terminal makes superfluous.
#pragma once

#include "cli/formats.hpp"
#include "cli/world.hpp"
#include "model/fault.hpp"

#include <vector>

namespace pelt::cli {

/// What of the faults of a job a page says itself.
enum class PageHas { warnings, warnings_and_remarks };

/// Without those that the page has, where that is seen on the terminal on which messages are.
Faults not_seen_on_the_page(Faults faults, const std::vector<Target>& targets, const World& world,
                            PageHas has);

} // namespace pelt::cli
