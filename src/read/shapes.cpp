// SPDX-License-Identifier: MIT
#include "read/shapes.hpp"

#include "geometry/predicates.hpp"
#include "model/limits.hpp"
#include "read/flat_ring.hpp"
#include "read/outline.hpp"
#include "read/quantities.hpp"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace pelt::read {
namespace {

constexpr Um smallest_panel = 1 * um_per_mm;
constexpr Um largest_panel = 30'000 * um_per_mm;

/// A figure of the panel that other figures must keep clear of.
struct Figure {
    std::string label; ///< "the outline", "opening 'handle'"
    Place place;
    Ring ring;
    std::vector<std::size_t> segment;  ///< of every side, for outlines; else empty
    const OutlineForm* form = nullptr; ///< none: a girth panel or an inlay
    bool inlay = false;
};

std::string edge_of(const Figure& figure, std::size_t side) {
    return edge_number(figure.segment[side], figure.form->segments.size());
}

class ShapeCheck {
public:
    ShapeCheck(const Panel& panel, Context& context) : panel_(panel), context_(context) {}

    void run() {
        add_panel();
        if (figures_.empty())
            return;
        for (const Opening& opening : panel_.openings)
            if (auto figure =
                    outline_figure("opening " + quoted(opening.name), opening.form, opening.place))
                figures_.push_back(std::move(*figure));
        for (const Inlay& inlay : panel_.inlays)
            figures_.push_back(
                {"inlay " + quoted(inlay.name), inlay.place, flat_ring(inlay), {}, nullptr, true});
        check_apart();
        for (const SeamLine& line : panel_.seam_lines)
            check_seam_line(line);
    }

private:
    void add_panel() {
        if (const auto* outline = std::get_if<OutlineForm>(&panel_.form)) {
            if (outline->segments.empty())
                return;
            auto figure = outline_figure("the outline", *outline, outline->segments[0].place);
            if (figure && right_size(*figure))
                figures_.push_back(std::move(*figure));
        } else if (const auto* girths = std::get_if<GirthsForm>(&panel_.form)) {
            if (girths->stations.size() < 2)
                return;
            Figure figure{"the panel", girths->stations[0].place, flat_ring(*girths), {}, nullptr,
                          false};
            if (right_size(figure))
                figures_.push_back(std::move(figure));
        }
    }

    /// An outline that is simple, or nothing when the fault has been told.
    std::optional<Figure> outline_figure(const std::string& label, const OutlineForm& form,
                                         const Place& place) {
        auto flat = flat_ring(form);
        if (!flat) {
            context_.fault(place,
                           label + " takes more than " + limit::in_groups(limit::outline_points) +
                               " points, those along its arcs included",
                           "leave out points that lie on a straight line, or give fewer arcs");
            return std::nullopt;
        }
        if (!context_.may_draw(flat->ring.size(), place))
            return std::nullopt;
        Figure figure{label, place, std::move(flat->ring), std::move(flat->segment), &form, false};
        if (figure.ring.size() < 3 || all_on_a_line(figure.ring)) {
            context_.fault(place, label + " encloses no area", "check its points");
            return std::nullopt;
        }
        const auto contact = geometry::arrange({figure.ring}).contact;
        if (!contact)
            return figure;
        tell_crossing(figure, *contact);
        return std::nullopt;
    }

    static bool all_on_a_line(const Ring& ring) {
        return std::all_of(ring.begin() + 2, ring.end(), [&](GridPoint p) {
            return geometry::orientation(ring[0], ring[1], p) == 0;
        });
    }

    void tell_crossing(const Figure& figure, const geometry::Contact& contact) {
        const std::string a = edge_of(figure, contact.side_a);
        const std::string b = edge_of(figure, contact.side_b);
        const std::size_t later =
            std::max(figure.segment[contact.side_a], figure.segment[contact.side_b]);
        context_.fault(figure.form->segments[later].place,
                       figure.label + " crosses or touches itself: edge " + a +
                           (a == b ? " does" : " and edge " + b),
                       "check these points and their order");
    }

