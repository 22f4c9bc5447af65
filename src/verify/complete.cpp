// SPDX-License-Identifier: MIT
#include "verify/checks.hpp"
#include "verify/words.hpp"

#include <algorithm>
#include <limits>
#include <map>
#include <set>
#include <tuple>

namespace pelt::verify {
namespace {

/// No panel is cut in more pieces: else a wrong count would be counted for ever.
constexpr int most_parts = 100'000;

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

/// Left out by an entry that names it, or all of which it is one.
bool left_out(const Job& job, const Panel& panel, const PieceId& id) {
    const int no = (id.copy - 1) / panel.faces + 1;
    const int piece = id.kind == PieceKind::inlay ? LeftOut::inlays : id.part;
    return std::any_of(job.left_out.begin(), job.left_out.end(), [&](const LeftOut& out) {
        return out.vehicle == id.vehicle && out.panel == id.panel && out.side == id.side &&
               (out.no == 0 || out.no == no) && (out.piece == 0 || out.piece == piece);
    });
}

/// Of a divided panel: no one piece, so only what leaves out all of them leaves it out.
bool left_out_whole(const Job& job, const Panel& panel, const Wanted& w) {
    PieceId id = any_part_of(w);
    if (w.kind == PieceKind::main)
        id.part = std::numeric_limits<int>::max();
    return left_out(job, panel, id);
}

std::set<Wanted> all_wanted(const Job& job) {
    std::set<Wanted> wanted;
    for (int v = 0; v < static_cast<int>(job.vehicles.size()); ++v) {
        const std::vector<Panel>& panels = job.vehicles[static_cast<std::size_t>(v)].panels;
        for (int p = 0; p < static_cast<int>(panels.size()); ++p) {
            const Panel& panel = panels[static_cast<std::size_t>(p)];
            const auto add = [&](const Wanted& thing) {
                if (!left_out_whole(job, panel, thing))
                    wanted.insert(thing);
            };
            for (const Side side : sides_of(panel.sides))
                for (int copy = 1; copy <= panel.count * panel.faces * job.times; ++copy) {
                    add({v, p, side, copy, PieceKind::main, ""});
                    for (const Inlay& inlay : panel.inlays)
                        add({v, p, side, copy, PieceKind::inlay, inlay.name});
                }
        }
    }
    return wanted;
}

void check_parts(const Job& job, const Wanted& thing, std::vector<std::pair<int, int>> parts,
                 Sentences& faults) {
    std::sort(parts.begin(), parts.end());
    const int count = parts.front().second;
    std::vector<std::pair<int, int>> asked_for;
    PieceId id = any_part_of(thing);
    for (id.part = 1; id.part <= count && id.part <= most_parts; ++id.part)
        if (!left_out(job, panel_of(job, id), id))
            asked_for.emplace_back(id.part, count);
    if (parts != asked_for)
        faults.push_back(called(job, any_part_of(thing)) + ": not every piece is there once");
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
        else
            check_parts(job, thing, have, faults);
    }
}

} // namespace pelt::verify
