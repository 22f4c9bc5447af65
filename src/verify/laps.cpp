// SPDX-License-Identifier: MIT
#include "verify/covering.hpp"
#include "verify/exact.hpp"
#include "verify/words.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <set>

namespace pelt::verify {
namespace {

/// A drawn line may end a little beside its place: its points are snapped, its ends are far away.
constexpr double slack = hair + 2;

/// Stretches of less than a twentieth of a millimetre are not there, give or take rounded ends.
constexpr Um shortest_seen = 100;

Point minus(Point a, Point b) {
    return {a.x - b.x, a.y - b.y};
}
double dot(Point a, Point b) {
    return a.x * b.x + a.y * b.y;
}
double cross(Point a, Point b) {
    return a.x * b.y - a.y * b.x;
}
Point in_um(Point p) {
    return {p.x * um_per_mm, p.y * um_per_mm};
}
Point as_point(GridPoint p) {
    return {static_cast<double>(p.x), static_cast<double>(p.y)};
}

/// One straight run of a seam line, micrometres; the first and the last one go on for ever.
struct Run {
    Point from;
    Point way; ///< unit vector
    double low = 0;
    double high = 0;

    double away(Point p) const { return std::abs(cross(way, minus(p, from))); }
    double distance(Point p) const {
        const double at = std::clamp(dot(way, minus(p, from)), low, high);
        return std::hypot(p.x - from.x - at * way.x, p.y - from.y - at * way.y);
    }
};

struct Line {
    std::vector<Run> runs;
    Point chord;
    Point middle; ///< of its ends as drawn
    bool always = false;

    const Run& nearest(Point p) const {
        return *std::min_element(runs.begin(), runs.end(), [&](const Run& a, const Run& b) {
            return a.distance(p) < b.distance(p);
        });
    }
    double distance(Point p) const { return nearest(p).distance(p); }
    /// To the nearest of its runs, each going on for ever.
    double away(Point p) const {
        double least = std::numeric_limits<double>::max();
        for (const Run& run : runs)
            least = std::min(least, run.away(p));
        return least;
    }
};

Line line_of(const BlankSeamLine& drawn) {
    constexpr double for_ever = 1e12;
    std::vector<Point> points;
    for (const Point& p : drawn.points)
        if (points.empty() || !(points.back() == in_um(p)))
            points.push_back(in_um(p));
    const Point from = points.front();
    const Point to = points.back();
    Line line{{}, minus(to, from), {(from.x + to.x) / 2, (from.y + to.y) / 2}, drawn.always};
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const Point way = minus(points[i + 1], points[i]);
        const double length = std::hypot(way.x, way.y);
        line.runs.push_back({points[i],
                             {way.x / length, way.y / length},
                             i == 0 ? -for_ever : 0,
                             i + 2 == points.size() ? for_ever : length});
    }
    return line;
}

/// Where a part ends within the panel.
struct End {
    const Stretch* stretch;
    std::size_t part;
    std::vector<std::size_t> beside; ///< the parts that go on there
};

/// The nose's way in the drawing.
Point nose_of(Heading forward) {
    switch (forward) {
    case Heading::right:
        return {1, 0};
    case Heading::up:
        return {0, 1};
    case Heading::left:
        return {-1, 0};
    case Heading::down:
        break;
    }
    return {0, -1};
}

/// What lies higher on a panel of a side, in its drawing: on the left side the nose is to the left.
Point up_on_a_side(const Panel& panel, Point nose) {
    if (nose.y == 0)
        return {0, 1};
    switch (panel.sides) {
    case Sides::left:
    case Sides::both:
        return {nose.y, 0};
    case Sides::right:
        return {-nose.y, 0};
    case Sides::centre:
        break;
    }
    return {-1, 0};
}

/// Which side of a line lies on top: the way towards it in the drawing. None: both would do, so near
/// is the line to the middle.
std::optional<Point> towards_the_top(const Covering& covering, Point square, Point middle_of_line) {
    const Panel& panel = covering.panel;
    const Point nose = nose_of(covering.forward);
    const bool along_the_film = std::abs(dot(square, nose)) >= std::abs(cross(square, nose));
    const bool other_way = panel.sides == Sides::right;
    if (panel.lies == LiesOn::front || panel.lies == LiesOn::rear) {
        // Upper over lower, left over right; of a pair the outer over the inner.
        const bool upright = along_the_film == (nose.y == 0);
        const bool to_the_right = (panel.lies == LiesOn::front) != other_way;
        return upright ? Point{to_the_right ? 1.0 : -1.0, 0} : Point{0, 1};
    }
    if (along_the_film)
        return nose;
    if (panel.lies != LiesOn::top)
        return up_on_a_side(panel, nose);
    const Point left{-nose.y, nose.x}; // seen from above
    if (panel.sides != Sides::centre)
        return other_way ? left : Point{-left.x, -left.y};
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
    for (const Point& p : covering.blank.outline.points) {
        low = std::min(low, dot(in_um(p), left));
        high = std::max(high, dot(in_um(p), left));
    }
    const double off = dot(middle_of_line, left) - (low + high) / 2;
    constexpr double in_the_middle = um_per_mm / 2.0;
    constexpr double either = 50;
    if (std::abs(std::abs(off) - in_the_middle) < either)
        return std::nullopt;
    const bool left_on_top = std::abs(off) < in_the_middle || off < 0;
    return left_on_top ? left : Point{-left.x, -left.y};
}

/// 0: along x, 1: along y of the drawing, and with it of the roll.
std::optional<int> straight_axis(const Edge& edge) {
    const Um dx = std::abs(edge.to.x - edge.from.x);
    const Um dy = std::abs(edge.to.y - edge.from.y);
    if (dx <= hair && dy > hair)
        return 1;
    return dy <= hair && dx > hair ? std::optional(0) : std::nullopt;
}

class Laps {
public:
    Laps(const Covering& covering, Sentences& faults) : covering_(covering), faults_(faults) {
        for (const BlankSeamLine& drawn : covering.blank.seam_lines)
            if (drawn.points.size() > 1)
                lines_.push_back(line_of(drawn));
        for (const Stretch& stretch : covering.stretches)
            if (stretch.part != Stretch::none)
                add_end(stretch);
    }

