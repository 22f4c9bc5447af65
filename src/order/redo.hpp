// SPDX-License-Identifier: MIT
// How often a panel's pieces are spoilt and cut again. Inside order/ only.
#pragma once

#include "model/order.hpp"
#include "model/plan.hpp"

#include <string>
#include <vector>

namespace pelt::order {

/// By the panel's `redo`; without it by the shop's log, as far as that goes; else assumed (common
/// practice, no source): by what it is for cast film in skilled hands in a clean room, times a
/// factor of the film's kind (of a calendered film on curved panels only), and at least 40 % where
/// it asks more stretch than the film gives (trade/redo.hpp); never over 95 %.
RedoChance redo_chance(const Job& job, int vehicle, int panel);

/// Of every panel that is cut, in the files' order.
std::vector<RedoChance> redo_chances(const Job& job);

} // namespace pelt::order
