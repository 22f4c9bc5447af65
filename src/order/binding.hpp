// SPDX-License-Identifier: MIT
// Which pieces make the film as long as it is. Inside order/ only.
//
// With the pieces in their places, one that lies before another along the roll and beside it across
// (or on the other side of a cut across the whole roll) pushes it on when it grows. The longest
// chain of pieces that push one another is what binds the length.
#pragma once

#include "model/order.hpp"
#include "model/plan.hpp"

namespace pelt::order {

/// Of every roll that is used. Nothing of a roll with more than a few thousand pieces.
Binding binding_of(const Job& job, const Layout& layout);

} // namespace pelt::order
