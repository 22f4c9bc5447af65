// SPDX-License-Identifier: MIT
#include "trade/used_up.hpp"

#include "trade/consumables.hpp"

namespace pelt::trade {
namespace {

constexpr auto table = std::to_array<Consumable>({
    {"wipe-down fluid", "l", UsedBy::area, 0.08, 0.16, 1, Hazard::solvent},
    {"degreaser", "l", UsedBy::area, 0.04, 0.08, 1, Hazard::solvent},
    {"glue remover", "l", UsedBy::old_film, 0.04, 0.16, 1, Hazard::solvent},
    {"clay", "g", UsedBy::area, 8, 16, 100},
    {"lint-free wipes", "", UsedBy::area, 3.3, 6.6},
    {"blade tips", "", UsedBy::pieces, blade_tips_a_panel.least, blade_tips_a_panel.most, 1,
     Hazard::blade},
    {"cutting tape", "m", UsedBy::cut_out, 1.1, 1.5},
    {"edge tape", "m", UsedBy::hard_edges, 1, 1.2},
    {"primer", "ml", UsedBy::hard_edges, 4, 8, 100, Hazard::solvent},
    {"masking tape", "rolls", UsedBy::area, 0.08, 0.16},
    {"double-sided tape", "m", UsedBy::badges, 0.1, 0.3},
    {"clips", "", UsedBy::clips, clips_broken_percent.least / 100.0,
     clips_broken_percent.most / 100.0},
    {"squeegee felts", "", UsedBy::area, 0.16, 0.33},
    {"gloves", "pairs", UsedBy::area, 0.8, 1.6},
});

} // namespace

std::span<const Consumable> consumables() {
    return table;
}

Hazard hazard_of(std::string_view name) {
    for (const Consumable& row : table)
        if (row.name == name)
            return row.hazard;
    return Hazard::none;
}

} // namespace pelt::trade
