// SPDX-License-Identifier: MIT
// A text that another file names. Inside read/ only.
#pragma once

#include "read/bytes_of_file.hpp"
#include "read/read.hpp"

#include <memory>
#include <string>

namespace pelt::read {

/// Reads `file`, a path within the folder of the file of `named_at`, as `bytes_beside` does.
/// Sentences begin with `called`.
Reading<std::shared_ptr<const Source>> source_beside(const Place& named_at, const std::string& file,
                                                     const std::string& called,
                                                     const Naming& naming);

} // namespace pelt::read
