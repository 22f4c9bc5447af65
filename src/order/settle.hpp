// SPDX-License-Identifier: MIT
// How each panel of a job is cut: whole or divided, and where. One vehicle is always divided in the
// same way, so that what is cut on Thursday meets what was cut on Monday: that hangs on the vehicle,
// the film and the wishes that shape pieces, never on which panels are chosen, how many vehicles
// there are, what lies in stock, or how hard the search looks. Inside order/ only.
#pragma once

#include "order/order.hpp"
#include "piece/piece.hpp"

#include <vector>

namespace pelt::order {

/// The wishes of a job that shape its pieces.
piece::Wishes wishes_of(const Job& job, Seams seams);

/// A way for each panel of which something is cut, both sides and all copies, by vehicle and panel.
/// Panels that cannot be cut have none: then `faults` says why. Where film decides, the whole
/// vehicle without its extras is laid out once, on new film.
std::vector<piece::Way> settled_ways(const Job& job, const Request& request, Faults& faults);

/// Of which panel a way is.
struct WhichPanel {
    int vehicle = 0;
    int panel = 0;
    friend bool operator==(const WhichPanel&, const WhichPanel&) = default;
};
WhichPanel panel_of(const piece::Way& way);

} // namespace pelt::order
