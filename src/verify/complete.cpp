// SPDX-License-Identifier: MIT
#include "verify/checks.hpp"
#include "verify/words.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace pelt::verify {
namespace {

/// A thing on the vehicle that one or more parts cover.
struct Wanted {
    int vehicle;
    int panel;
    Side side;
    int copy;
    PieceKind kind;
    std::string inlay;
    friend auto operator<=>(const Wanted&, const Wanted&) = default;
};

Wanted wanted_by(const PieceId& id) {
    return {id.vehicle, id.panel, id.side, id.copy, id.kind, id.inlay};
}

PieceId any_part_of(const Wanted& w) {
    return {w.vehicle, w.panel, w.side, w.copy, 1, 1, w.kind, w.inlay};
}

bool left_out(const Job& job, int vehicle, int panel, Side side) {
    return std::any_of(job.left_out.begin(), job.left_out.end(), [&](const LeftOut& out) {
        return out.vehicle == vehicle && out.panel == panel && out.side == side;
    });
}

std::set<Wanted> all_wanted(const Job& job) {
    std::set<Wanted> wanted;
    for (int v = 0; v < static_cast<int>(job.vehicles.size()); ++v) {
        const std::vector<Panel>& panels = job.vehicles[static_cast<std::size_t>(v)].panels;
        for (int p = 0; p < static_cast<int>(panels.size()); ++p) {
            const Panel& panel = panels[static_cast<std::size_t>(p)];
            for (const Side side : sides_of(panel.sides)) {
                if (left_out(job, v, p, side))
                    continue;
                for (int copy = 1; copy <= panel.count * panel.faces * job.times; ++copy) {
                    wanted.insert({v, p, side, copy, PieceKind::main, ""});
                    for (const Inlay& inlay : panel.inlays)
                        wanted.insert({v, p, side, copy, PieceKind::inlay, inlay.name});
                }
            }
        }
    }
    return wanted;
}

void check_parts(const Job& job, const Wanted& thing, std::vector<std::pair<int, int>> parts,
                 Sentences& faults) {
    std::sort(parts.begin(), parts.end());
    const int count = parts.front().second;
    bool right = static_cast<int>(parts.size()) == count;
    for (std::size_t i = 0; i < parts.size(); ++i)
        right = right && parts[i] == std::pair{static_cast<int>(i) + 1, count};
    if (!right)
        faults.push_back(called(job, any_part_of(thing)) + ": not every part is there once");
}

} // namespace

void check_complete(const Job& job, const Layout& layout, Sentences& faults) {
    std::set<PieceId> placed;
    std::map<Wanted, std::vector<std::pair<int, int>>> parts;
    for (const UsedRoll& used : layout.rolls)
        for (const Placement& p : used.placements) {
            const PieceId& id = job.pieces[p.piece].ids[p.copy];
            if (!placed.insert(id).second)
                faults.push_back(called(job, id) + ": placed twice");
            else
                parts[wanted_by(id)].emplace_back(id.part, id.parts);
        }
    const std::set<Wanted> wanted = all_wanted(job);
    for (const Wanted& thing : wanted)
        if (parts.count(thing) == 0)
            faults.push_back(called(job, any_part_of(thing)) + ": not placed");
    for (const auto& [thing, have] : parts) {
        if (wanted.count(thing) == 0)
            faults.push_back(called(job, any_part_of(thing)) + ": placed but not asked for");
        check_parts(job, thing, have, faults);
    }
}

} // namespace pelt::verify
