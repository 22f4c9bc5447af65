// SPDX-License-Identifier: MIT
#include "report/draw/svg.hpp"
#include "report/facts.hpp"
#include "report/words.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

constexpr Um between_rolls = 100 * um_per_mm;

constexpr const char* style = ".outline { fill: none; stroke: #000; stroke-width: 0.2 }\n";

/// From the roll's frame to the drawing's, whose y runs down from `top`.
draw::Ring on_page(const Ring& ring, Um width, Um top) {
    draw::Ring out;
    for (const GridPoint& p : ring)
        out.push_back({draw::in_mm(p.x), draw::in_mm(top + width - p.y)});
    return out;
}

} // namespace

std::string to_pattern_svg(const Sheet& sheet) {
    const Job& job = sheet.plan.job();
    const std::vector<PlacedPiece> pieces = pieces_by_number(sheet.plan);
    draw::Picture page;
    Um top = 0;
    for (std::size_t i = 0; i < sheet.plan.layout().rolls.size(); ++i) {
        const UsedRoll& used = sheet.plan.layout().rolls[i];
        const Roll& roll = job.rolls.at(used.roll);
        top += i == 0 ? 0 : between_rolls;
        page.marks.push_back(
            draw::GroupBegin{"roll", "roll-" + std::to_string(i + 1), "Roll " + roll.name, ""});
        for (const PlacedPiece& p : pieces) {
            if (p.roll != i)
                continue;
            const std::string number = std::to_string(p.number);
            page.marks.push_back(draw::GroupBegin{
                "piece " + std::string(name_of(p.id.kind)), "piece-" + number,
                number + " · " + full_label_of(job, p.id), "cut outline, in millimeters"});
            draw::Path path{draw::Look::outline, {on_page(p.outline.outer, roll.width, top)}};
            for (const Ring& hole : p.outline.holes)
                path.rings.push_back(on_page(hole, roll.width, top));
            page.marks.push_back(std::move(path));
            page.marks.push_back(draw::GroupEnd{});
        }
        page.marks.push_back(draw::GroupEnd{});
        page.width = std::max(page.width, draw::in_mm(used.length));
        top += roll.width;
    }
    page.height = draw::in_mm(top);
    return draw::svg_file(vehicles_of(job) + (is_demonstration(job) ? " · DEMONSTRATION" : ""),
                          style, page, draw::Ground::none);
}

} // namespace pelt::report
