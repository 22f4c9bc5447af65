// SPDX-License-Identifier: MIT
#pragma once

namespace pelt::report {

/// Sizes of paper: 210 × 297 mm, 8 1/2 × 11 in.
enum class Paper { a4, letter };

} // namespace pelt::report
