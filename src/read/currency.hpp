// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

namespace pelt::read {

/// Decimals in which amounts of a currency are usually written (ISO 4217, its minor unit; the
/// currencies that have none or three from memory, all others have two). None when the text is not
/// three capitals.
std::optional<int> usual_decimals(std::string_view currency);

} // namespace pelt::read
