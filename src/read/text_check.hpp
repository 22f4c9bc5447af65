// SPDX-License-Identifier: MIT
// Whether a file is text that can be read at all, looked at byte by byte before any parsing.
#pragma once

#include "model/fault.hpp"

#include <cstddef>
#include <memory>
#include <string>

namespace pelt::read {

/// Faults for: more than 8 MiB, a line beyond its limit, a byte order mark, NUL and other control
/// characters, what is not UTF-8, line ends of a lone carriage return, tabs in the indent. The
/// first of each kind is told. True when there are none.
bool check_text(const std::shared_ptr<const Source>& source, Faults& faults);

/// The fault of a file over 8 MiB.
Fault too_large(const std::shared_ptr<const Source>& source);

/// The place of a byte.
Place place_of(const std::shared_ptr<const Source>& source, std::size_t byte);

} // namespace pelt::read
