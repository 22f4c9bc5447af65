// SPDX-License-Identifier: MIT
// The command line: one call of the stages, messages on standard error, an exit status.
#pragma once

namespace pelt::cli {

/// Runs one command; returns the exit status.
int run(int argc, char** argv);

} // namespace pelt::cli
