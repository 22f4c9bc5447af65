// SPDX-License-Identifier: MIT
#include "geometry/geometry.hpp"
#include "piece/edge_work.hpp"
#include "piece/frame.hpp"
#include "piece/piece.hpp"
#include "piece/stand.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::piece {
namespace {

constexpr double step_mm = 2;      ///< between the places of an edge that are looked at
constexpr double inward_mm = 0.25; ///< off the rim, so that rounding decides nothing

/// How much of each edge of a blank lies on a piece.
class Coverage {
public:
    Coverage(const Blank& blank, const Work& work, const Piece& piece, Heading heading,
             bool mirrored)
        : blank_(blank), work_(work), piece_(piece), heading_(heading), mirrored_(mirrored) {}

    /// Millimetres of the edge, in all and on the piece.
    struct Length {
        double whole = 0;
        double covered = 0;
    };
    std::vector<Length> by_edge() const {
        std::vector<Length> lengths(blank_.edges.size());
        const std::vector<Point>& points = blank_.outline.points;
        for (std::size_t i = 0; i < points.size(); ++i) {
            const auto edge = static_cast<std::size_t>(blank_.outline.edge[i]);
            const Length side = along(points[i], points[(i + 1) % points.size()], edge);
            lengths[edge].whole += side.whole;
            lengths[edge].covered += side.covered;
        }
        return lengths;
    }

    /// Whether any of it does.
    bool has(const BlankOpening& opening) const {
        const Polygon film{piece_.wrapped.outer, {}};
        return std::any_of(opening.ring.points.begin(), opening.ring.points.end(),
                           [&](Point p) { return holds(film, on_the_piece(p)); });
    }

private:
    Length along(Point a, Point b, std::size_t edge) const {
        const double length = std::hypot(b.x - a.x, b.y - a.y);
        if (length == 0)
            return {};
        // The film may end short of the edge; inward is to the left.
        const double in = static_cast<double>(work_.edges[edge].stop) / um_per_mm + inward_mm;
        const Point off{-(b.y - a.y) / length * in, (b.x - a.x) / length * in};
        const int places = std::max(1, static_cast<int>(std::ceil(length / step_mm)));
        int covered = 0;
        for (int i = 0; i < places; ++i) {
            const double share = (i + 0.5) / places;
            covered +=
                is_on_piece({a.x + share * (b.x - a.x) + off.x, a.y + share * (b.y - a.y) + off.y})
                    ? 1
                    : 0;
        }
        return {length, length * covered / places};
    }

    bool is_on_piece(Point drawn) const { return holds(piece_.wrapped, on_the_piece(drawn)); }

    GridPoint on_the_piece(Point drawn) const {
        Point p = in_piece_frame(drawn, heading_);
        if (mirrored_)
            p.y = -p.y;
        return geometry::on_grid(p);
    }

    const Blank& blank_;
    const Work& work_;
    const Piece& piece_;
    Heading heading_;
    bool mirrored_;
};

EdgeFinish finish_at(const BlankEdge& edge, const EdgeWork& done) {
    return {
        edge.number, edge.name, edge.normal, done.flush ? 0 : done.move, done.flush ? done.move : 0,
        done.stop};
}

} // namespace

bool is_mirrored(const Panel& panel, const PieceId& id) {
    const bool other_side = panel.sides == Sides::both && id.side == Side::right;
    const bool inner_face = panel.faces == 2 && id.copy % 2 == 0;
    return other_side != inner_face;
}

std::string end_called(const Panel& panel, const Film& film, bool of_x, bool high) {
    const Stand stand = stand_of(panel, heading_of(panel, film).value_or(Heading::right));
    const StandOnAxis& axis = stand.axes[of_x ? x_axis : y_axis];
    return high ? axis.high : axis.low;
}

std::optional<Heading> forward_of(const Panel& panel, const Film& film) {
    return heading_of(panel, film);
}

PieceFinish finish_of(const Panel& panel, const DevelopedPanel& developed, const Film& film,
                      const std::vector<std::string>& left_on, const Piece& piece,
                      const PieceId& id) {
    const std::optional<Heading> heading = heading_of(panel, film);
    if (developed.blanks.empty() || !heading)
        return {};
    const Blank& blank = developed.blanks.front();
    const Allowed allowed = allowed_for(panel, film);
    const Work work = work_on(panel, blank, allowed, left_on);
    const Coverage coverage(blank, work, piece, *heading, is_mirrored(panel, id));
    const std::vector<Coverage::Length> lengths = coverage.by_edge();
    const double lap = static_cast<double>(allowed.overlap) / um_per_mm;
    PieceFinish finish;
    for (std::size_t i = 0; i < blank.edges.size(); ++i)
        if (!blank.edges[i].seam &&
            lengths[i].covered > std::min(2 * lap + step_mm, lengths[i].whole / 2))
            finish.edges.push_back(finish_at(blank.edges[i], work.edges[i]));
    for (std::size_t i = 0; i < blank.openings.size(); ++i) {
        const OpeningWork& done = work.openings[i];
        if (!coverage.has(blank.openings[i]))
            continue;
        if (done.covered)
            finish.covered.push_back({blank.openings[i].name, panel.openings[i].behind});
        else
            finish.openings.push_back({blank.openings[i].name, done.at_table,
                                       done.flush ? 0 : done.move, done.flush ? done.move : 0});
    }
    return finish;
}

} // namespace pelt::piece
