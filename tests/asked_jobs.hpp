// SPDX-License-Identifier: MIT
// How many random jobs a test tries.
#pragma once

#include <algorithm>
#include <cstdlib>

namespace pelt::test {

/// More on request by an environment variable, never fewer than `least`.
inline int asked_jobs(const char* variable, int least) {
    const char* text = std::getenv(variable); // NOLINT(concurrency-mt-unsafe)
    return text == nullptr ? least : std::max(least, std::atoi(text));
}

} // namespace pelt::test
