// SPDX-License-Identifier: MIT
// How much a file may hold and a job may ask for: the one place for it. What lies beyond is refused
// with a sentence before the work begins, so that a small file cannot ask for a minute of it, nor
// for all memory.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::limit {

inline constexpr std::size_t file_bytes = std::size_t{8} << 20U; ///< but for scans
inline constexpr std::size_t line_bytes =
    100'000; ///< the parser keeps a whole line of lists in pieces
inline constexpr std::size_t depth = 32;
inline constexpr std::size_t values = 1'000'000;
inline constexpr std::size_t points = 200'000;
inline constexpr std::size_t entries = 1'000;
inline constexpr std::size_t outline_points = 5'000; ///< chords of its arcs included
inline constexpr std::size_t drawn_points = 100'000; ///< of all outlines of a file
inline constexpr std::size_t seam_lines = 50;
inline constexpr std::size_t seam_points = 50;
inline constexpr std::size_t letters_compared =
    20'000'000; ///< to tell which name was meant, a file
inline constexpr std::size_t scan_bytes = std::size_t{192} << 20U;
inline constexpr std::size_t scan_points = 3'000'000;
inline constexpr std::size_t scan_triangles = 2'000'000;
inline constexpr std::size_t pieces = 5'000; ///< of a job

/// One of them as the manual tells it.
struct Told {
    std::string_view what;
    std::string most;
};

/// All that a user can come upon, in the order in which a file is read.
std::vector<Told> all();

/// "200,000": in groups of three.
std::string in_groups(std::size_t number);

} // namespace pelt::limit
