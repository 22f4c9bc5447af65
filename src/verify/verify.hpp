// SPDX-License-Identifier: MIT
// The second, independent look at a layout, in exact integers, from the vehicle on. Uses model/
// only, never the code that made the layout.
#pragma once

#include "model/blank.hpp"
#include "model/plan.hpp"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace pelt::verify {

/// A plan when nothing is wrong, else one sentence for everything that is.
struct Verdict {
    std::optional<Plan> plan;
    std::vector<std::string> faults;
};

/// Checks every promise that a cut sheet makes: every piece of every panel, side and copy is there
/// once and nothing else; turned as its direction allows, never mirrored; within the usable width,
/// the used length and the roll; clear of flaws and of one another; cuts that free every piece.
Verdict verify(std::shared_ptr<const Job> job, Layout layout);

} // namespace pelt::verify
