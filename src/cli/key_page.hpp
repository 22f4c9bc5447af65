// SPDX-License-Identifier: MIT
// The lists of keys in the manual of files, made from the table of keys, in mdoc(7).
#pragma once

#include "read/keys.hpp"

#include <string>

namespace pelt::cli {

/// All keys that a file of this kind may hold (`root`: vehicle or film), map by map from the top.
std::string key_lists(read::In root);

} // namespace pelt::cli
