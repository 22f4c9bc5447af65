// SPDX-License-Identifier: MIT
// Words for the sentences of order/. Inside order/ only.
#pragma once

#include "model/plan.hpp"

#include <set>
#include <string>

namespace pelt::order {

/// "front bumper/1", "door handle/left/no 2": as options name it.
std::string name_of(const Job& job, const PieceId& id);

/// "a, b, c".
std::string listed(const std::set<std::string>& names);

/// "1.480 m", rounded up to the millimetre.
std::string in_metres(Um length);

} // namespace pelt::order
