// SPDX-License-Identifier: MIT
#include "order/binding.hpp"

#include "geometry/geometry.hpp"

#include <algorithm>
#include <limits>
#include <map>
#include <optional>
#include <utility>

namespace pelt::order {
namespace {

constexpr std::size_t most_pieces = 3'000;
constexpr Um far = std::numeric_limits<Um>::max();

using PanelKey = std::pair<int, int>; ///< vehicle, panel

struct Placed {
    const PieceId* id;
    Polygon outline;
    Polygon with_gap; ///< grown by the gap; contour cutting only
    Box box;
};

std::vector<Placed> pieces_on(const Job& job, const UsedRoll& used) {
    std::vector<Placed> out;
    for (const Placement& p : used.placements) {
        const Piece& piece = job.pieces[p.piece];
        Placed made{
            &piece.ids[p.copy], placed(piece.shapes[p.shape].outline, p.turn, p.at), {}, {}};
        made.box = box_of(made.outline.outer);
        if (job.by == CutBy::contour)
            made.with_gap =
                geometry::largest(geometry::grown(made.outline, job.film.allowances.gap));
        out.push_back(std::move(made));
    }
    std::stable_sort(out.begin(), out.end(), [](const Placed& a, const Placed& b) {
        return a.box.low.x + a.box.high.x < b.box.low.x + b.box.high.x;
    });
    return out;
}

/// Where the side from a to b is at this height; none where it is not, or runs along the roll.
std::optional<double> along_at(GridPoint a, GridPoint b, Um y) {
    if (a.y == b.y || y < std::min(a.y, b.y) || y > std::max(a.y, b.y))
        return std::nullopt;
    return static_cast<double>(a.x) + static_cast<double>(b.x - a.x) *
                                          static_cast<double>(y - a.y) /
                                          static_cast<double>(b.y - a.y);
}

/// How far `ring` lies behind the points along the roll, at their heights.
Um room_behind(const Ring& points, const Ring& ring, int forward) {
    double least = static_cast<double>(far);
    for (const GridPoint& p : points)
        for (std::size_t i = 0; i < ring.size(); ++i)
            if (const auto x = along_at(ring[i], ring[(i + 1) % ring.size()], p.y)) {
                const double room = forward * (*x - static_cast<double>(p.x));
                if (room >= 0)
                    least = std::min(least, room);
            }
    return least >= static_cast<double>(far) ? far : static_cast<Um>(least);
}

/// How far `a` could move on before it met `b`; far where it never would.
Um room_between(const Placed& a, const Placed& b, CutBy by) {
    if (a.box.low.y >= b.box.high.y || b.box.low.y >= a.box.high.y)
        return far;
    if (by == CutBy::straight)
        return a.box.high.x <= b.box.low.x ? b.box.low.x - a.box.high.x : far;
    return std::min(room_behind(a.with_gap.outer, b.outline.outer, 1),
                    room_behind(b.outline.outer, a.with_gap.outer, -1));
}

/// Cuts across the whole roll: they move on with all that lies before them.
std::vector<Um> full_cuts(const UsedRoll& used, const Roll& roll) {
    std::vector<Um> out;
    for (const Cut& cut : used.cuts) {
        const Um low = std::min(cut.from.y, cut.to.y);
        const Um high = std::max(cut.from.y, cut.to.y);
        if (cut.from.x == cut.to.x && low <= roll.trim && high >= roll.width - roll.trim)
            out.push_back(cut.from.x);
    }
    std::sort(out.begin(), out.end());
    return out;
}

struct Push {
    std::size_t from;
    Um room;
};

/// The chain of pushes on one roll.
class Chain {
public:
    Chain(const Job& job, const UsedRoll& used)
        : pieces_(pieces_on(job, used)), pushes_(pieces_.size()) {
        const std::vector<Um> cuts = full_cuts(used, job.rolls[used.roll]);
        for (std::size_t b = 0; b < pieces_.size(); ++b)
            for (std::size_t a = 0; a < b; ++a) {
                Um room = room_between(pieces_[a], pieces_[b], job.by);
                const auto cut = std::lower_bound(cuts.begin(), cuts.end(), pieces_[a].box.high.x);
                if (cut != cuts.end() && *cut <= pieces_[b].box.low.x)
                    room = std::min(room, pieces_[b].box.low.x - pieces_[a].box.high.x);
                if (room != far)
                    pushes_[b].push_back({a, room});
            }
        lead(nullptr, 0);
    }

    const std::vector<Placed>& pieces() const { return pieces_; }

    /// The length when every piece of the panel is so much longer, the others pushed on.
    Um length(const PanelKey& panel, Um longer) { return lead(&panel, longer); }

    /// The pieces of the longest chain, from the free end.
    std::vector<const PieceId*> longest() {
        lead(nullptr, 0);
        std::vector<const PieceId*> out;
        for (std::optional<std::size_t> at = last_; at; at = before_[*at])
            out.push_back(pieces_[*at].id);
        std::reverse(out.begin(), out.end());
        return out;
    }

private:
    /// Pushes every piece as far back as the ones before it let it go.
    Um lead(const PanelKey* panel, Um longer) {
        const auto grows = [&](std::size_t i) {
            const PieceId& id = *pieces_[i].id;
            return panel != nullptr && *panel == PanelKey{id.vehicle, id.panel} ? longer : 0;
        };
        std::vector<Um> moved(pieces_.size(), 0);
        before_.assign(pieces_.size(), std::nullopt);
        last_ = std::nullopt;
        Um length = 0;
        for (std::size_t i = 0; i < pieces_.size(); ++i) {
            moved[i] = -pieces_[i].box.low.x;
            for (const Push& push : pushes_[i])
                if (const Um to = moved[push.from] + grows(push.from) - push.room; to > moved[i]) {
                    moved[i] = to;
                    before_[i] = push.from;
                }
            const Um end = pieces_[i].box.high.x + moved[i] + grows(i);
            if (end > length) {
                length = end;
                last_ = i;
            }
        }
        return length;
    }

    std::vector<Placed> pieces_;
    std::vector<std::vector<Push>> pushes_;
    std::vector<std::optional<std::size_t>> before_;
    std::optional<std::size_t> last_;
};

} // namespace

Binding binding_of(const Job& job, const Layout& layout) {
    constexpr Um longer = um_per_mm;
    Binding out;
    std::map<PanelKey, Um> pulls;
    for (const UsedRoll& used : layout.rolls) {
        if (used.placements.size() > most_pieces)
            continue;
        Chain chain(job, used);
        for (const PieceId* id : chain.longest())
            out.pieces.push_back(*id);
        const Um as_it_is = chain.length({-1, -1}, 0);
        std::map<PanelKey, bool> panels;
        for (const Placed& p : chain.pieces())
            panels[{p.id->vehicle, p.id->panel}] = true;
        for (const auto& [panel, lies_here] : panels)
            pulls[panel] += chain.length(panel, longer) - as_it_is;
    }
    for (const auto& [panel, by] : pulls)
        if (by > 0)
            out.panels.push_back({panel.first, panel.second, by});
    std::stable_sort(out.panels.begin(), out.panels.end(), [](const Pull& a, const Pull& b) {
        return a.film_a_millimetre > b.film_a_millimetre;
    });
    return out;
}

} // namespace pelt::order
