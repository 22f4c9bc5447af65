// SPDX-License-Identifier: MIT
// The exit statuses. Shells keep 126 and above for themselves (POSIX XCU 2.8.2); 130 is what a
// shell shows for a program that SIGINT ended.
#pragma once

#include "model/fault.hpp"

#include <string_view>
#include <vector>

namespace pelt::cli {

namespace status {
inline constexpr int done = 0;
inline constexpr int cannot_be_met = 1;
inline constexpr int wrong_command_line = 2;
inline constexpr int wrong_file = 3;
inline constexpr int no_access = 4;
inline constexpr int failed = 5;
inline constexpr int stopped = 130;
} // namespace status

struct StatusRow {
    int status;
    std::string_view meaning;
};

/// What help and the manual say about each.
const std::vector<StatusRow>& statuses();

/// The status of the worst fault; done when nothing in the list stops the job.
int status_of(const Faults& faults);

} // namespace pelt::cli
