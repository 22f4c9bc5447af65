// SPDX-License-Identifier: MIT
// The openings, seam lines and inlays of a panel.
#include "model/limits.hpp"
#include "read/flat_ring.hpp"
#include "read/outline.hpp"
#include "read/panel.hpp"
#include "read/quantities.hpp"
#include "read/surface.hpp"

#include <algorithm>

namespace pelt::read {
namespace {

/// Which hole of a scan; false where that is not said rightly.
bool read_hole(const Fields& fields, const Entry& entry, const SurfaceForm& form, Opening& opening,
               Context& context) {
    for (const std::string_view drawn : {"outline", "corners"})
        if (const Entry* outline = fields.entry(drawn)) {
            context.fault(outline->place,
                          "an opening of a scan has no '" + std::string(drawn) + "'",
                          "say which hole of the scan it is: 'hole: 1' or 'near: [X, Y, Z]'");
            return false;
        }
    if (fields.has("hole") == fields.has("near")) {
        context.fault(entry.place,
                      "opening " + quoted(entry.key) +
                          (fields.has("hole") ? " has both 'hole' and 'near'"
                                              : " does not say which hole of the scan it is"),
                      "give one of 'hole: 1' and 'near: [X, Y, Z]'");
        return false;
    }
    opening.hole = fields.count("hole");
    opening.near = read_vector(fields, "near", context);
    if (opening.near) {
        const double scale = length_of(form.unit).mm();
        *opening.near = {scale * opening.near->x, scale * opening.near->y, scale * opening.near->z};
    }
    return opening.hole || opening.near;
}

/// The keys by which holes of scans are told apart.
void refuse_hole_keys(const Fields& fields, Context& context) {
    for (const std::string_view name : {"hole", "near"})
        if (const Entry* entry = fields.entry(name))
            context.fault(entry->place, "'" + std::string(name) + "' is for panels with 'surface'",
                          "give the opening's 'outline'");
}

OutlineForm form_of(const Corners& corners, const Place& place) {
    OutlineForm form;
    for (const Point corner : {corners.low, Point{corners.high.x, corners.low.y}, corners.high,
                               Point{corners.low.x, corners.high.y}})
        form.segments.push_back({corner, std::nullopt, "", place});
    return form;
}

/// Two points alone, which no outline can be made of.
bool is_two_points(const Node& node) {
    return node.kind == Node::Kind::list && node.items.size() == 2 &&
           std::all_of(node.items.begin(), node.items.end(), [](const Node& item) {
               return item.kind == Node::Kind::list && item.items.size() == 2;
           });
}

/// By its outline, or by two corners.
std::optional<OutlineForm> form_of_opening(const Fields& fields, const Entry& entry,
                                           Context& context) {
    const std::string label = "opening " + quoted(entry.key);
    const Entry* outline = fields.entry("outline");
    const Entry* corners = fields.entry("corners");
    if (outline != nullptr && corners != nullptr)
        context.fault(corners->place, label + " has both 'outline' and 'corners'",
                      "keep one of the two");
    if (outline == nullptr && corners == nullptr && !fields.mentions("outline") &&
        !fields.mentions("corners"))
        context.fault(entry.place, label + " has no 'outline'",
                      "add 'outline: [[X, Y], [X, Y], ...]', or 'corners: [[X, Y], [X, Y]]'");
    if (outline == nullptr || is_two_points(outline->value)) {
        const auto two = fields.corners(outline == nullptr ? "corners" : "outline");
        const Entry* where = outline == nullptr ? corners : outline;
        return two ? std::optional(form_of(*two, where->value.place)) : std::nullopt;
    }
    return read_outline(*outline, *find_key(In::opening, "outline"), context);
}

std::optional<Opening> read_opening(const Entry& entry, const Panel& panel, const Names& hardware,
                                    Context& context) {
    const std::string label = "opening " + quoted(entry.key);
    check_name(entry.key, "the name of the opening", entry.place, context);
    const Fields fields(entry.value, In::opening, label, entry.place, context);
    if (!fields.is_map())
        return std::nullopt;
    Opening opening;
    opening.name = entry.key;
    opening.place = entry.place;
    opening.wrap = fields.ceil_um("tuck");
    if (fields.choice("cut") == std::size_t{1})
        opening.cut = OpeningCut::at_table;
    opening.behind = fields.name("behind").value_or("");
    if (const auto chosen = fields.choice("keep clear"))
        opening.keep_clear = choices_of(*find_key(In::opening, "keep clear"))[*chosen];
    if (const Entry* behind = fields.entry("behind"))
        check_reference(opening.behind, "behind", behind->value.place, hardware, context);
    if (const auto* scan = std::get_if<SurfaceForm>(&panel.form))
        return read_hole(fields, entry, *scan, opening, context) ? std::optional(std::move(opening))
                                                                 : std::nullopt;
    refuse_hole_keys(fields, context);
    auto form = form_of_opening(fields, entry, context);
    if (!form)
        return std::nullopt;
    opening.form = std::move(*form);
    return opening;
}

void read_seam_line(const Node& item, Panel& panel, Context& context) {
    const Key& key = *find_key(In::seam_line, "line");
    const Fields fields(item, In::seam_line, "the seam line", item.place, context);
    const Entry* entry = fields.entry("line");
    const bool always = fields.choice("use") == std::size_t{0};
    if (entry == nullptr || entry->value.kind == Node::Kind::refused)
        return;
    const std::size_t points = entry->value.items.size();
    if (entry->value.kind != Node::Kind::list || points < 2 || points > limit::seam_points) {
        context.fault(entry->place,
                      "'line' is not a list of 2 to " + std::to_string(limit::seam_points) +
                          " points",
                      "write it like [[0, 200], [900, 200]]");
        return;
    }
    const std::size_t mark = context.mark();
    SeamLine seam{{}, always, item.place};
    for (const Node& point : entry->value.items) {
        const std::string label = "point " + std::to_string(seam.line.size() + 1);
        seam.line.push_back(point_value(point, key, label, point.place, context).value_or(Point{}));
        const std::size_t n = seam.line.size();
        if (n > 1 && on_grid(seam.line[n - 2]) == on_grid(seam.line[n - 1]) &&
            !context.told_since(mark))
            context.fault(point.place,
                          "points " + std::to_string(n - 1) + " and " + std::to_string(n) +
                              " of the seam line are the same",
                          "take one of them out");
    }
    if (!context.told_since(mark))
        panel.seam_lines.push_back(std::move(seam));
}

void read_seam_lines(const Fields& fields, Panel& panel, Context& context) {
    if (const std::vector<Node>* lines = fields.list("seam lines")) {
        if (lines->size() > limit::seam_lines)
            context.fault(fields.entry("seam lines")->place,
                          "'seam lines' has more than " + std::to_string(limit::seam_lines) +
                              " lines",
                          "leave some out");
        else
            for (const Node& item : *lines)
                read_seam_line(item, panel, context);
    }
    const Entry* seam = fields.entry("seam");
    if (seam == nullptr)
        return;
    if (panel.seam == SeamRule::at_lines && !fields.has("seam lines"))
        context.fault(seam->place, "'seam: at lines' needs lines",
                      "give 'seam lines', or write never or anywhere");
    if (panel.seam != SeamRule::never)
        return;
    for (const SeamLine& line : panel.seam_lines)
        if (line.always)
            context.fault(line.place,
                          "a seam line with 'use: always' does not go with 'seam: never'",
                          "keep one of the two");
}

std::optional<Inlay> read_inlay(const Entry& entry, Context& context) {
    check_name(entry.key, "the name of the inlay", entry.place, context);
    const Fields fields(entry.value, In::inlay, "inlay " + quoted(entry.key), entry.place, context);
    if (!fields.is_map())
        return std::nullopt;
    const auto overlap = fields.ceil_um("overlap");
    const Entry* corners = fields.entry("corners");
    if (corners != nullptr && (fields.has("at") || fields.has("size")))
        context.fault(corners->place,
                      "inlay " + quoted(entry.key) + " has 'corners' beside 'at' or 'size'",
                      "give 'at' and 'size', or 'corners' alone");
    if (corners != nullptr) {
        const auto two = fields.corners("corners");
        if (!two)
            return std::nullopt;
        return Inlay{entry.key,
                     {(two->low.x + two->high.x) / 2, (two->low.y + two->high.y) / 2},
                     two->high.x - two->low.x,
                     two->high.y - two->low.y,
                     overlap,
                     entry.place};
    }
    for (const std::string_view needed : {"at", "size"})
        if (!fields.mentions(needed) && !fields.mentions("corners"))
            context.fault(entry.place,
                          "inlay " + quoted(entry.key) + " has no '" + std::string(needed) + "'",
                          "give 'at: [X, Y]' and 'size: [X, Y]', or 'corners'");
    const auto at = fields.point("at");
    const auto size = fields.size("size");
    if (!at || !size)
        return std::nullopt;
    return Inlay{entry.key, *at, size->x, size->y, overlap, entry.place};
}

/// A recess by its size or its outline, of which the extent counts.
std::optional<Recess> read_recess(const Entry& entry, Context& context) {
    const std::string label = "recess " + quoted(entry.key);
    check_name(entry.key, "the name of the recess", entry.place, context);
    const Fields fields(entry.value, In::recess, label, entry.place, context);
    if (!fields.is_map())
        return std::nullopt;
    const auto depth = fields.mm("depth");
    const Entry* drawn = fields.entry("outline");
    if (fields.has("size") == (drawn != nullptr)) {
        context.fault(entry.place,
                      label + (drawn != nullptr ? " has both 'size' and 'outline'"
                                                : " has neither 'size' nor 'outline'"),
                      "give 'at' and 'size', or 'outline'");
        return std::nullopt;
    }
    Recess recess{entry.key, 0, 0, depth.value_or(0), entry.place};
    if (drawn == nullptr) {
        const auto at = fields.point("at");
        const auto size = fields.size("size");
        if (!fields.has("at"))
            context.fault(entry.place, label + " has a size and no place",
                          "add its center, 'at: [X, Y]'");
        if (!at || !size || !depth)
            return std::nullopt;
        recess.wide_mm = size->x;
        recess.high_mm = size->y;
        return recess;
    }
    const auto form = read_outline(*drawn, *find_key(In::recess, "outline"), context);
    const auto flat = form ? flat_ring(*form) : std::nullopt;
    if (!flat || !depth)
        return std::nullopt;
    const Box box = box_of(flat->ring);
    recess.wide_mm = static_cast<double>(box.along()) / um_per_mm;
    recess.high_mm = static_cast<double>(box.across()) / um_per_mm;
    if (recess.wide_mm > 0 && recess.high_mm > 0)
        return recess;
    context.fault(drawn->place, "the outline of " + label + " encloses no area",
                  "check its points");
    return std::nullopt;
}

} // namespace

void read_parts(const Fields& fields, const Names& hardware, Panel& panel, Context& context) {
    if (const std::vector<Entry>* openings = fields.named("openings"))
        for (const Entry& entry : *openings)
            if (auto opening = read_opening(entry, panel, hardware, context))
                panel.openings.push_back(std::move(*opening));
    read_seam_lines(fields, panel, context);
    if (const std::vector<Entry>* inlays = fields.named("inlays"))
        for (const Entry& entry : *inlays)
            if (auto inlay = read_inlay(entry, context))
                panel.inlays.push_back(std::move(*inlay));
    if (const std::vector<Entry>* recesses = fields.named("recesses"))
        for (const Entry& entry : *recesses)
            if (auto recess = read_recess(entry, context))
                panel.recesses.push_back(std::move(*recess));
}

} // namespace pelt::read
