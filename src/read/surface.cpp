// SPDX-License-Identifier: MIT
#include "read/surface.hpp"

#include "geometry/mesh/facing.hpp"
#include "geometry/space.hpp"
#include "read/document.hpp"
#include "read/known_scans.hpp"
#include "read/quantities.hpp"
#include "read/scan_side.hpp"
#include "read/stays_inside.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace pelt::read {
namespace {

using geometry::cross;
using geometry::dot;
using geometry::norm;
using geometry::unit;

constexpr double largest_mm = 30'000;
constexpr double smallest_mm = 1;
/// Of a direction's length: less than this in the plane of the panel is "out of the panel".
constexpr double within_the_panel = .35;

Point3 in_plane(Point3 v, Point3 normal) {
    return v - dot(v, normal) * normal;
}

class SurfaceReader {
public:
    SurfaceReader(const Fields& fields, Panel& panel, Context& context)
        : fields_(fields), panel_(panel), context_(context), entry_(*fields.entry("surface")) {}

    void read() {
        form_.place = entry_.place;
        const std::size_t mark = context_.mark();
        const auto unit = fields_.choice("surface units");
        if (!unit && !context_.told_since(mark))
            context_.fault(entry_.place, "the scan's unit is not given",
                           "add 'surface units: mm', or what the scan is in");
        const auto forward = direction("forward");
        const auto up = direction("up");
        const auto file = fields_.text("surface");
        if (unit && file && inside_folder(*file)) {
            form_.unit = unit_of_choice(*unit);
            form_.file = *file;
            load_scan();
        }
        const auto outside = direction_if_given("outside");
        if (scan_ && forward && up && right_side_out(*forward, *up, outside))
            set_frame(*forward, *up);
        if (scan_)
            form_.surface = context_.scans->shared(*std::move(scan_));
        panel_.form = std::move(form_);
    }

private:
    std::optional<Point3> direction(std::string_view name) {
        if (!fields_.has(name)) {
            context_.fault(entry_.place, "a scanned panel needs '" + std::string(name) + "'",
                           "write it as a direction in the scan's frame, like '" +
                               std::string(name) + ": [1, 0, 0]'");
            return std::nullopt;
        }
        return direction_if_given(name);
    }

    std::optional<Point3> direction_if_given(std::string_view name) {
        const auto v = read_vector(fields_, name, context_);
        if (v && !(norm(*v) > 0)) {
            context_.fault(fields_.entry(name)->place,
                           "'" + std::string(name) + "' has no direction",
                           "one number at least is not 0");
            return std::nullopt;
        }
        return v ? std::optional(geometry::unit(*v)) : std::nullopt;
    }

    bool inside_folder(const std::string& file) {
        if (stays_inside(file))
            return true;
        context_.fault(entry_.value.place,
                       "the scan " + quoted(file) + " is not in the vehicle file's folder",
                       "put it beside the vehicle file, or in a folder below");
        return false;
    }

    void load_scan() {
        const ScanFile& scan =
            context_.scans->of(entry_.place.source->name, form_.file, form_.unit);
        const std::string name = "the scan " + quoted(form_.file);
        if (scan.opened.file)
            context_.files.push_back(*scan.opened.file);
        if (!scan.opened.bytes) {
            context_.add(
                {{scan.opened.not_opened ? Severity::access : Severity::file, entry_.value.place,
                  panel_.name, name + " " + scan.opened.what, scan.opened.remedy}});
            return;
        }
        if (!scan.what.empty()) {
            context_.fault(entry_.value.place, name + " " + scan.what, scan.remedy);
            return;
        }
        form_.digest = scan.digest;
        for (const std::string& remark : scan.found.remarks)
            context_.add(
                {{Severity::warning, entry_.value.place, panel_.name, name + " " + remark, ""}});
        if (!scan.found.surface)
            context_.fault(entry_.value.place, name + " " + scan.found.what, scan.found.remedy);
        else if (right_size(*scan.found.surface, name))
            scan_ = scan.found.surface;
    }

    bool right_size(const Surface& surface, const std::string& name) {
        Point3 low = surface.points.front();
        Point3 high = low;
        for (const Point3& p : surface.points) {
            low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
            high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
        }
        const double across = geometry::distance(low, high);
        if (across >= smallest_mm && across <= largest_mm)
            return true;
        context_.fault(entry_.value.place,
                       name + " is " +
                           (across < smallest_mm ? "less than 1 mm" : "more than 30 m") + " across",
                       "check 'surface units'");
        return false;
    }

