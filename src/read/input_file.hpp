// SPDX-License-Identifier: MIT
// Which files were read, so that no result is written over one of them.
#pragma once

#include <cstdint>
#include <string>

namespace pelt::read {

/// A file that was opened, as POSIX tells files apart, whatever they are called: by the device and
/// the number on it, links followed.
struct InputFile {
    std::string path; ///< as it was opened; "-": standard input
    std::uint64_t device = 0;
    std::uint64_t inode = 0;
};

} // namespace pelt::read
