// SPDX-License-Identifier: MIT
#include "order/order.hpp"
#include "piece/piece.hpp"

namespace pelt::order {

PanelFinish finish_of(const Job& job, int vehicle, int panel) {
    const auto v = static_cast<std::size_t>(vehicle);
    const auto p = static_cast<std::size_t>(panel);
    return piece::finish_of(job.vehicles.at(v).panels.at(p), job.developed.at(v).at(p), job.film,
                            job.left_on);
}

} // namespace pelt::order
