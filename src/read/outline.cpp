// SPDX-License-Identifier: MIT
#include "read/outline.hpp"

#include "geometry/predicates.hpp"
#include "read/fields.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::read {
namespace {

bool is_plain_point(const Node& node) {
    return node.kind != Node::Kind::map;
}

class OutlineReader {
public:
    OutlineReader(const Key& key, Context& context) : key_(key), context_(context) {}

    std::optional<OutlineForm> read(const Entry& entry) {
        if (!is_list(entry))
            return std::nullopt;
        const std::size_t mark = context_.mark();
        for (const Node& item : entry.value.items)
            add(item);
        if (context_.told_since(mark))
            return std::nullopt;
        close(entry.place);
        check_neighbours();
        check_arcs();
        if (context_.told_since(mark))
            return std::nullopt;
        return std::move(form_);
    }

private:
    bool is_list(const Entry& entry) {
        const Node& value = entry.value;
        if (value.kind == Node::Kind::list)
            return true;
        if (value.kind != Node::Kind::refused)
            context_.fault(value.kind == Node::Kind::empty ? entry.place : value.place,
                           "'outline' is not a list of points",
                           "write it like [[0, 0], [400, 0], [400, 300]]");
        return false;
    }

    void add(const Node& item) {
        const std::string label = "point " + std::to_string(form_.segments.size() + 1);
        OutlineSegment segment;
        segment.place = item.place;
        if (is_plain_point(item)) {
            if (const auto to = point_value(item, key_, label, item.place, context_))
                segment.to = *to;
        } else {
            const Fields fields(item, In::point, label, item.place, context_);
            segment.to = fields.point("to").value_or(Point{});
            segment.through = fields.point("through");
            segment.name = edge_name(fields);
            if (segment.through && form_.segments.empty())
                context_.fault(fields.entry("through")->place,
                               "an arc has no point to start from here",
                               "begin with a plain point, and put a closing arc at the end of the "
                               "list");
        }
        form_.segments.push_back(std::move(segment));
    }

    std::string edge_name(const Fields& fields) {
        std::string name = fields.name("name").value_or("");
        const bool number =
            !name.empty() && name.find_first_not_of("0123456789-") == std::string::npos;
        const bool word = name == "all" || name == "none" || name == "top" || name == "bottom" ||
                          name == "left" || name == "right" || name == "start" || name == "end";
        if (number || word)
            context_.fault(fields.entry("name")->value.place,
                           "an edge cannot be named '" + name + "', which has a meaning of its own",
                           "choose another name");
        return name;
    }

    /// Segment 0 is the closing edge. A last item that ends on point 1 is that edge, no new point.
    void close(const Place& place) {
        std::vector<OutlineSegment>& all = form_.segments;
        if (all.size() > 2 && on_grid(all.back().to) == on_grid(all.front().to))
            take_closing_edge();
        const bool has_arc = std::any_of(
            all.begin(), all.end(), [](const OutlineSegment& s) { return s.through.has_value(); });
        if (all.size() < (has_arc ? 2U : 3U))
            context_.fault(place,
                           "the outline has " + std::to_string(all.size()) +
                               (all.size() == 1 ? " point" : " points"),
                           "give three at least, or two and an arc");
    }

    void take_closing_edge() {
        OutlineSegment closing = std::move(form_.segments.back());
        form_.segments.pop_back();
        OutlineSegment& first = form_.segments.front();
        if (!first.name.empty() && !closing.name.empty())
            context_.fault(closing.place, "the closing edge has two names",
                           "keep the one at point 1 or the one at the last point");
        first.through = closing.through;
        if (!closing.name.empty())
            first.name = std::move(closing.name);
        if (first.through || !first.name.empty())
            first.place = closing.place;
    }

    void check_neighbours() {
        const std::vector<OutlineSegment>& all = form_.segments;
        for (std::size_t i = 1; i < all.size(); ++i)
            if (on_grid(all[i - 1].to) == on_grid(all[i].to))
                context_.fault(all[i].place,
                               "points " + std::to_string(i) + " and " + std::to_string(i + 1) +
                                   " are the same",
                               "take one of them out");
    }

    /// Three points on a line are no arc, or a straight edge.
    void check_arcs() {
        std::vector<OutlineSegment>& all = form_.segments;
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (!all[i].through)
                continue;
            const GridPoint from = on_grid(all[i == 0 ? all.size() - 1 : i - 1].to);
            const GridPoint through = on_grid(*all[i].through);
            const GridPoint to = on_grid(all[i].to);
            if (geometry::orientation(from, through, to) != 0)
                continue;
            if (geometry::on_segment(through, from, to) && through != from && through != to)
                all[i].through.reset();
            else
                context_.fault(all[i].place,
                               "the arc's point lies on the line through its ends, and not between "
                               "them",
                               "give a point on the arc, about half-way");
        }
    }

    const Key& key_;
    Context& context_;
    OutlineForm form_;
};

} // namespace

std::optional<OutlineForm> read_outline(const Entry& entry, const Key& key, Context& context) {
    return OutlineReader(key, context).read(entry);
}

OutlineForm rectangle_form(Point size, const Place& place) {
    OutlineForm form;
    form.from_size = true;
    for (const Point corner : {Point{0, 0}, Point{size.x, 0}, size, Point{0, size.y}})
        form.segments.push_back({corner, std::nullopt, "", place});
    return form;
}

std::string edge_number(std::size_t segment, std::size_t corners) {
    if (segment == 0)
        return std::to_string(corners) + "-1";
    return std::to_string(segment) + "-" + std::to_string(segment + 1);
}

GridPoint on_grid(Point p) {
    constexpr double um = um_per_mm;
    return {std::llround(p.x * um), std::llround(p.y * um)};
}

} // namespace pelt::read
