// SPDX-License-Identifier: MIT
// When a job is small enough to try every way of cutting it, and what comes of it.
#pragma once

#include "nest/straight/block.hpp"

#include <functional>
#include <optional>

namespace pelt::nest::straight {

struct EveryWay {
    bool complete = false;      ///< every way within the length was looked at
    bool stopped = false;       ///< by the callback
    std::optional<Sheet> sheet; ///< a shortest one, when there is one within the length
    Steps length = 0;           ///< of it
    Steps bound = 0;            ///< no layout is shorter
    std::uint64_t work = 0;     ///< that was done
};

/// Whether the job can be looked at so: at most a certain number of different sets of pieces, and
/// nothing but new film that begins with a stretch of at least that length.
bool can_try_every_way(const Problem& problem, Steps length);

/// A guess of the work, in the units of `try_every_way`; it can be some times more or less.
double work_of_every_way(const Problem& problem);

/// Looks for a layout of at most this length, with at most this work. The callback is asked from
/// time to time whether to go on.
EveryWay try_every_way(const Problem& problem, Steps length, std::uint64_t work, int threads,
                       const std::function<bool()>& go_on);

/// The same for larger jobs, where it is known that no layout is shorter than `bound`: lengths near
/// the bound come first, as the work rises steeply with the length. What was proved when the work
/// was spent is kept.
EveryWay try_from_below(const Problem& problem, Steps bound, Steps length, std::uint64_t work,
                        int threads, const std::function<bool()>& go_on);

/// The shortest single section for everything, within that length; few pieces only.
EveryWay try_every_strip(const Problem& problem, Steps length);

} // namespace pelt::nest::straight
