// SPDX-License-Identifier: MIT
// What a file is about.
#pragma once

#include "read/read.hpp"

#include <memory>

namespace pelt::read {

enum class FileKind { vehicle, film };

/// Told by which of the keys that name a thing the file has at its top. A file that is no YAML, or
/// has none of them or several, is a fault of severity file.
Reading<FileKind> kind_of(std::shared_ptr<const Source> source);

} // namespace pelt::read
