// SPDX-License-Identifier: MIT
// The developer's log, on standard error at -vv only. Never for users: see messages.hpp.
#pragma once

#include <exception>

namespace pelt::cli {

/// Sends spdlog's default logger, which would write to standard output, to standard error.
void start_log(int verbose);

void log_exception(const std::exception& error);

} // namespace pelt::cli
