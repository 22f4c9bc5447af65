// SPDX-License-Identifier: MIT
#include "report/paper/form_boxes.hpp"

#include <algorithm>

namespace pelt::report::paper {

draw::Picture boxes(const std::vector<Cell>& cells, double width, double height, bool head,
                    const draw::Letters& letters) {
    double shares = 0;
    for (const Cell& cell : cells)
        shares += cell.share;
    draw::Picture out{{}, width, height};
    double x = 0;
    for (const Cell& cell : cells) {
        const double wide = width * cell.share / shares;
        out.marks.push_back(
            draw::Rectangle{head ? draw::Look::shade : draw::Look::field, {x, 0, wide, height}});
        if (head)
            out.marks.push_back(draw::Rectangle{draw::Look::field, {x, 0, wide, height}});
        const double size =
            std::min(head ? 2.4 : 2.6,
                     (wide - 1.6) / std::max(0.1, letters.width_em(cell.words, draw::Face::bold)));
        out.marks.push_back(draw::Text{cell.words,
                                       {x + 0.8, height / 2},
                                       size,
                                       draw::Anchor::start,
                                       head ? draw::Face::bold : draw::Face::plain});
        x += wide;
    }
    return out;
}

} // namespace pelt::report::paper
