// SPDX-License-Identifier: MIT
#include "report/svg_fit.hpp"

#include <algorithm>
#include <tuple>

namespace pelt::report {
namespace {

constexpr int grid = 24; ///< candidates a side

SvgBox box_of(const SvgRing& ring) {
    SvgPoint low = ring.front();
    SvgPoint high = ring.front();
    for (const SvgPoint& p : ring) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    return {low.x, low.y, high.x - low.x, high.y - low.y};
}

/// Whether the segment has a point strictly inside the box (Liang and Barsky's clipping).
bool enters(const SvgPoint& a, const SvgPoint& b, const SvgBox& box) {
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

template <class Visit>
void each_segment(const SvgRing& ring, const Visit& visit) {
    for (std::size_t i = 0; i < ring.size(); ++i)
        visit(ring[i], ring[(i + 1) % ring.size()]);
}

} // namespace

LabelSpace::LabelSpace(const SvgRing& outer, const std::vector<SvgRing>& kept_clear) {
    rings_.push_back(outer);
    rings_.insert(rings_.end(), kept_clear.begin(), kept_clear.end());
    const SvgBox box = box_of(outer);
    middle_ = {box.x + box.width / 2, box.y + box.height / 2};
    for (int i = 1; i < grid; ++i)
        for (int j = 1; j < grid; ++j)
            centres_.push_back({box.x + box.width * i / grid, box.y + box.height * j / grid});
    const auto key = [this](const SvgPoint& p) {
        const double dx = p.x - middle_.x;
        const double dy = p.y - middle_.y;
        return std::tuple(dx * dx + dy * dy, p.x, p.y);
    };
    std::sort(centres_.begin(), centres_.end(),
              [&](const SvgPoint& a, const SvgPoint& b) { return key(a) < key(b); });
}

bool LabelSpace::holds(const SvgBox& box) const {
    const SvgPoint centre{box.x + box.width / 2, box.y + box.height / 2};
    bool inside = false;
    bool touched = false;
    for (const SvgRing& ring : rings_)
        each_segment(ring, [&](const SvgPoint& a, const SvgPoint& b) {
            touched = touched || enters(a, b, box);
            if ((a.y > centre.y) != (b.y > centre.y) &&
                centre.x < a.x + (centre.y - a.y) / (b.y - a.y) * (b.x - a.x))
                inside = !inside;
        });
    return inside && !touched;
}

std::optional<SvgBox> LabelSpace::room_for(double width, double height) const {
    for (const SvgPoint& c : centres_) {
        const SvgBox box{c.x - width / 2, c.y - height / 2, width, height};
        if (holds(box))
            return box;
    }
    return std::nullopt;
}

} // namespace pelt::report
