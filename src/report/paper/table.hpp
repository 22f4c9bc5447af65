// SPDX-License-Identifier: MIT
// A table set in letters that have widths, row by row, so that it can run over pages.
#pragma once

#include "report/draw/picture.hpp"
#include "report/text_table.hpp"

#include <vector>

namespace pelt::report::paper {

struct SetTable {
    draw::Picture head;
    std::vector<draw::Picture> rows;
    double height() const;
};

/// At most `width` wide, in letters of size `type` or smaller where they do not fit. A cell "[  ]"
/// becomes a box to tick.
SetTable set_table(const Table& table, double width, double type, const draw::Letters& letters);

} // namespace pelt::report::paper
