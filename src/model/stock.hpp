// SPDX-License-Identifier: MIT
// Film that lies on the shelf, as a stock file or the command line tells it, validated.
#pragma once

#include "model/fault.hpp"
#include "model/layout.hpp"
#include "model/length.hpp"
#include "model/money.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt {

/// What a stretch of film is worth: `price` for `by` of its length.
struct CostOfLength {
    Length by = Length::from_mm(1'000);
    Money price;

    /// Of a length, rounded up to a millionth of the currency's unit.
    Money of(Um length) const;
    friend auto operator<=>(const CostOfLength&, const CostOfLength&) = default;
};

/// A roll or a remnant. Sizes round down, flaws outwards: never more film than there is.
struct StockRoll {
    std::string name;
    std::string film;        ///< by the name in its file; empty: whatever film is asked for
    std::optional<Um> width; ///< none: as wide as the film that is asked for
    Um length = 0;
    std::optional<Um> trim; ///< none: the film's
    std::string batch;      ///< empty: not known
    CostOfLength cost;      ///< 0 where nothing is said
    bool arrow_known = true;
    std::vector<Flaw> flaws;
    Place place;
};

struct Stock {
    std::string file; ///< as messages call it
    Place place;
    bool demonstration = false;
    std::vector<StockRoll> rolls; ///< in the file's order; their names differ
};

} // namespace pelt
