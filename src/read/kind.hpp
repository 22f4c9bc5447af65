// SPDX-License-Identifier: MIT
// What a file is about.
#pragma once

#include "read/read.hpp"

#include <memory>
#include <string_view>

namespace pelt::read {

enum class FileKind { vehicle, film, stock, shop, jobs };
std::string_view name_of(FileKind kind);

/// False for kinds of files that a later version will read.
bool works(FileKind kind);

/// Told by which of the keys that name a thing the file has at its top. A file that is no YAML, has
/// none of them or several, or is of a kind that does not work yet, is a fault of severity file.
Reading<FileKind> kind_of(std::shared_ptr<const Source> source);

} // namespace pelt::read
