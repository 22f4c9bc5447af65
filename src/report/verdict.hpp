// SPDX-License-Identifier: MIT
// Whether the film goes there, in the words of those who lay it.
#pragma once

#include "model/blank.hpp"
#include "model/length.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace pelt::report {

enum class Lies { ok, care, split };

/// "ok", "care", "split".
std::string_view name_of(Lies lies);

/// ok: lies down by itself; care: goes in one piece when it is led; split: asks more than the film
/// gives. None where the film's limit or the stretch is not known; a stretch known only from above
/// can say ok.
std::optional<Lies> how_it_lies(const StretchAsked& stretch, std::optional<double> limit_percent);

/// "lies down", "warm it and spread it, then post-heat it", "will not go in one piece".
std::string in_words(Lies lies);

/// In how many strips, side by side, it would lie down; none where that is not known.
std::optional<int> strips_needed(const StretchAsked& stretch, double limit_percent);

/// How much of what the film gives a panel asks: more, above 80 %, so much that film lying by itself
/// would need more and has to be warmed, or little (which is also said of what is not known).
enum class Asked { little, warming, nearly_all, too_much };
Asked how_much_it_asks(const StretchAsked& stretch, double limit_percent);

/// In the words of a mark: what is wrong, and what to do where it asks too much.
std::string over_the_limit(const StretchAsked& stretch, double limit_percent);
std::string near_the_limit(double limit_percent);
std::string remedy_for(const StretchAsked& stretch);

/// What helps where the film will not go in one piece: strips, cuts, an inlay; no full stop.
std::string advice_on(const StretchAsked& stretch, double limit_percent);

/// Where to divide what asks more than the limit: as tried on the scan, or in strips by tape, which
/// is an estimate. None where it goes in one piece or nothing is known.
std::optional<Division> division_for(const StretchAsked& stretch, std::optional<double> limit);

/// "seam", "relief".
std::string_view name_of(Division::Kind kind);

/// "one seam, 412 mm long: 6.1 % instead of 19 %"; no full stop.
std::string division_text(const Division& division, const StretchAsked& stretch, Unit unit);

/// More than half of the panel is stretched by nine tenths of the most.
bool is_much_the_same(const StretchMap& map);

/// "most at the upper left, pulling up and down", "much the same all over"; the blank's lower left
/// is (0, 0).
std::string where_most(const StretchMap& map);

} // namespace pelt::report
