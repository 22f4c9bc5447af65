// SPDX-License-Identifier: MIT
// Whether a length is what a body of its kind usually takes. The table is common practice, no
// source: an assumption that looks for missing panels and slips of units, never a check.
#pragma once

#include "report/numbers.hpp"
#include "report/report.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::report {

/// Metres of film 1.52 m wide for the outside of a body, without door jambs, as a nest of taped
/// panels should come to.
struct UsualLength {
    std::string_view body;
    double low_m;
    double high_m;
};

/// The words that `body:` may hold to get a line.
const std::vector<UsualLength>& usual_lengths();
/// The row for a body, whatever its letter case.
const UsualLength* usual_length_of(std::string_view body);

/// One line for the sheet; none where a vehicle has no known body, panels other than extras are
/// left out, or the film is narrower than 1.37 m or wider than 1.67 m.
std::optional<std::string> plausibility(const Plan& plan, const Measures& measures);
/// Whether that line says that the length is unusual: under 75 % or over 130 % of its row.
bool is_unusual(const Plan& plan);

} // namespace pelt::report
