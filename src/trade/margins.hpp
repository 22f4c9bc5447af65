// SPDX-License-Identifier: MIT
// Which panels want a wide margin to grip. Common practice, no source: small curved pieces want 60
// to 75 mm a side, flat ones do with less.
#pragma once

#include "model/panel_name.hpp"

namespace pelt::trade {

/// What is mostly flat and large by what it is: doors, lids, walls; not bumpers, caps, handles.
bool is_flat_by_nature(PanelKind is);

/// A rise above this share of its chord makes a panel more than nearly flat.
inline constexpr double nearly_flat_rise = .08;

} // namespace pelt::trade
