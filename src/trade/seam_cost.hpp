// SPDX-License-Identifier: MIT
// What a millimeter of seam counts for when places to divide a panel are compared.
#pragma once

namespace pelt::trade {

/// Common practice, no source; only the ratios matter.
struct SeamCost {
    /// The fitter chose the line: nobody will mind a seam there.
    static constexpr double own_line = 1;
    /// The lower third is seen least by somebody who stands before the vehicle.
    static constexpr double lower_third = 2;
    /// Anywhere else a seam is seen.
    static constexpr double elsewhere = 3;
    /// A relief cut is lapped with its own film, but it is as long and as plain as a seam.
    static constexpr double relief = 1;
};

} // namespace pelt::trade
