// SPDX-License-Identifier: MIT
// The number of a cut, on its line, and where the ruler is set for it.
#pragma once

#include "report/draw/picture.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::report::draw {

struct SetCutNumber {
    Picture picture;
    Box box; ///< what it takes
};

/// Slides the number, and the ruler's measure after it, along the cut from `a` to `b` until they
/// lie over nothing that is taken: with the measure in the first size that does, else without it;
/// none where the cut is too short for either. Both read from the near edge, or from the left.
std::optional<SetCutNumber> set_cut_number(const Point& a, const Point& b,
                                           const std::string& number, const std::string& ruler,
                                           const std::vector<double>& sizes, const Letters& letters,
                                           const std::vector<Box>& taken);

} // namespace pelt::report::draw
