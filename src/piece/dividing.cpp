// SPDX-License-Identifier: MIT
#include "piece/dividing.hpp"

#include "geometry/geometry.hpp"
#include "piece/file_lines.hpp"
#include "piece/fitter.hpp"
#include "piece/frame.hpp"
#include "piece/lying_double.hpp"
#include "piece/numbering.hpp"
#include "piece/strips.hpp"
#include "piece/too_wide.hpp"
#include "piece/untold.hpp"
#include "piece/where.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>
#include <utility>

namespace pelt::piece {
namespace {

/// So many ways to use the file's own lines are offered, and so many choices of lines are tried.
constexpr std::size_t most_ways_at_lines = 4;
constexpr std::size_t most_choices = 300;

/// A panel on its way into parts, each over those behind it where they meet.
struct Dividing {
    std::vector<Cell> cells;
    std::vector<PlacedLine> lines;
};

/// Divides the cells from `first` to before `last` along a line; returns the new `last`.
std::size_t divide(Dividing& dividing, const PlacedLine& line, std::size_t first, std::size_t last,
                   const PanelJob& job) {
    for (std::size_t i = first; i < last; ++i) {
        std::vector<Cell> two = divided(dividing.cells[i], line.plane, job.outline_area);
        if (two.empty())
            continue;
        dividing.cells[i] = std::move(two[0]);
        dividing.cells.insert(dividing.cells.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                              std::move(two[1]));
        ++i;
        ++last;
    }
    return last;
}

/// False where it divides nothing that the lines before it left.
bool divide_all(Dividing& dividing, const PlacedLine& line, const PanelJob& job) {
    const std::size_t before = dividing.cells.size();
    if (divide(dividing, line, 0, before, job) == before)
        return false;
    dividing.lines.push_back(line);
    return true;
}

bool fits(const Cell& cell, const PanelJob& job) {
    const std::vector<Part> parts = parts_of(cell);
    return std::all_of(parts.begin(), parts.end(), [&](const Part& part) {
        return !shapes_of(part, job.allowed, job.by).empty();
    });
}

bool fits(const Dividing& dividing, const PanelJob& job) {
    return std::all_of(dividing.cells.begin(), dividing.cells.end(),
                       [&](const Cell& cell) { return fits(cell, job); });
}

/// The next choice of as many lines of `count`, in order; false after the last one.
bool next_choice(std::vector<std::size_t>& choice, std::size_t count) {
    for (std::size_t k = choice.size(); k > 0; --k) {
        if (choice[k - 1] + (choice.size() - k) + 1 >= count)
            continue;
        ++choice[k - 1];
        for (std::size_t j = k; j < choice.size(); ++j)
            choice[j] = choice[j - 1] + 1;
        return true;
    }
    return false;
}

/// Divided along the fewest of the lines after which every part fits: every such choice, up to a
/// few.
std::vector<Dividing> along_fewest(const Dividing& start, const std::vector<PlacedLine>& lines,
                                   const PanelJob& job) {
    std::vector<Dividing> out;
    std::size_t tried = 0;
    for (std::size_t size = 1; size <= lines.size() && out.empty(); ++size) {
        std::vector<std::size_t> choice;
        for (std::size_t i = 0; i < size; ++i)
            choice.push_back(i);
        do {
            Dividing dividing = start;
            for (const std::size_t i : choice)
                divide_all(dividing, lines[i], job);
            if (fits(dividing, job))
                out.push_back(std::move(dividing));
        } while (++tried < most_choices && out.size() < most_ways_at_lines &&
                 next_choice(choice, lines.size()));
    }
    return out;
}

/// What strips have to cover of a cell.
TooWide too_wide(const Cell& cell, const PanelJob& job) {
    Ring film;
    for (const Polygon& polygon : job.by == CutBy::straight ? cell.wrapped : cell.sheet)
        film.insert(film.end(), polygon.outer.begin(), polygon.outer.end());
    Ring panel;
    for (const Polygon& polygon : cell.core)
        panel.insert(panel.end(), polygon.outer.begin(), polygon.outer.end());
    return {box_of(film), box_of(panel)};
}

using Places = std::vector<std::vector<Divide>>;

/// Places for the seams of a cell, as what is asked for has them.
using PlacesOf = std::function<Places(const TooWide&)>;

/// Two cells may be divided along one line: it makes one seam of two parts, not two.
void add_once(std::vector<PlacedLine>& lines, const PlacedLine& line) {
    if (std::none_of(lines.begin(), lines.end(),
                     [&](const PlacedLine& known) { return known.plane.line == line.plane.line; }))
        lines.push_back(line);
}

/// The cell at `first` divided along the lines: the new end of what was it; none where a line
/// crosses itself.
std::optional<std::size_t> divide(Dividing& dividing, const std::vector<Divide>& lines,
                                  std::size_t first, const PanelJob& job) {
    std::size_t last = first + 1;
    for (const Divide& line : lines) {
        const std::optional<PlacedLine> placed = place(job, line);
        if (!placed)
            return std::nullopt;
        last = divide(dividing, *placed, first, last, job);
        add_once(dividing.lines, *placed);
    }
    return last;
}

/// The first so many of the places at which the film takes the cell's strips.
Places that_fit(const Cell& cell, const Places& places, std::size_t most, const PanelJob& job) {
    Places out;
    for (const std::vector<Divide>& lines : places) {
        if (out.size() == most)
            break;
        Dividing alone{{cell}, {}};
        if (divide(alone, lines, 0, job) && fits(alone, job))
            out.push_back(lines);
    }
    return out;
}

/// Cuts every cell that does not fit in strips, each in its own way number `way`, its last one when
/// it has fewer. None: a cell has no way at all, or no cell has that many.
std::optional<Dividing> in_strips(const Dividing& start, std::size_t way, const PlacesOf& places_of,
                                  const PanelJob& job) {
    Dividing dividing = start;
    bool any_new = false;
    for (std::size_t i = 0; i < dividing.cells.size(); ++i) {
        if (fits(dividing.cells[i], job))
            continue;
        const Places places = that_fit(
            dividing.cells[i], places_of(too_wide(dividing.cells[i], job)), way + 1, job);
        if (places.empty())
            return std::nullopt;
        any_new = any_new || way < places.size();
        const auto last = divide(dividing, places[std::min(way, places.size() - 1)], i, job);
        if (!last)
            return std::nullopt;
        i = *last - 1;
    }
    return any_new ? std::optional(std::move(dividing)) : std::nullopt;
}

/// The parts' own cores: where a line cut off several tongues each has a share of its cell's.
struct NumberedPart {
    Part part;
    std::vector<Polygon> core;
};

std::vector<NumberedPart> numbered(const Dividing& dividing) {
    std::vector<NumberedPart> out;
    for (const Cell& cell : dividing.cells) {
        std::vector<Part> parts = parts_of(cell);
        for (Part& part : parts) {
            std::vector<Polygon> core = cell.core;
            if (parts.size() > 1)
                core = geometry::intersect(core, {{part.sheet.outer, {}}});
            out.push_back({std::move(part), std::move(core)});
        }
    }
    return out;
}

/// As measured, before the panel was laid flat.
std::vector<Point> in_the_drawing(std::vector<Point> points, const PanelJob& job) {
    for (Point& p : points) {
        p = from_piece_frame(p, job.heading);
        p = {p.x / job.blank->scale.x, p.y / job.blank->scale.y};
    }
    return points;
}

PanelSeam seam_of(int upper_part, int under_part, double length_mm, std::size_t line,
                  const std::vector<PlacedLine>& lines, const PanelJob& job) {
    const Divide& at = lines[line].line;
    SeamPlace where = place_of(at, job.outline_box(), job.stand);
    where.at = in_the_drawing(at.points, job);
    return {upper_part, under_part,       std::llround(length_mm * um_per_mm),
            at.added,   std::move(where), line};
}

std::vector<PanelSeam> seams_between(const std::vector<NumberedPart>& parts,
                                     const std::vector<PlacedLine>& lines, const PanelJob& job) {
    constexpr double shortest_mm = 0.04; // what is shorter is a corner where parts touch
    std::vector<PanelSeam> out;
    for (std::size_t k = 0; k < lines.size(); ++k)
        for (std::size_t i = 0; i < parts.size(); ++i)
            for (std::size_t j = i + 1; j < parts.size(); ++j) {
                const Between met = between(parts[i].core, parts[j].core, lines[k].plane);
                if (met.length_mm < shortest_mm)
                    continue;
                const int a = static_cast<int>(i) + 1;
                const int b = static_cast<int>(j) + 1;
                out.push_back(seam_of(met.first_is_upper ? a : b, met.first_is_upper ? b : a,
                                      met.length_mm, k, lines, job));
            }
    return out;
}

DividedPanel as_divided(const Dividing& dividing, const PanelJob& job) {
    DividedPanel out;
    std::vector<NumberedPart> parts = numbered(dividing);
    std::reverse(parts.begin(), parts.end()); // what lies under is laid first
    for (const NumberedPart& part : parts) {
        out.parts.push_back(part.part);
        out.shapes.push_back(shapes_of(part.part, job.allowed, job.by));
    }
    out.seams = seams_between(parts, dividing.lines, job);
    for (const Untold& met : untold(out, dividing.lines, job.allowed.overlap))
        out.seams.push_back(
            seam_of(met.upper_part, met.under_part, met.length_mm, met.line, dividing.lines, job));
    out.can_be_laid = number_by_laps(out);
    return out;
}

struct Finished {
    DividedPanel panel;
    bool lies_double = false; ///< film beside film that nothing can leave out
};

/// None: a line that is always used is left without a seam, or the parts cannot be laid.
std::optional<Finished> finished(const Dividing& dividing, const FileLines& lines,
                                 const PanelJob& job) {
    const DividedPanel whole = as_divided(dividing, job);
    if (!whole.can_be_laid)
        return std::nullopt;
    Finished out{whole};
    out.lies_double = !leave_out_doubled(out.panel);
    // A lap may not be left in the air, or end where no seam is.
    if (!untold(out.panel, dividing.lines, job.allowed.overlap).empty())
        out = {whole, true};
    for (std::size_t line = 0; line < lines.always.size(); ++line)
        if (!has_a_seam_at(out.panel, line))
            return std::nullopt;
    return out;
}

/// One way to divide the panel; what comes of it is worked out when that is first asked.
class WayToDivide {
public:
    explicit WayToDivide(Dividing dividing) : dividing_(std::move(dividing)) {}

