// SPDX-License-Identifier: MIT
// Runs a fixed number of tasks on however many threads there are. What the tasks do never depends
// on how many that is.
#pragma once

#include <cstddef>
#include <functional>

namespace pelt {

/// Calls `task(0)` … `task(count - 1)`, each once, on up to `threads` threads; `task(0)` on the
/// calling one. Rethrows what the lowest-numbered failing task threw. Tasks must not touch each
/// other's data. Where the system refuses a thread, the work is done by those that there are.
void run_all(std::size_t count, int threads, const std::function<void(std::size_t)>& task);

} // namespace pelt
