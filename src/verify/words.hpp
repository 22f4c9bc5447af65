// SPDX-License-Identifier: MIT
// How the sentences call things. Inside verify/ only.
#pragma once

#include "model/plan.hpp"

#include <string>

namespace pelt::verify {

const Panel& panel_of(const Job& job, const PieceId& id);

/// "panel 'door', left, copy 1, piece 2 of 3", the vehicle before it where there are several.
std::string called(const Job& job, const PieceId& id);

/// The same without its number.
std::string called_whole(const Job& job, const PieceId& id);

/// "12.345 mm".
std::string in_mm(Um length);
/// "(12.345, 0.000)".
std::string in_mm(GridPoint point);

} // namespace pelt::verify