    std::size_t cells() const { return dividing_.cells.size(); }

    /// None: film lies double, and may not; or there is nothing finished.
    const DividedPanel* panel(const FileLines& lines, bool may_lie_double, const PanelJob& job) {
        if (!is_worked_out_)
            finished_ = finished(dividing_, lines, job);
        is_worked_out_ = true;
        return finished_ && (may_lie_double || !finished_->lies_double) ? &finished_->panel
                                                                        : nullptr;
    }

private:
    Dividing dividing_;
    std::optional<Finished> finished_;
    bool is_worked_out_ = false;
};

/// Up to a few ways, the last of them the first one that will do.
std::vector<WayToDivide> all_in_strips(const Dividing& start, const PlacesOf& places_of,
                                       const std::function<bool(WayToDivide&)>& will_do,
                                       const PanelJob& job) {
    constexpr std::size_t most_ways = 8;
    std::vector<WayToDivide> out;
    for (std::size_t way = 0; way < most_ways; ++way) {
        std::optional<Dividing> dividing = in_strips(start, way, places_of, job);
        if (!dividing)
            break;
        out.emplace_back(std::move(*dividing));
        if (will_do(out.back()))
            break;
    }
    return out;
}

std::vector<WayToDivide> in_strips_from(const Dividing& start, const FileLines& lines,
                                        const PanelJob& job) {
    return all_in_strips(
        start,
        [&](const TooWide& cell) {
            return job.weighs_every_way ? strips(cell, job.stand, job.allowed, job.by)
                                        : fitters_places(cell, job);
        },
        [&](WayToDivide& way) {
            return !job.weighs_every_way && way.panel(lines, false, job) != nullptr;
        },
        job);
}

/// Divided where the film takes every part: along the fewest of the file's lines that do, else, if
/// that is allowed, in strips: between the file's lines, but where a fitter needs fewer pieces
/// without them.
std::vector<WayToDivide> where_needed(const Dividing& start, const FileLines& lines,
                                      const PanelJob& job) {
    std::vector<WayToDivide> ways;
    for (Dividing& way : along_fewest(start, lines.needed, job))
        ways.emplace_back(std::move(way));
    if (!ways.empty() || job.panel->seam != SeamRule::anywhere)
        return ways;
    Dividing at_lines = start;
    for (const PlacedLine& line : lines.needed)
        divide_all(at_lines, line, job);
    ways = in_strips_from(at_lines, lines, job);
    if (lines.needed.empty() || job.weighs_every_way)
        return ways;
    std::vector<WayToDivide> without = in_strips_from(start, lines, job);
    const bool fewer =
        !without.empty() && (ways.empty() || without.back().cells() < ways.back().cells());
    return fewer ? without : ways;
}

} // namespace

std::vector<DividedPanel> ways_to_divide(const PanelJob& job, Faults& faults) {
    Faults wrong;
    const FileLines lines = file_lines(job, wrong);
    if (stops(wrong)) {
        faults.insert(faults.end(), wrong.begin(), wrong.end());
        return {};
    }
    Dividing start{{job.whole}, {}};
    for (std::size_t line = 0; line < lines.always.size(); ++line)
        if (!divide_all(start, lines.always[line], job))
            wrong.push_back(divides_nothing(lines, line, job));
    if (!lines.always.empty()) {
        if (!stops(wrong))
            check_always(lines, as_divided(start, job), job, wrong);
        faults.insert(faults.end(), wrong.begin(), wrong.end());
        if (stops(wrong))
            return {};
    }
    std::vector<WayToDivide> ways;
    if (fits(start, job))
        ways.emplace_back(start);
    else if (job.may_add_seams)
        ways = where_needed(start, lines, job);
    std::vector<DividedPanel> out;
    for (const bool may_lie_double : {false, true})
        for (WayToDivide& way : ways)
            if (out.empty() || (job.weighs_every_way && !may_lie_double))
                if (const DividedPanel* panel = way.panel(lines, may_lie_double, job))
                    out.push_back(*panel);
    if (out.empty())
        faults.push_back(ways.empty() ? too_wide_fault(job) : lines_in_the_way(job));
    return out;
}

} // namespace pelt::piece
