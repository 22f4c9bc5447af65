// SPDX-License-Identifier: MIT
#pragma once

#include "model/utf8.hpp"

namespace pelt::report {

using pelt::code_points;
using pelt::display_width;
using pelt::utf8;

} // namespace pelt::report
