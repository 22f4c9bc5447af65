// SPDX-License-Identifier: MIT
#include "model/film.hpp"

namespace pelt {

std::string_view name_of(FilmKind kind) {
    switch (kind) {
    case FilmKind::cast:
        return "cast";
    case FilmKind::hybrid:
        return "hybrid";
    case FilmKind::calendered:
        return "calendered";
    case FilmKind::polyurethane:
        return "polyurethane";
    }
    return "cast";
}

} // namespace pelt
