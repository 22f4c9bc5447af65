// SPDX-License-Identifier: MIT
// From a panel as measured to a flat blank in true lengths.
#pragma once

#include "model/blank.hpp"
#include "model/vehicle.hpp"

#include <memory>
#include <optional>
#include <string_view>
#include <vector>

namespace pelt::develop {

/// Scans as they were laid flat, for those who develop the same panels several times: what no film
/// changes is done once for every scan, the rest once for every limit. Several threads may share
/// one.
class LaidScans {
public:
    LaidScans();
    ~LaidScans();
    LaidScans(const LaidScans&) = delete;
    LaidScans& operator=(const LaidScans&) = delete;

    class Kept; ///< develop's own
    Kept& kept() const { return *kept_; }

private:
    std::unique_ptr<Kept> kept_;
};

/// What a panel is developed for.
struct Purpose {
    /// What the film stretches by on a panel at most: scans are laid flat for that; none: as film
    /// lies by itself.
    std::optional<double> film_percent = std::nullopt;
    /// Also the bound of a scan's stretch and where it stretches how far.
    bool in_detail = true;
    std::shared_ptr<LaidScans> scans = nullptr; ///< none: nothing is kept
    /// Also where to divide a scan that asks more than the film gives.
    bool divide = false;
};

/// Develops one panel: outlines with arcs (flattened within 0.05 mm), crowns, girths, scans.
/// Mistakes that show only here are added to `faults`, with severity file; then the result has no
/// blanks. Warnings and notes come beside a result.
DevelopedPanel develop(const Panel& panel, Faults& faults, const Purpose& purpose = {});

/// The edges of the blank (indices) that a word of an `edges` entry selects: `all`; `top`,
/// `bottom`, `left`, `right` by the normal, ties to top and bottom; `start`, `end` of a girth
/// panel; `2-3`; a name. None: the word selects nothing.
std::vector<int> edges_selected(const Blank& blank, std::string_view word);

/// How far beyond a blank, on every side and in millimetres, the panel can reach when every reading
/// was off by as much as `reading_mm`: `across_axes` along the drawing's axes, `any_way` square to
/// sides of any slope.
struct ReachBeyond {
    double across_axes = 0;
    double any_way = 0;
};

/// Of a `size` a side is one reading, of an outline every coordinate of every point is, of girths
/// every station; a crown's rises were read too. The point half way along an arc carries its own
/// error further: a parabola through three readings is off by at most 1.25 times theirs between
/// them, where the middle one is half way (the Lebesgue constant of three equal steps; from
/// memory). A scan is no tape reading: nothing, but for a tolerance of the panel's own.
ReachBeyond reach_beyond(const Panel& panel, double reading_mm);

} // namespace pelt::develop
