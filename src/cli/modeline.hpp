// SPDX-License-Identifier: MIT
// The first line of shipped files, which tells editors where the schema of the file lies.
#pragma once

#include "model/fault.hpp"

#include <string>

namespace pelt::cli {

/// The text of a file that is printed to be copied elsewhere: where its first line names a schema
/// by a path from its own folder, and that is there, the path is made absolute. Else the text as it
/// is.
std::string with_schema_found(const Source& file);

} // namespace pelt::cli
