// SPDX-License-Identifier: MIT
// The search's generator.
#pragma once

#include "model/random.hpp"

namespace pelt::nest {

using pelt::Random;

} // namespace pelt::nest