    void check() {
        check_told();
        for (const End& end : ends_)
            check_end(end);
        for (std::size_t i = 0; i < lines_.size(); ++i)
            if (lines_[i].always && used_lines_.count(i) == 0)
                faults_.push_back(covering_.who +
                                  ": not divided at a seam line that is always used");
        for (std::size_t i = 0; i < covering_.seams.size(); ++i)
            if (covering_.seams[i].length > shortest_seen && !is_seen(i))
                faults_.push_back(covering_.who + ": a seam is told of that is not there");
    }

private:
    Um overlap() const {
        return covering_.panel.allowances.overlap.value_or(covering_.job.film.allowances.overlap);
    }

    /// One part ends there over the other one, or, where a lap reaches past the rim of the panel,
    /// only beneath it.
    bool is_seen(std::size_t seam) const {
        return seen_.count({seam, true}) > 0 || seen_.count({seam, false}) > 0;
    }

    void add_end(const Stretch& stretch) {
        // Where lines cross at the panel's edge a part ends in a needle. Rounding says which of two
        // parts has a tip that is thinner than this; no knife does.
        const auto own = static_cast<std::size_t>(stretch.part);
        if (!covering_.holds(own, stretch.inside()))
            return;
        const GridPoint beyond = stretch.outside();
        if (!covering_.wanted.stays_on(beyond) || covering_.near_a_rim(beyond))
            return;
        End end{&stretch, own, {}};
        for (std::size_t part = 0; part < covering_.parts.size(); ++part)
            if (part != end.part && covering_.holds(part, beyond))
                end.beside.push_back(part);
        if (!end.beside.empty()) // else `check_cover` misses film
            ends_.push_back(std::move(end));
    }

    void check_told() {
        const int parts = static_cast<int>(covering_.parts.size());
        const SeamRule rule = covering_.panel.seam;
        if (parts > 1 && rule == SeamRule::never)
            faults_.push_back(covering_.who + ": divided although it may not be");
        for (const Seam& seam : covering_.seams) {
            const bool are_parts = seam.upper_part >= 1 && seam.upper_part <= parts &&
                                   seam.under_part >= 1 && seam.under_part <= parts &&
                                   seam.upper_part != seam.under_part;
            if (are_parts && seam.upper_part < seam.under_part)
                faults_.push_back(covering_.who + ": the piece with the lower number is not under");
            if (!are_parts || seam.overlap != overlap())
                faults_.push_back(covering_.who + ": a seam is told wrongly");
            if (seam.added && rule != SeamRule::anywhere)
                faults_.push_back(covering_.who + ": a seam is added where none may be");
        }
    }

