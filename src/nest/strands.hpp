// SPDX-License-Identifier: MIT
// Runs a fixed number of strands on however many threads there are.
#pragma once

#include <cstddef>
#include <functional>

namespace pelt::nest {

/// Calls `task(0)` … `task(count - 1)`, each once, on up to `threads` threads; rethrows what the
/// lowest-numbered failing task threw. Tasks must not touch each other's data.
void run_all(std::size_t count, int threads, const std::function<void(std::size_t)>& task);

} // namespace pelt::nest
