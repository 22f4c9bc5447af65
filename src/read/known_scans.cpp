// SPDX-License-Identifier: MIT
#include "read/known_scans.hpp"

#include "geometry/space.hpp"
#include "model/limits.hpp"
#include "read/mesh/mesh_file.hpp"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string_view>

namespace pelt::read {
namespace {

/// FNV-1a, 64 bits (draft-eastlake-fnv).
std::string digest_of(std::string_view bytes) {
    std::uint64_t hash = 0xcbf29ce484222325ULL;
    for (const char c : bytes) {
        hash ^= static_cast<unsigned char>(c);
        hash *= 0x100000001b3ULL;
    }
    constexpr std::string_view digits = "0123456789abcdef";
    std::string out;
    for (int shift = 60; shift >= 0; shift -= 4)
        out += digits[(hash >> static_cast<unsigned>(shift)) & 15U];
    return out;
}

ScanFile read_scan(const std::string& owner, const std::string& file, Unit unit) {
    ScanFile out;
    out.opened = bytes_beside(owner, file, limit::scan_bytes);
    if (!out.opened.bytes)
        return out;
    MeshRead read = parse_mesh(file, *out.opened.bytes);
    out.digest = digest_of(*out.opened.bytes);
    out.opened.bytes = "";
    if (!read.mesh) {
        out.what = read.what;
        out.remedy = read.remedy;
        return out;
    }
    const double scale = length_of(unit).mm();
    for (Point3& p : read.mesh->points)
        p = scale * p;
    out.found = geometry::surface_of(std::move(*read.mesh));
    return out;
}

bool same(const Surface& a, const Surface& b) {
    return a.points == b.points && a.triangles == b.triangles && a.loops == b.loops;
}

} // namespace

const ScanFile& KnownScans::of(const std::string& owner, const std::string& file, Unit unit) {
    const auto [at, is_new] = files_.try_emplace({owner + '\0' + file, unit});
    if (is_new)
        at->second = read_scan(owner, file, unit);
    return at->second;
}

std::shared_ptr<const Surface> KnownScans::shared(Surface surface) {
    const auto known = std::find_if(surfaces_.begin(), surfaces_.end(),
                                    [&](const auto& other) { return same(*other, surface); });
    if (known != surfaces_.end())
        return *known;
    return surfaces_.emplace_back(std::make_shared<const Surface>(std::move(surface)));
}

} // namespace pelt::read
