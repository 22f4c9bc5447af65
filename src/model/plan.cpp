// SPDX-License-Identifier: MIT
#include "model/plan.hpp"

namespace pelt {

int no_of(const PieceId& id, int faces) {
    return (id.copy - 1) / faces + 1;
}

bool LeftOut::holds(const PieceId& id, int faces) const {
    const int own = id.kind == PieceKind::inlay ? inlays : id.part;
    return vehicle == id.vehicle && panel == id.panel && side == id.side &&
           (no == all || no == no_of(id, faces)) && (piece == all || piece == own);
}

} // namespace pelt
