// SPDX-License-Identifier: MIT
#include "report/draw/fit.hpp"

#include <algorithm>
#include <tuple>

namespace pelt::report::draw {
namespace {

constexpr int grid = 24; ///< candidates a side

Box box_of(const Ring& ring) {
    Point low = ring.front();
    Point high = ring.front();
    for (const Point& p : ring) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    return {low.x, low.y, high.x - low.x, high.y - low.y};
}

Box common(const Box& a, const Box& b) {
    const double x = std::max(a.x, b.x);
    const double y = std::max(a.y, b.y);
    return {x, y, std::min(a.right(), b.right()) - x, std::min(a.bottom(), b.bottom()) - y};
}

template <class Visit>
void each_segment(const Ring& ring, const Visit& visit) {
    for (std::size_t i = 0; i < ring.size(); ++i)
        visit(ring[i], ring[(i + 1) % ring.size()]);
}

bool is_in_ring(const Ring& ring, const Point& p) {
    bool inside = false;
    each_segment(ring, [&](const Point& a, const Point& b) {
        if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x))
            inside = !inside;
    });
    return inside;
}

} // namespace

bool enters(const Point& a, const Point& b, const Box& box) {
    double from = 0;
    double to = 1;
    const auto clip = [&](double direction, double room) {
        if (direction == 0)
            return room > 0;
        const double t = room / direction;
        if (direction < 0)
            from = std::max(from, t);
        else
            to = std::min(to, t);
        return from < to;
    };
    const double dx = b.x - a.x;
    const double dy = b.y - a.y;
    return clip(-dx, a.x - box.x) && clip(dx, box.x + box.width - a.x) && clip(-dy, a.y - box.y) &&
           clip(dy, box.y + box.height - a.y);
}

bool is_inside(const std::vector<Ring>& rings, const Point& p) {
    for (std::size_t i = 0; i < rings.size(); ++i)
        if (is_in_ring(rings[i], p) != (i == 0))
            return false;
    return true;
}

LabelSpace::LabelSpace(const Ring& outer, const std::vector<Ring>& kept_clear)
    : LabelSpace(outer, kept_clear, box_of(outer)) {}

LabelSpace::LabelSpace(const Ring& outer, const std::vector<Ring>& kept_clear, const Box& within)
    : within_(within) {
    rings_.push_back(outer);
    rings_.insert(rings_.end(), kept_clear.begin(), kept_clear.end());
    const Box box = common(box_of(outer), within);
    middle_ = {box.x + box.width / 2, box.y + box.height / 2};
    for (int i = 1; i < grid; ++i)
        for (int j = 1; j < grid; ++j)
            centres_.push_back({box.x + box.width * i / grid, box.y + box.height * j / grid});
    const auto key = [this](const Point& p) {
        const double dx = p.x - middle_.x;
        const double dy = p.y - middle_.y;
        return std::tuple(dx * dx + dy * dy, p.x, p.y);
    };
    std::sort(centres_.begin(), centres_.end(),
              [&](const Point& a, const Point& b) { return key(a) < key(b); });
    const auto first = std::find_if(centres_.begin(), centres_.end(),
                                    [this](const Point& p) { return is_inside(rings_, p); });
    if (first != centres_.end() && !is_inside(rings_, middle_))
        middle_ = *first;
}

bool LabelSpace::holds(const Box& box) const {
    if (!within_.holds(box) || !is_inside(rings_, {box.x + box.width / 2, box.y + box.height / 2}))
        return false;
    bool touched = false;
    for (const Ring& ring : rings_)
        each_segment(
            ring, [&](const Point& a, const Point& b) { touched = touched || enters(a, b, box); });
    return !touched;
}

std::optional<Box> LabelSpace::room_for(double width, double height) const {
    for (const Point& c : centres_) {
        const Box box{c.x - width / 2, c.y - height / 2, width, height};
        if (holds(box))
            return box;
    }
    return std::nullopt;
}

} // namespace pelt::report::draw
