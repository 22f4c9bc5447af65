// SPDX-License-Identifier: MIT
// Memory that runs out when a test says so: this test program's own operator new.
#pragma once

#include <atomic>

namespace pelt::test {

/// Counts the allocations from when it is made; the one with number `at` (1: the first) fails with
/// std::bad_alloc and, unless `once`, so do all after it, until it is gone. 0: none fails.
class FailingNew {
public:
    explicit FailingNew(long at, bool once = true);
    ~FailingNew();
    FailingNew(const FailingNew&) = delete;
    FailingNew& operator=(const FailingNew&) = delete;
    long count() const;
};

} // namespace pelt::test
