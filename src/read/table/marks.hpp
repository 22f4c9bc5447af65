// SPDX-License-Identifier: MIT
// Decimal points and decimal commas of a table, which must not be taken for thousands. Inside read/
// only.
#pragma once

#include "model/fault.hpp"
#include "read/quantities.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace pelt::read {

/// Reads the numbers of one table; a table has one kind of decimal mark.
class DecimalMarks {
public:
    /// Between cells parted by commas decimals have a point.
    explicit DecimalMarks(char separator) : only_points_(separator == ',') {}

    /// The text with decimal points, or why not. A mark before exactly three digits may part off
    /// thousands as well.
    Parsed<std::string> with_points(std::string_view text, const Place& place);

private:
    std::optional<Refusal> refusal_of(std::string_view text, std::size_t at, const Place& place);

    bool only_points_;
    char first_mark_ = '\0';
    Place first_place_;
};

} // namespace pelt::read
