// SPDX-License-Identifier: MIT
// Every figure that steers the search and was found by trying. None is about being right, all are
// about being quick: measured with tests/bench/contour.cpp.
#pragma once

#include <cstddef>
#include <cstdint>

namespace pelt::nest::contour::tuning {

// Placing one item (mover): places tried anywhere and near the present one, how many of them are
// slid to a local optimum besides the present place, in how many steps; how far ahead (share of the
// item's half side) borders are heeded; how far off (same share) nearby places are.
inline constexpr int samples_anywhere = 40;
inline constexpr int samples_alike = 16; // of these, beside like neighbours, where kinds repeat
inline constexpr int samples_nearby = 16;
inline constexpr int refined = 3;
inline constexpr int descent_steps = 8;
inline constexpr double descent_ahead = 0.2;
inline constexpr double nearby_reach = 0.5;

// Guided local search (separator): pairs in conflict grow heavier by a factor between these, by
// their share of the worst violation; others fade. A fall of the total below this share is
// progress. The four figures are those of Gardeyn, Vanden Berghe & Wauters 2025, arXiv:2509.13329
// (from memory).
inline constexpr double raise_least = 1.2;
inline constexpr double raise_most = 2.0;
inline constexpr double fade = 0.95;
inline constexpr double progress_share = 0.98;

// Joint relaxation: tried every so many sweeps while the total violation is below this share of a
// typical side; 0 steps: never.
inline constexpr int relax_steps = 50;
inline constexpr int relax_every = 5;
inline constexpr double relax_below = 0.3;

// One strand: by which share the film gets shorter at least after a success; sweeps without
// progress before an attempt is given up; how many failed attempts are remembered.
inline constexpr double shrink_share = 0.001;
inline constexpr int patience = 150;
inline constexpr std::size_t failed_kept = 30;

// Longer strides while they are easy: the first and the longest share, how much longer after an
// attempt of few sweeps; a long stride is given up sooner, and halved.
inline constexpr double stride_first = 0.01;
inline constexpr double stride_most = 0.02;
inline constexpr double stride_grow = 1.5;
inline constexpr int stride_quick = 10;
inline constexpr int stride_patience = 40;

// The whole: strands, field look-ups a unit of effort, joins a unit; how many strands run until how
// many joins. Where there are more ways to lie than these, fields fill the caches and a look-up
// takes up to twice as long: a unit is then as many fewer, at least half. A few items are soon as
// well laid as they will be: a unit is then so many for each.
inline constexpr std::size_t strands = 8;
inline constexpr std::uint64_t work_a_unit = 28'000'000;
inline constexpr std::uint64_t work_an_item = 1'500'000;
inline constexpr std::size_t cheap_options = 80;
inline constexpr std::uint64_t joins_a_unit = 16;
inline constexpr std::size_t narrow_strands = 2;
inline constexpr std::uint64_t narrow_epochs = 16;
// Free turns: one in so many of the work that the listed turns had.
inline constexpr std::uint64_t askew_part = 4;
// What is longer by less than this share is another way worth following.
inline constexpr double own_way_share = 0.01;
// Above so many items fewer strands make a layout of their own.
inline constexpr std::size_t many_items = 400;

// Patterns that repeat: above how many items for each unit of effort they find shorter layouts than
// a search over all items; how many units and joins the clock stands for.
inline constexpr std::uint64_t repeating_items_a_unit = 100;
inline constexpr std::uint64_t timed_units = 10;
inline constexpr std::uint64_t timed_pattern_epochs = 128;

} // namespace pelt::nest::contour::tuning
