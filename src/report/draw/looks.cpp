// SPDX-License-Identifier: MIT
#include "report/draw/looks.hpp"

#include "model/error.hpp"

namespace pelt::report::draw {

const std::vector<LookRow>& looks() {
    static const std::vector<LookRow> table{
        {Look::left_over, "left-over", 0xcfd4d8, 0x000000, 0.3},
        {Look::roll_edge, "roll-edge", 0x8d979f},
        {Look::flaw, "flaw", 0x6f767c, 0x000000, 0.3},
        {Look::blank, "blank", 0xffffff, 0x000000, 0.25},
        {Look::wrapped, "wrapped", 0xe4edf5, 0x33475b, 0.18, {1.2, 0.7}},
        {Look::inlay, "inlay", 0xe3cd92, 0x33475b, 0.3, {2.2, 0.6, 0.4, 0.6}},
        {Look::lap, "lap", none, 0x33475b, 0.35, {0.4, 0.6}},
        {Look::cut, "cut", none, 0x000000, 0.42, {3.3, 1.0}},
        {Look::number_ring, "number-ring", 0xffffff, 0x000000, 0.18},
        {Look::plate, "plate", 0xffffff},
        {Look::arrow, "arrow", 0x4a5a68},
        {Look::tick, "tick", none, 0x000000, 0.18},
        {Look::leader, "leader", none, 0x000000, 0.18},
        {Look::outline, "outline", none, 0x000000, 0.2},
        {Look::finished_line, "finished-line", none, 0x33475b, 0.2, {3, 1.5}},
        {Look::control_line, "control-line", none, 0x000000, 0.25},
        {Look::field, "field", none, 0x8d979f, 0.12},
        {Look::rule, "rule", none, 0x8d979f, 0.12},
        {Look::frame, "frame", none, 0x000000, 0.5},
        {Look::tick_box, "tick-box", 0xffffff, 0x000000, 0.3},
        {Look::shade, "shade", 0xe9ecee},
    };
    return table;
}

const LookRow& row_of(Look look) {
    for (const LookRow& row : looks())
        if (row.look == look)
            return row;
    throw ProgramError("a mark has no look");
}

} // namespace pelt::report::draw