    /// Turned where `outside` says so; a warning where it is not given and the scan's own outside
    /// is in doubt.
    bool right_side_out(Point3 forward, Point3 up, std::optional<Point3> outside) {
        constexpr double all_round = .05;
        constexpr double along = .2;
        geometry::Facing facing = geometry::facing_of(*scan_);
        const std::string name = "the scan " + quoted(form_.file);
        if (facing.share < all_round) {
            context_.fault(entry_.value.place, "the scan faces no way on the whole",
                           "cut it where a seam may lie");
            return false;
        }
        if (outside && std::abs(dot(*outside, facing.normal)) < along) {
            context_.fault(fields_.entry("outside")->place, "'outside' runs along the panel",
                           "it is the way from the vehicle out through the panel");
            return false;
        }
        if (outside && dot(*outside, facing.normal) < 0) {
            geometry::turn_inside_out(*scan_);
            facing.normal = -1.0 * facing.normal;
            context_.add({{Severity::note, entry_.value.place, panel_.name,
                           name + " was inside out, and is turned by 'outside'", ""}});
        }
        if (const auto doubt =
                outside ? std::nullopt : doubt_about(facing, forward, up, panel_.sides))
            context_.add({{Severity::warning, entry_.value.place, panel_.name,
                           name + " " + doubt->what, doubt->remedy}});
        normal_ = facing.normal;
        return true;
    }

    void set_frame(Point3 forward, Point3 up) {
        const Point3 normal = normal_;
        const Point3 ahead = in_plane(forward, normal);
        const Point3 upward = in_plane(up, normal);
        const bool has_up = norm(upward) >= within_the_panel;
        if (norm(ahead) < within_the_panel) {
            if (!has_up) {
                context_.fault(fields_.entry("up")->place,
                               "'forward' and 'up' both point out of the panel",
                               "'up' is the way up of the drawing, along the panel");
                return;
            }
            take(dot(forward, normal) > 0 ? Heading::down : Heading::up, unit(upward), normal);
            return;
        }
        const Point3 f = unit(ahead);
        if (!has_up) {
            take(Heading::up, f, normal);
            return;
        }
        // The drawing is turned until forward lies along an axis of it, `up` as near to y as then
        // is possible.
        const double along = dot(f, cross(upward, normal));
        const double high = dot(f, upward);
        if (std::abs(high) >= std::abs(along))
            take(high > 0 ? Heading::up : Heading::down, (high > 0 ? 1.0 : -1.0) * f, normal);
        else
            take(along > 0 ? Heading::right : Heading::left,
                 cross(normal, (along > 0 ? 1.0 : -1.0) * f), normal);
    }

    void take(Heading heading, Point3 upward, Point3 normal) {
        panel_.forward = heading;
        form_.upward = upward;
        form_.across = cross(upward, normal);
    }

    const Fields& fields_;
    Panel& panel_;
    Context& context_;
    const Entry& entry_;
    SurfaceForm form_;
    std::optional<Surface> scan_;
    Point3 normal_; ///< the way the scan faces on the whole
};

} // namespace

std::optional<Point3> read_vector(const Fields& fields, std::string_view name, Context& context) {
    const Entry* entry = fields.entry(name);
    if (entry == nullptr || entry->value.kind == Node::Kind::refused)
        return std::nullopt;
    if (entry->value.kind != Node::Kind::list || entry->value.items.size() != 3) {
        context.fault(entry->place, "'" + std::string(name) + "' is not three numbers",
                      "write it like [1, 0, 0], in the scan's frame");
        return std::nullopt;
    }
    std::array<double, 3> v{};
    for (std::size_t i = 0; i < 3; ++i) {
        const Node& item = entry->value.items[i];
        const std::string* text = plain_text(item, name, item.place, context);
        if (text == nullptr)
            return std::nullopt;
        const Parsed<double> number = parse_number(*text);
        if (!number.value) {
            context.fault(item.place, std::string(name) + " " + number.refusal.what,
                          number.refusal.remedy);
            return std::nullopt;
        }
        v[i] = *number.value;
    }
    return Point3{v[0], v[1], v[2]};
}

void read_surface(const Fields& fields, Panel& panel, Context& context) {
    SurfaceReader(fields, panel, context).read();
}

} // namespace pelt::read
