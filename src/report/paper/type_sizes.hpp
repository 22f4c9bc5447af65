// SPDX-License-Identifier: MIT
// How large letters are on paper, in millimetres: read at arm's length in a workshop.
#pragma once

namespace pelt::report::paper {

/// 9 points (a point is 1/72 in): nothing on a cut sheet is set smaller.
inline constexpr double smallest_type = 9 * 25.4 / 72;
inline constexpr double plain_type = 3.2;

} // namespace pelt::report::paper
