// SPDX-License-Identifier: MIT
// From the search's poses to a layout on the grid, confirmed in whole numbers.
#pragma once

#include "nest/contour/scene.hpp"

#include <optional>
#include <span>
#include <vector>

namespace pelt::nest::contour {

/// Rounds poses to the grid and checks the pieces' own outlines.
class Finisher {
public:
    Finisher(const Problem& problem, std::span<const Piece> pieces, std::span<const Roll> rolls,
             Um gap);

    /// The layout without its bound; nothing when two outlines are nearer than the gap or one
    /// leaves the film or covers a flaw.
    std::optional<Layout> layout(const std::vector<Pose>& poses) const;

private:
    struct Placed {
        std::size_t item = 0;
        GridPoint at; // in the roll's frame
        Box box;
        std::uint32_t option = 0;
        std::size_t roll = 0;
    };
    std::vector<Placed> in_order(const std::vector<Pose>& poses) const;
    bool inside(const Placed& placed) const;
    bool all_clear(const std::vector<Placed>& placed) const;
    Layout assembled(const std::vector<Placed>& placed) const;

    const Problem* problem_;
    std::span<const Roll> rolls_;
    Um gap_;
    std::vector<Polygon> turned_; // by option; empty for obstacles
    std::vector<Box> boxes_;
};

} // namespace pelt::nest::contour
