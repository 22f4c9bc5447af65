// SPDX-License-Identifier: MIT
#include "piece/untold.hpp"

#include "geometry/geometry.hpp"
#include "piece/cells.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <utility>

namespace pelt::piece {
namespace {

/// A stretch between two places where some part's rim crosses it; a little beside its middle, on
/// both sides of it.
struct Stretch {
    double length_mm = 0;
    Point left;
    Point right;
};

class Looking {
public:
    Looking(const DividedPanel& divided, const std::vector<PlacedLine>& lines, Um overlap)
        : divided_(divided), lines_(lines), laps_(overlap > 0) {
        for (const Part& part : divided.parts)
            films_.push_back({part.wrapped});
    }

    /// Parts that end here lie to the left: along a line upper ones do, along a lap under ones.
    void along(Point a, Point b, std::size_t line, bool upper_ones) {
        for (const Stretch& at : stretches(a, b))
            for (std::size_t part = 0; part < films_.size(); ++part)
                if (holds(part, at.left) && !holds(part, at.right))
                    tell(line, at.length_mm, part, others(part, at), upper_ones);
    }

    std::vector<Untold> found() const {
        std::vector<Untold> out;
        for (const auto& [pair, meeting] : found_)
            out.push_back({pair.first, pair.second,
                           meeting.along_line > 0 ? meeting.along_line : meeting.along_lap,
                           meeting.line});
        return out;
    }

private:
    bool holds(std::size_t part, Point p) const { return inside(p, films_[part]); }

    /// The other parts that go on there, beneath or above the one that ends.
    std::vector<std::size_t> others(std::size_t part, const Stretch& at) const {
        std::vector<std::size_t> out;
        for (std::size_t other = 0; other < films_.size(); ++other)
            if (other != part && holds(other, at.right) && (!laps_ || holds(other, at.left)))
                out.push_back(other);
        return out;
    }

    std::vector<Stretch> stretches(Point a, Point b) const {
        constexpr double least_mm = 0.04;
        constexpr double beside_mm = 0.01;
        const Point way{b.x - a.x, b.y - a.y};
        const double whole = std::hypot(way.x, way.y);
        std::vector<Stretch> out;
        if (whole < least_mm)
            return out;
        std::vector<double> shares{0, 1};
        for (const std::vector<Polygon>& film : films_)
            add_crossings(a, b, film, shares);
        std::sort(shares.begin(), shares.end());
        const Point off{-beside_mm * way.y / whole, beside_mm * way.x / whole};
        for (std::size_t k = 0; k + 1 < shares.size(); ++k) {
            const double length = (shares[k + 1] - shares[k]) * whole;
            if (length < least_mm)
                continue;
            const double middle = (shares[k] + shares[k + 1]) / 2;
            const Point on{a.x + middle * way.x, a.y + middle * way.y};
            out.push_back({length, {on.x + off.x, on.y + off.y}, {on.x - off.x, on.y - off.y}});
        }
        return out;
    }

    /// By a seam of the same kind: lines of the file tell nothing of seams that are added.
    bool is_told(int upper, int under, std::size_t line) const {
        return std::any_of(divided_.seams.begin(), divided_.seams.end(), [&](const PanelSeam& s) {
            return s.upper_part == upper && s.under_part == under &&
                   s.added == lines_[line].line.added;
        });
    }

    /// Whether the part has a seam along this line, on that side of it.
    bool meets_at(std::size_t line, int part, bool as_upper) const {
        return std::any_of(divided_.seams.begin(), divided_.seams.end(), [&](const PanelSeam& s) {
            return s.line == line && part == (as_upper ? s.upper_part : s.under_part);
        });
    }

    void tell(std::size_t line, double length_mm, std::size_t part,
              const std::vector<std::size_t>& others, bool part_is_upper) {
        const int own = static_cast<int>(part) + 1;
        std::optional<Pair> pair;
        int best = -1;
        for (const std::size_t other : others) {
            const int beside = static_cast<int>(other) + 1;
            const Pair met = part_is_upper ? Pair(own, beside) : Pair(beside, own);
            if (is_told(met.first, met.second, line))
                return;
            const int fitness = 2 * (meets_at(line, beside, !part_is_upper) ? 1 : 0) +
                                (found_.count(met) > 0 ? 1 : 0);
            if (fitness > best) {
                pair = met;
                best = fitness;
            }
        }
        if (!pair)
            return;
        Meeting& meeting = found_.try_emplace(*pair, Meeting{line, 0, 0}).first->second;
        (part_is_upper ? meeting.along_line : meeting.along_lap) += length_mm;
    }

    using Pair = std::pair<int, int>; ///< upper and under part, from 1
    struct Meeting {
        std::size_t line = 0;
        double along_line = 0;
        double along_lap = 0;
    };

    const DividedPanel& divided_;
    const std::vector<PlacedLine>& lines_;
    bool laps_;
    std::vector<std::vector<Polygon>> films_;
    std::map<Pair, Meeting> found_;
};

} // namespace

std::vector<Untold> untold(const DividedPanel& divided, const std::vector<PlacedLine>& lines,
                           Um overlap) {
    if (divided.parts.size() < 2)
        return {};
    Looking looking(divided, lines, overlap);
    for (std::size_t line = 0; line < lines.size(); ++line) {
        const std::vector<Point>& points = lines[line].plane.line;
        for (std::size_t i = 0; i + 1 < points.size(); ++i)
            looking.along(points[i], points[i + 1], line, true);
    }
    for (std::size_t line = 0; line < lines.size(); ++line) {
        const std::vector<Point> lap = geometry::in_mm(lines[line].plane.under_lapping);
        for (std::size_t i = 0; i < lap.size(); ++i)
            looking.along(lap[i], lap[(i + 1) % lap.size()], line, false);
    }
    return looking.found();
}

} // namespace pelt::piece
