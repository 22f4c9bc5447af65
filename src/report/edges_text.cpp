// SPDX-License-Identifier: MIT
#include "report/edges_text.hpp"

#include "order/order.hpp"
#include "report/words.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <utility>

namespace pelt::report {
namespace {

using Edges = std::vector<const EdgeFinish*>;

bool known(const Job& job, const PieceId& id) {
    const auto v = static_cast<std::size_t>(id.vehicle);
    return v < job.developed.size() && static_cast<std::size_t>(id.panel) < job.developed[v].size();
}

/// top, bottom, left, right as the files have it: within 45° of that way, ties to top and bottom.
std::string side_of(const EdgeFinish& edge) {
    if (std::abs(edge.normal.y) >= std::abs(edge.normal.x))
        return edge.normal.y > 0 ? "top" : "bottom";
    return edge.normal.x > 0 ? "right" : "left";
}

/// On a panel that is drawn with its nose to the left or right, these are front and rear, whichever
/// side it is; in the middle of the vehicle (a roof) the others are then its left and right.
/// Elsewhere left and right are the vehicle's, not the drawing's: a right twin has its left twin's
/// edges the other way round, and so has a panel that is drawn as seen from before the vehicle.
std::string on_the_vehicle(const std::string& side, const Panel& panel, Side where) {
    const bool is_left = side == "left";
    const bool nose_left = panel.forward == pelt::Heading::left;
    const bool lengthwise = nose_left || panel.forward == pelt::Heading::right;
    if (side != "left" && side != "right") {
        if (!lengthwise || panel.sides != Sides::centre)
            return side;
        return (side == "top") == nose_left ? "right" : "left";
    }
    if (lengthwise)
        return is_left == nose_left ? "front" : "rear";
    const bool twin = panel.sides == Sides::both && where == Side::right;
    const bool from_before = panel.forward == pelt::Heading::down;
    return is_left == (twin == from_before) ? "left" : "right";
}

class EdgeNames {
public:
    EdgeNames(const PieceFinish& finish, const Panel& panel, Side where)
        : finish_(finish), panel_(panel), where_(where) {}

    /// How the edges of a group are called together.
    std::string of(const Edges& group) const {
        std::vector<std::string> names;
        std::vector<std::string> numbers;
        for (const EdgeFinish* edge : group) {
            const std::string side = side_of(*edge);
            std::vector<std::string>& list =
                edge->name.empty() && !whole(side, group) ? numbers : names;
            const std::string name = !edge->name.empty()  ? edge->name
                                     : whole(side, group) ? on_the_vehicle(side, panel_, where_)
                                                          : edge->number;
            if (std::find(list.begin(), list.end(), name) == list.end())
                list.push_back(name);
        }
        names.insert(names.end(), numbers.begin(), numbers.end());
        std::string text;
        for (const std::string& name : names)
            text += (text.empty() ? "" : " + ") + name;
        return text;
    }

private:
    /// Whether all nameless edges of that side are in the group.
    bool whole(const std::string& side, const Edges& group) const {
        return std::all_of(finish_.edges.begin(), finish_.edges.end(), [&](const EdgeFinish& e) {
            return side_of(e) != side || !e.name.empty() ||
                   std::find(group.begin(), group.end(), &e) != group.end();
        });
    }

