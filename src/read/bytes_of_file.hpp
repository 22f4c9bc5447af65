// SPDX-License-Identifier: MIT
// The bytes of a file that another file names. Inside read/ only.
#pragma once

#include "read/input_file.hpp"

#include <cstddef>
#include <optional>
#include <string>

namespace pelt::read {

struct BytesRead {
    std::optional<std::string> bytes;
    bool not_opened = false; ///< else there is something wrong with the file
    std::string what;        ///< without bytes: why, to follow the file's name
    std::string remedy;
    std::optional<InputFile> file = std::nullopt; ///< where it could be opened
};

/// What sentences call the file that names another, and what that should be.
struct Naming {
    std::string named_by = "the vehicle file";
    std::string give = "give a mesh file";
    std::string too_large = "thin it out before it is exported";
};

/// Reads `file`, a path within the folder in which `owner` lies (the current one for "-"). What a
/// link leads out of that folder, or is no plain file, or has more than `most` bytes, is refused.
BytesRead bytes_beside(const std::string& owner, const std::string& file, std::size_t most,
                       const Naming& naming = {});

} // namespace pelt::read
