// SPDX-License-Identifier: MIT
// Panels written as briefly as in a file. Millimetres. For tests only.
#pragma once

#include "model/vehicle.hpp"

#include <string>
#include <utility>
#include <vector>

namespace pelt::test {

/// One entry of an outline: a corner, how to get there, and the edge's name.
struct To {
    Point to;
    std::optional<Point> through = std::nullopt;
    std::string name = "";
};

/// The outline as read: a closing arc that ends on point 1 is no new point.
inline OutlineForm outline(const std::vector<To>& entries) {
    OutlineForm form;
    for (const To& entry : entries)
        form.segments.push_back({entry.to, entry.through, entry.name, {}});
    OutlineSegment& last = form.segments.back();
    if (form.segments.size() > 1 && last.to == form.segments.front().to) {
        std::swap(form.segments.front(), last);
        form.segments.pop_back();
    }
    return form;
}

inline OutlineForm corners(const std::vector<Point>& points) {
    std::vector<To> entries;
    for (const Point& p : points)
        entries.push_back({p});
    return outline(entries);
}

inline OutlineForm size(double wide, double high) {
    OutlineForm form = corners({{0, 0}, {wide, 0}, {wide, high}, {0, high}});
    form.from_size = true;
    return form;
}

inline OutlineForm circle(Point centre, double radius) {
    const Point left{centre.x - radius, centre.y};
    const Point right{centre.x + radius, centre.y};
    return outline({{left},
                    {right, Point{centre.x, centre.y - radius}},
                    {left, Point{centre.x, centre.y + radius}}});
}

template <class Form>
Panel panel(Form form) {
    Panel out;
    out.name = "panel";
    out.form = std::move(form);
    return out;
}

inline Opening opening(std::string name, OutlineForm form) {
    Opening out;
    out.name = std::move(name);
    out.form = std::move(form);
    return out;
}

inline EdgeRule wrap(std::string word, Um mm) {
    EdgeRule rule;
    rule.word = std::move(word);
    rule.wrap = mm * um_per_mm;
    return rule;
}

inline EdgeRule stop(std::string word, Um mm) {
    EdgeRule rule;
    rule.word = std::move(word);
    rule.stop = mm * um_per_mm;
    return rule;
}

inline EdgeRule behind(std::string word, std::string part) {
    EdgeRule rule;
    rule.word = std::move(word);
    rule.behind = std::move(part);
    return rule;
}

} // namespace pelt::test
