// SPDX-License-Identifier: MIT
#include "report/paper/pattern_list.hpp"

#include "report/facts.hpp"
#include "report/words.hpp"

#include <algorithm>
#include <map>
#include <utility>

namespace pelt::report::paper {
namespace {

draw::Path path_of(draw::Look look, const Polygon& polygon, const Box& box) {
    draw::Path path{look, {}};
    const auto add = [&](const Ring& ring) {
        draw::Ring out;
        for (const GridPoint& p : ring)
            out.push_back({draw::in_mm(p.x - box.low.x), draw::in_mm(box.high.y - p.y)});
        path.rings.push_back(std::move(out));
    };
    add(polygon.outer);
    for (const Ring& hole : polygon.holes)
        add(hole);
    return path;
}

} // namespace

std::vector<Pattern> patterns_of(const Sheet& sheet, const Measures& measures) {
    const Job& job = sheet.plan.job();
    std::vector<std::pair<std::pair<const Piece*, const CutShape*>, std::vector<int>>> groups;
    std::map<int, const PlacedPiece*> by_number;
    const std::vector<PlacedPiece> pieces = pieces_by_number(sheet.plan);
    for (const PlacedPiece& p : pieces) {
        by_number[p.number] = &p;
        const std::pair key{&p.piece, &p.shape};
        const auto same = std::find_if(groups.begin(), groups.end(),
                                       [&](const auto& g) { return g.first == key; });
        (same == groups.end() ? groups.emplace_back(key, std::vector<int>{}) : *same)
            .second.push_back(p.number);
    }
    std::vector<Pattern> out;
    for (const auto& [key, numbers] : groups) {
        const PlacedPiece& first = *by_number.at(numbers.front());
        const Box box = box_of(first.shape.outline.outer);
        const Box finished = box_of(first.piece.wrapped.outer);
        std::vector<std::string> names;
        for (const int number : numbers)
            names.push_back(std::to_string(number) + " · " +
                            full_label_of(job, by_number.at(number)->id));
        out.push_back({listed(names) + " · cut " + measures.sides(box.along(), box.across()) +
                           ", finished " + measures.sides(finished.along(), finished.across()) +
                           " " + measures.size_unit(),
                       {path_of(draw::Look::outline, first.shape.outline, box),
                        path_of(draw::Look::finished_line, first.piece.wrapped, box)},
                       draw::in_mm(box.along()),
                       draw::in_mm(box.across())});
    }
    return out;
}

} // namespace pelt::report::paper
