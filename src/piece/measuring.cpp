// SPDX-License-Identifier: MIT
#include "develop/develop.hpp"
#include "geometry/grow.hpp"
#include "piece/piece.hpp"
#include "piece/swinging.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>
#include <vector>

namespace pelt::piece {
namespace {

Um up_to_the_grid(double mm) {
    return static_cast<Um>(std::ceil(mm * um_per_mm));
}

/// What the tape and the rule told of a panel's outline. The sides of a `size` turn nothing.
std::vector<double*> readings_of(Panel& panel) {
    std::vector<double*> out;
    if (auto* outline = std::get_if<OutlineForm>(&panel.form); outline && !outline->from_size)
        for (OutlineSegment& segment : outline->segments) {
            out.insert(out.end(), {&segment.to.x, &segment.to.y});
            if (segment.through)
                out.insert(out.end(), {&segment.through->x, &segment.through->y});
        }
    if (auto* girths = std::get_if<GirthsForm>(&panel.form))
        for (GirthStation& station : girths->stations)
            out.insert(out.end(), {&station.at_mm, &station.up_mm, &station.down_mm});
    if (panel.crown && !panel.crown->measured_over && !out.empty())
        out.insert(out.end(), {&panel.crown->wide_mm, &panel.crown->high_mm});
    return out;
}

/// Looks for the readings within the error that make the film of a panel reach farthest along one
/// axis: each in turn as far off as can be, whichever way it reaches farther, the others as they
/// were found to be worst.
class WorstReadings {
public:
    WorstReadings(const Panel& panel, const Film& film, const Wishes& wishes, double error)
        : panel_(panel), film_(film), wishes_(wishes), error_(error),
          readings_(readings_of(panel_)) {
        // What lies within the outline moves none of its sides.
        panel_.openings.clear();
        panel_.inlays.clear();
        panel_.recesses.clear();
        panel_.seam_lines.clear();
        for (const double* reading : readings_)
            as_read_.push_back(*reading);
    }

    /// How far beyond the blank on every side, the blank in the middle.
    double reach() {
        if (readings_.empty())
            return 0;
        const Sides blank = sides();
        double most = 0;
        for (const std::size_t axis : {0U, 1U}) {
            take_back();
            double side = blank[axis];
            constexpr int rounds = 2;
            for (int round = 0; round < rounds; ++round)
                for (std::size_t i = 0; i < readings_.size(); ++i)
                    side = turned_for_the_worse(i, axis, side);
            most = std::max(most, (side - blank[axis]) / 2);
        }
        return most;
    }

private:
    using Sides = std::array<double, 2>; ///< of the film that stays on, along x and y

    void take_back() {
        for (std::size_t i = 0; i < readings_.size(); ++i)
            *readings_[i] = as_read_[i];
    }

    /// Zero where such readings make no panel.
    Sides sides() const {
        const std::optional<TuckedOutline> drawn = tucked_outline(panel_, film_, wishes_);
        if (!drawn)
            return {};
        // Where the curve crosses itself it does so inside: its extent is that of the film.
        return extent_of(geometry::grown_curve(drawn->outline, drawn->moves));
    }

    static Sides extent_of(const std::vector<Point>& curve) {
        Point low = curve.front();
        Point high = low;
        for (const Point& p : curve) {
            low = {std::min(low.x, p.x), std::min(low.y, p.y)};
            high = {std::max(high.x, p.x), std::max(high.y, p.y)};
        }
        return {high.x - low.x, high.y - low.y};
    }

    double turned_for_the_worse(std::size_t i, std::size_t axis, double side) {
        const double before = *readings_[i];
        double worst = before;
        for (const double off : {error_, -error_}) {
            *readings_[i] = as_read_[i] + off;
            if (const double now = *readings_[i] == before ? side : sides()[axis]; now > side) {
                side = now;
                worst = *readings_[i];
            }
        }
        *readings_[i] = worst;
        return side;
    }

    Panel panel_;
    const Film& film_;
    const Wishes& wishes_;
    double error_;
    std::vector<double*> readings_; ///< of panel_
    std::vector<double> as_read_;
};

} // namespace

Panel allowing_for_errors(Panel panel, const Film& film, const Wishes& wishes, Um tolerance) {
    const double reading = static_cast<double>(panel.tolerance.value_or(tolerance)) / um_per_mm;
    const develop::ReachBeyond beyond = develop::reach_beyond(panel, reading);
    if (beyond.across_axes <= 0)
        return panel;
    // A corner of two tucks swings out when a short side was read askew.
    const double swinging = WorstReadings(panel, film, wishes, reading).reach();
    double along_outlines =
        std::max(beyond.any_way, swinging * beyond.any_way / beyond.across_axes);
    if (wishes.by == CutBy::contour && reading > 0) {
        // Where a crown or arcs carry errors further, they carry those of the corners too.
        const double carried = beyond.any_way / (reading * std::numbers::sqrt2);
        along_outlines = std::max(
            along_outlines, std::max(carried, 1.0) * corners_outside(panel, film, wishes, reading));
    }
    const Um more = up_to_the_grid(std::max(beyond.across_axes, swinging));
    // Film that may turn out to be the panel's lies beside the margins, which are left as they
    // were.
    const Handling handling = panel.allowances.handling.value_or(film.allowances.handling);
    panel.allowances.handling = Handling{handling.want + more, handling.least + more};
    if (std::optional<Handling>& placing = panel.allowances.placing)
        placing = Handling{placing->want + more, placing->least + more};
    panel.allowances.bleed =
        panel.allowances.bleed.value_or(film.allowances.bleed) + up_to_the_grid(along_outlines);
    return panel;
}

} // namespace pelt::piece
