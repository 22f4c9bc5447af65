// SPDX-License-Identifier: MIT
#include "verify/checks.hpp"

namespace pelt::verify {

void check_measured(const Job& job, Sentences& faults) {
    for (const Piece& piece : job.pieces)
        for (const PieceId& id : piece.ids) {
            const Panel& panel = job.vehicles[static_cast<std::size_t>(id.vehicle)]
                                     .panels[static_cast<std::size_t>(id.panel)];
            if (panel.guessed)
                faults.push_back("the panel '" + panel.name + "' was not measured");
        }
}

} // namespace pelt::verify
