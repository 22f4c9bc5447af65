// SPDX-License-Identifier: MIT
#include "read/diagonal.hpp"

#include "model/marked_length.hpp"
#include "read/outline.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace pelt::read {
namespace {

/// Two readings by a soft tape agree so far: common practice, no source.
constexpr Um usual_tolerance = 3 * um_per_mm;

/// Corner n is the end of segment n - 1.
const Point& corner(const OutlineForm& outline, int number) {
    return outline.segments[static_cast<std::size_t>(number) - 1].to;
}

bool has_corner(const OutlineForm& outline, const Fields& fields, std::string_view key,
                int number, Context& context) {
    if (static_cast<std::size_t>(number) <= outline.segments.size())
        return true;
    context.fault(fields.entry(key)->value.place,
                  "the outline has no corner " + std::to_string(number),
                  "its corners are 1 to " + std::to_string(outline.segments.size()));
    return false;
}

/// By the tape against the points that were written.
void compare(const OutlineForm& outline, const Diagonal& taped, std::optional<Um> tolerance,
             Context& context) {
    const Point& a = corner(outline, taped.from);
    const Point& b = corner(outline, taped.to);
    const double drawn = std::hypot(a.x - b.x, a.y - b.y);
    const Um off = std::llround(std::abs(drawn - taped.length_mm) * um_per_mm);
    if (off <= tolerance.value_or(usual_tolerance))
        return;
    context.fault(taped.place,
                  "from corner " + std::to_string(taped.from) + " to " + std::to_string(taped.to) +
                      " the outline is " + marked(std::llround(drawn * um_per_mm), Told::nearest) +
                      ", but the tape says " +
                      marked(std::llround(taped.length_mm * um_per_mm), Told::nearest),
                  "measure both again; a corner is read wrong, or the diagonal is");
}

} // namespace

void read_diagonal(const Fields& fields, Panel& panel, Context& context) {
    const auto map = fields.map("diagonal");
    if (!map)
        return;
    const Entry& entry = *fields.entry("diagonal");
    auto* outline = std::get_if<OutlineForm>(&panel.form);
    const bool flat = fields.has("outline") || fields.has("size");
    if (!flat)
        context.fault(entry.place, "'diagonal' is for panels with 'outline' or 'size'",
                      "take it out");
    const auto from = map->count("from");
    const auto to = map->count("to");
    const auto length = map->mm("length");
    if (!flat || outline == nullptr || outline->segments.empty() || !from || !to || !length)
        return;
    const bool first = has_corner(*outline, *map, "from", *from, context);
    if (!has_corner(*outline, *map, "to", *to, context) || !first)
        return;
    if (*from == *to) {
        context.fault(entry.place, "the diagonal begins and ends at one corner",
                      "give two corners that are not neighbors");
        return;
    }
    const Diagonal taped{*from, *to, *length, entry.place};
    compare(*outline, taped, panel.tolerance, context);
    outline->diagonal = taped;
}

} // namespace pelt::read
