// SPDX-License-Identifier: MIT
#include "model/piece.hpp"

namespace pelt {

std::string_view name_of(CutBy by) {
    return by == CutBy::straight ? "straight" : "contour";
}

std::string_view name_of(PieceKind kind) {
    return kind == PieceKind::main ? "main" : "inlay";
}

} // namespace pelt
