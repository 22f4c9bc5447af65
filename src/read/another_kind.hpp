// SPDX-License-Identifier: MIT
// Files of other programs, given in place of one of ours. Inside read/ only.
#pragma once

#include "model/fault.hpp"

#include <memory>

namespace pelt::read {

/// Whether a file that could not be parsed is not meant to be: its name does not say YAML, and no
/// line begins with what names a vehicle, a film or a stock. A slip in one of ours is worth a
/// sentence of its own; what is wrong with the first line of a picture is not.
bool is_another_kind(const Source& source);

Fault another_kind_of_file(const std::shared_ptr<const Source>& source);

} // namespace pelt::read
