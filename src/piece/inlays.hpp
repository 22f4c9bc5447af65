// SPDX-License-Identifier: MIT
// Pieces of their own for recesses. Inside piece/ only.
#pragma once

#include "piece/panel_job.hpp"

#include <string>
#include <vector>

namespace pelt::piece {

struct InlayPiece {
    std::string name;
    Part part;
    std::vector<CutShape> shapes;
};

/// Every recess with its overlap all round, piece frame; one that the film's width does not take is
/// a fault of severity job.
std::vector<InlayPiece> inlay_pieces(const PanelJob& job, Faults& faults);

} // namespace pelt::piece
