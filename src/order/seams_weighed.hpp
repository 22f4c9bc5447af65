// SPDX-License-Identifier: MIT
// What other seams, none, or narrower margins would come to. Inside order/ only.
#pragma once

#include "order/order.hpp"
#include "piece/piece.hpp"

#include <vector>

namespace pelt::order {

/// Flat and nearly flat panels whose margins are the film's, by vehicle and panel.
std::vector<std::vector<bool>> flat_panels(const std::vector<Vehicle>& vehicles);

/// Gives those panels this margin, less than what they have; false where none changes.
bool narrow_the_margins(std::vector<Vehicle>& vehicles, const Film& film,
                        const std::vector<std::vector<bool>>& flat, Um want, Um least);

/// Of a job that was laid out on new film alone, its panels cut by `ways`: each panel that is
/// divided at other than its own lines that are always used is planned again as it could be cut
/// otherwise, by trial layouts. `flat`: see above.
SeamsWeighed weigh_the_seams(const Job& job, const Layout& layout,
                             const std::vector<piece::Way>& ways, const Request& request,
                             const std::vector<std::vector<bool>>& flat);

} // namespace pelt::order
