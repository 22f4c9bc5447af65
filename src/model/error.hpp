// SPDX-License-Identifier: MIT
#pragma once

#include <stdexcept>

namespace pelt {

/// A mistake of the program, never of the user: caught once, in cli/, as exit status 5 with a
/// request for a bug report.
class ProgramError : public std::logic_error {
public:
    using std::logic_error::logic_error;
};

} // namespace pelt
