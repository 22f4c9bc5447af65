// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace pelt::read {

/// Decimals of a currency's minor unit (ISO 4217; from memory): 2 but for the few that are listed.
int minor_digits(std::string_view currency);

} // namespace pelt::read
