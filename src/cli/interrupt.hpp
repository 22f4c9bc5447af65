// SPDX-License-Identifier: MIT
// Ctrl-C while a search runs.
#pragma once

namespace pelt::cli {

/// While it lives the first SIGINT only asks the search to stop; the second ends the program as
/// usual. Where SIGINT was ignored (a job in the background) it stays ignored. One at a time.
class InterruptWatch {
public:
    InterruptWatch();
    ~InterruptWatch();
    InterruptWatch(const InterruptWatch&) = delete;
    InterruptWatch& operator=(const InterruptWatch&) = delete;

    bool interrupted() const;
};

/// Ends the program by SIGINT, so that the shell sees that it was stopped and stops its script.
[[noreturn]] void die_by_interrupt();

} // namespace pelt::cli
