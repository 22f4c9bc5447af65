// SPDX-License-Identifier: MIT
#include "model/quote.hpp"

namespace pelt {

std::string_view name_of(Stage stage) {
    switch (stage) {
    case Stage::take_in:
        return "take-in and photographs";
    case Stage::wash:
        return "wash";
    case Stage::strip_down:
        return "parts off";
    case Stage::old_film:
        return "old film and glue off";
    case Stage::edges:
        return "edge cleaning";
    case Stage::inlays:
        return "inlays";
    case Stage::panels:
        return "panels";
    case Stage::post_heat:
        return "post-heat and edges";
    case Stage::badges:
        return "badges";
    case Stage::refit:
        return "parts back";
    case Stage::check:
        return "final check";
    }
    return "panels";
}

} // namespace pelt
