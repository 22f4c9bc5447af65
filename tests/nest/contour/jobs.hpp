// SPDX-License-Identifier: MIT
// Random contour jobs, and a referee for layouts that shares no code with the search: distances
// and overlaps come from GEOS (the Geometry Engine, Open Source), which computes in doubles.
#pragma once

#include "nest/nest.hpp"

#include <cstdint>
#include <random>
#include <string>
#include <tuple>
#include <vector>

namespace pelt::test {

Piece piece_of(Polygon outline, std::vector<Turn> turns, std::size_t copies = 1);
Ring rectangle(Um low_x, Um low_y, Um high_x, Um high_y, bool clockwise = false);
Roll roll_of(Um width, std::optional<Um> available = std::nullopt);

/// Star-shaped pieces of 50 to 600 mm, some with a hole, with the turns of one of the directions.
std::vector<Piece> random_pieces(std::mt19937& random, std::size_t kinds);

/// Everything that is wrong with a contour layout, a line each; empty when it holds. `freely`:
/// pieces of any direction may lie in any turn.
std::string faults_of(const std::vector<Piece>& pieces, const std::vector<Roll>& rolls, Um gap,
                      const Layout& layout, bool freely = false);

/// A short search: stops at a fixed share of the work, so that it is the same everywhere.
nest::Result nested(const std::vector<Piece>& pieces, const std::vector<Roll>& rolls, Um gap,
                    int threads = 1, double share = 0.05);

/// A trial: a first layout and no more.
nest::Result tried(const std::vector<Piece>& pieces, const std::vector<Roll>& rolls, Um gap,
                   int threads = 1);

/// A whole search of effort 1 in which pieces of any direction lie freely.
nest::Result nested_freely(const std::vector<Piece>& pieces, const std::vector<Roll>& rolls, Um gap,
                           int threads = 1);

/// Everything that a layout says of where pieces lie, to compare two: roll, piece, copy, shape,
/// millidegrees, x, y.
using Numbers = std::tuple<std::size_t, std::size_t, std::size_t, std::size_t, int, Um, Um>;
std::vector<Numbers> numbers(const Layout& layout);

} // namespace pelt::test
