// SPDX-License-Identifier: MIT
// Which names of files one file may give for another. Inside read/ only.
#pragma once

#include <string_view>

namespace pelt::read {

/// True for a path down from the folder: not from the root, no step that is "..", no backslash.
/// Links are followed and held against the folder when the file is opened (bytes_of_file.hpp).
bool stays_inside(std::string_view path);

} // namespace pelt::read
