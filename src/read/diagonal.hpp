// SPDX-License-Identifier: MIT
// A taped diagonal, against the outline that it belongs to. Inside read/ only.
#pragma once

#include "model/vehicle.hpp"
#include "read/fields.hpp"

namespace pelt::read {

/// Reads the key 'diagonal' of a panel and tells an outline that does not agree with it.
void read_diagonal(const Fields& fields, Panel& panel, Context& context);

} // namespace pelt::read