    const PieceFinish& finish_;
    const Panel& panel_;
    Side where_;
};

/// Edges that are finished alike, the most first.
std::vector<std::pair<Um, Edges>> grouped(const Edges& edges, Um EdgeFinish::*what) {
    std::vector<std::pair<Um, Edges>> groups;
    for (const EdgeFinish* edge : edges) {
        const auto same = std::find_if(groups.begin(), groups.end(),
                                       [&](const auto& g) { return g.first == edge->*what; });
        (same == groups.end() ? groups.emplace_back(edge->*what, Edges{}) : *same)
            .second.push_back(edge);
    }
    std::stable_sort(groups.begin(), groups.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    return groups;
}

/// "28 bottom, 6 window seal, 14 elsewhere", or "10 all round" where that is all of the piece.
std::string in_groups(const PieceFinish& finish, const Edges& edges, Um EdgeFinish::*what,
                      const EdgeNames& names, const Measures& measures) {
    const auto groups = grouped(edges, what);
    const auto most =
        std::max_element(groups.begin(), groups.end(), [](const auto& a, const auto& b) {
            return a.second.size() < b.second.size();
        });
    std::string text;
    std::string elsewhere;
    for (auto g = groups.begin(); g != groups.end(); ++g) {
        const std::string size = measures.size(g->first);
        if (g->second.size() == finish.edges.size())
            return size + " all round";
        if (g == most && g->second.size() > 2 && groups.size() > 1)
            elsewhere = ", " + size + " elsewhere";
        else
            text += (text.empty() ? "" : ", ") + size + " " + names.of(g->second);
    }
    return text + elsewhere;
}

} // namespace

std::string edges_text(const Job& job, const PlacedPiece& p, const Measures& measures) {
    if (p.id.kind != PieceKind::main || !known(job, p.id))
        return "";
    const PieceFinish finish = order::finish_of(job, p.piece, p.id);
    Edges tucks;
    Edges flush;
    Edges stops;
    for (const EdgeFinish& edge : finish.edges)
        (edge.stop > 0 ? stops : edge.flush > 0 ? flush : tucks).push_back(&edge);
    const EdgeNames names(finish, p.panel, p.id.side);
    const bool flat =
        std::all_of(finish.edges.begin(), finish.edges.end(),
                    [](const EdgeFinish& e) { return e.tuck == 0 && e.flush == 0 && e.stop == 0; });
    if (flat)
        return "no tuck";
    std::string text;
    const auto add = [&](const std::string& what, const Edges& edges, Um EdgeFinish::*size) {
        if (!edges.empty())
            text +=
                (text.empty() ? "" : "; ") + what + in_groups(finish, edges, size, names, measures);
    };
    add("tuck ", tucks, &EdgeFinish::tuck);
    add("flush under what stays on ", flush, &EdgeFinish::flush);
    add("ends short by ", stops, &EdgeFinish::stop);
    return p.id.parts > 1 ? text + ", but for the seam" : text;
}

std::string openings_text(const Job& job, const PlacedPiece& p, const Measures& measures) {
    if (p.id.kind != PieceKind::main || !known(job, p.id))
        return "";
    std::string on_vehicle;
    std::string at_table;
    const PieceFinish finish = order::finish_of(job, p.piece, p.id);
    for (const OpeningFinish& opening : finish.openings) {
        std::string text = opening.name;
        if (opening.tuck > 0)
            text += " (tuck " + measures.size(opening.tuck) + ")";
        if (opening.flush > 0)
            text += " (flush " + measures.size(opening.flush) + ")";
        std::string& list = opening.at_table ? at_table : on_vehicle;
        list += (list.empty() ? "" : ", ") + text;
    }
    std::string text = on_vehicle.empty() ? "" : "cut out on the vehicle: " + on_vehicle;
    if (!at_table.empty())
        text += (text.empty() ? "" : "; ") + ("cut out at the table: " + at_table);
    std::vector<std::string> covered;
    for (const CoveredOpening& opening : finish.covered)
        covered.push_back(opening.name);
    if (!covered.empty())
        text += (text.empty() ? "" : "; ") +
                ("covered, cut open when the part goes back: " + listed(covered));
    return text;
}

std::string upper_edge_of(const Job& job, const PlacedPiece& p) {
    constexpr int quarter = 90'000;
    if (!known(job, p.id) || p.turn.millidegrees % quarter != 0)
        return "";
    const auto forward = order::forward_of(job, p.id);
    if (!forward)
        return "";
    // Quarter turns against the clock from forward to the drawing's upward, then from +x to where
    // forward lies on the table. A mirrored piece has its y negated.
    int turns = 0;
    switch (*forward) {
    case pelt::Heading::right:
        turns = 1;
        break;
    case pelt::Heading::up:
        turns = 0;
        break;
    case pelt::Heading::left:
        turns = 3;
        break;
    case pelt::Heading::down:
        turns = 2;
        break;
    }
    if (order::is_mirrored(job, p.id))
        turns = (4 - turns) % 4;
    turns = (turns + p.turn.millidegrees / quarter) % 4;
    static constexpr std::array<const char*, 4> arrows{"→", "↑", "←", "↓"};
    return arrows[static_cast<std::size_t>(turns)];
}

} // namespace pelt::report