    bool right_size(const Figure& figure) {
        const Box box = box_of(figure.ring);
        const Um least = std::min(box.along(), box.across());
        const Um most = std::max(box.along(), box.across());
        if (least >= smallest_panel && most <= largest_panel)
            return true;
        context_.fault(figure.place,
                       figure.label + " is " +
                           (least < smallest_panel ? "less than 1 mm" : "more than 30 m") +
                           " across",
                       "check the points and the units");
        return false;
    }

    /// Removes one figure for every contact told, so that each is told once.
    void check_apart() {
        constexpr std::size_t most_told = 20;
        std::vector<Figure> figures = figures_;
        for (std::size_t told = 0; told < most_told; ++told) {
            const geometry::Arrangement found = geometry::arrange(rings_of(figures));
            if (!found.contact) {
                check_nesting(figures, found.parents);
                return;
            }
            const Figure& a = figures[found.contact->ring_a];
            const Figure& b = figures[found.contact->ring_b];
            context_.fault(b.place, b.label + " crosses or touches " + a.label,
                           found.contact->ring_a == 0 ? "it must lie inside"
                                                      : "they must lie apart");
            figures.erase(figures.begin() + static_cast<std::ptrdiff_t>(found.contact->ring_b));
        }
    }

    static std::vector<Ring> rings_of(const std::vector<Figure>& figures) {
        std::vector<Ring> out;
        out.reserve(figures.size());
        for (const Figure& figure : figures)
            out.push_back(figure.ring);
        return out;
    }

    void check_nesting(const std::vector<Figure>& figures,
                       const std::vector<std::optional<std::size_t>>& parents) {
        for (std::size_t i = 1; i < figures.size(); ++i) {
            if (parents[i] == std::size_t{0})
                continue;
            if (!parents[i])
                context_.fault(figures[i].place,
                               figures[i].label + " lies outside of " + figures[0].label,
                               "it must lie inside; its points are in the panel's own drawing");
            else
                context_.fault(figures[i].place,
                               figures[i].label + " lies inside " + figures[*parents[i]].label,
                               "they must lie apart");
        }
    }

    /// Lengthened straight at both ends, a seam line must cut the panel.
    void check_seam_line(const SeamLine& seam) {
        std::vector<GridPoint> line;
        for (const Point& p : seam.line)
            line.push_back(on_grid(p));
        line.insert(line.begin(), beyond(line[1], line[0]));
        line.push_back(beyond(line[line.size() - 2], line.back()));
        if (crosses_itself(line)) {
            context_.fault(seam.place, "the seam line crosses itself",
                           "its ends are lengthened straight; check its points");
            return;
        }
        const Ring& ring = figures_[0].ring;
        for (std::size_t i = 0; i < ring.size(); ++i)
            for (std::size_t k = 1; k < line.size(); ++k)
                if (geometry::segments_meet(ring[i], ring[(i + 1) % ring.size()], line[k - 1],
                                            line[k]))
                    return;
        context_.fault(seam.place, "the seam line does not cross " + figures_[0].label,
                       "its points are in the panel's own drawing");
    }

    /// A point on the straight line from a to b, far beyond b.
    static GridPoint beyond(GridPoint a, GridPoint b) {
        const Um far = 100'000 * um_per_mm;
        const Um dx = b.x - a.x;
        const Um dy = b.y - a.y;
        const Um times = far / std::max<Um>(1, std::max(std::abs(dx), std::abs(dy))) + 1;
        return {b.x + times * dx, b.y + times * dy};
    }

    static bool crosses_itself(const std::vector<GridPoint>& line) {
        for (std::size_t i = 3; i < line.size(); ++i)
            for (std::size_t k = 1; k + 1 < i; ++k)
                if (geometry::segments_meet(line[k - 1], line[k], line[i - 1], line[i]))
                    return true;
        return false;
    }

    const Panel& panel_;
    Context& context_;
    std::vector<Figure> figures_; ///< the panel itself first
};

} // namespace

void check_shapes(const Panel& panel, Context& context) {
    ShapeCheck(panel, context).run();
}

} // namespace pelt::read