    void check_end(const End& end) {
        bool right = false;
        for (std::size_t i = 0; i < covering_.seams.size(); ++i) {
            const Seam& seam = covering_.seams[i];
            const int own = static_cast<int>(end.part) + 1;
            const int other = seam.upper_part == own ? seam.under_part : seam.upper_part;
            const bool told = (seam.upper_part == own || seam.under_part == own) &&
                              std::find(end.beside.begin(), end.beside.end(),
                                        static_cast<std::size_t>(other) - 1) != end.beside.end();
            if (!told)
                continue;
            const bool upper = seam.upper_part == own;
            if (upper ? ends_on_top(end, seam) : ends_under(end, seam)) {
                seen_.insert({i, upper});
                right = true;
            }
        }
        if (!right)
            faults_.push_back(covering_.who + ": piece " + std::to_string(end.part + 1) +
                              " ends at " + in_mm(end.stretch->middle) +
                              " of its drawing as no seam tells");
    }

    /// As far as the overlap, or as film is wanted, another one lies beneath.
    bool goes_on_below(const End& end) const {
        const GridPoint last = end.stretch->off(beside - overlap());
        if (!covering_.wanted.stays_on(last) || covering_.near_a_rim(last))
            return true;
        for (std::size_t part = 0; part < covering_.parts.size(); ++part)
            if (part != end.part && covering_.holds(part, last))
                return true;
        return false;
    }

    /// The upper part ends along the line, and the under part goes on beneath it.
    bool ends_on_top(const End& end, const Seam& seam) {
        const auto under = static_cast<std::size_t>(seam.under_part) - 1;
        if (overlap() > 2 * beside && !covering_.holds(under, end.stretch->inside()))
            return false;
        if (overlap() > 2 * beside && !goes_on_below(end))
            return false;
        const Point at = as_point(end.stretch->middle);
        const Point film{-end.stretch->out.x, -end.stretch->out.y};
        if (seam.added)
            return straight_axis(end.stretch->edge) && lies_on_top(film, film, at);
        bool right = false; // two lines may be one
        for (std::size_t i = 0; i < lines_.size(); ++i) {
            const Line& line = lines_[i];
            if (line.distance(at) > slack)
                continue;
            // Which side of the line the film lies on holds for its whole chord.
            const Run& run = line.nearest(at);
            const Point left{-run.way.y, run.way.x};
            const Point square{-line.chord.y, line.chord.x};
            const bool on_left = dot(left, film) > 0;
            const Point side = on_left ? square : Point{-square.x, -square.y};
            if (lies_on_top(square, side, line.middle)) {
                used_lines_.insert(i);
                right = true;
            }
        }
        return right;
    }

    /// `square`: to the line whose middle is given; `film`: towards the film that ends there.
    bool lies_on_top(Point square, Point film, Point middle) const {
        const std::optional<Point> top = towards_the_top(covering_, square, middle);
        return !top || dot(*top, film) > 0;
    }

    /// The under part ends the overlap past the line where the upper one ends.
    bool ends_under(const End& end, const Seam& seam) const {
        const auto upper = static_cast<std::size_t>(seam.upper_part) - 1;
        const GridPoint back = end.stretch->off(-overlap());
        if (overlap() > 2 * beside && !covering_.holds(upper, end.stretch->inside()))
            return false;
        if (seam.added)
            return ends_added_at(upper, end.stretch->edge, back);
        const auto lap = static_cast<double>(overlap());
        return std::any_of(lines_.begin(), lines_.end(), [&](const Line& line) {
            const double distance = line.distance(as_point(end.stretch->middle));
            const bool beyond_a_bend = distance <= 2 * lap + slack && line.runs.size() > 1;
            return distance >= lap - slack && (line.away(as_point(back)) <= slack || beyond_a_bend);
        });
    }

    bool ends_added_at(std::size_t upper, const Edge& like, GridPoint back) const {
        const std::optional<int> axis = straight_axis(like);
        return axis && std::any_of(ends_.begin(), ends_.end(), [&](const End& end) {
                   const GridPoint at = end.stretch->middle;
                   const Um off = *axis == 0 ? at.y - back.y : at.x - back.x;
                   return end.part == upper && straight_axis(end.stretch->edge) == axis &&
                          std::abs(off) <= hair;
               });
    }

    const Covering& covering_;
    Sentences& faults_;
    std::vector<Line> lines_;
    std::vector<End> ends_;
    std::set<std::size_t> used_lines_;
    std::set<std::pair<std::size_t, bool>> seen_; ///< seams, at the upper and at the under part
};

} // namespace

void check_laps(const Covering& covering, Sentences& faults) {
    Laps(covering, faults).check();
}

} // namespace pelt::verify
