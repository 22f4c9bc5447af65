// SPDX-License-Identifier: MIT
// What a file may say, for editors: a JSON Schema (https://json-schema.org, draft 2020-12) from the
// table of keys.
#pragma once

#include "read/kind.hpp"

#include <string>

namespace pelt::cli {

/// JSON, ended by a newline. It refuses less than reading does, never more: units, names and what
/// belongs together are for `pelt check`. Scalars may be of any type that a YAML reader makes of
/// them (`yes` is true to some).
std::string schema_of(read::FileKind kind);

} // namespace pelt::cli
