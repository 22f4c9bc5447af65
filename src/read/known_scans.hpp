// SPDX-License-Identifier: MIT
// Scans that a file has named already: many panels of one scan cost no more than one. Inside read/
// only.
#pragma once

#include "geometry/mesh/mesh.hpp"
#include "model/length.hpp"
#include "model/surface.hpp"
#include "read/bytes_of_file.hpp"

#include <map>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace pelt::read {

/// What came of one scan file.
struct ScanFile {
    BytesRead opened;   ///< its bytes are gone
    std::string digest; ///< of the bytes
    std::string what;   ///< not empty: no mesh, and why
    std::string remedy;
    geometry::SurfaceFound found; ///< in millimetres; when there is a mesh
};

class KnownScans {
public:
    /// The scan, read when it is asked for first. `owner` is the file that names it.
    const ScanFile& of(const std::string& owner, const std::string& file, Unit unit);

    /// The surface, or one that is the same and was given before.
    std::shared_ptr<const Surface> shared(Surface surface);

private:
    std::map<std::pair<std::string, Unit>, ScanFile> files_;
    std::vector<std::shared_ptr<const Surface>> surfaces_;
};

} // namespace pelt::read
