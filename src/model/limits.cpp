// SPDX-License-Identifier: MIT
#include "model/limits.hpp"

namespace pelt::limit {
namespace {

std::string in_mib(std::size_t bytes) {
    return std::to_string(bytes >> 20U) + " MiB";
}

} // namespace

std::string in_groups(std::size_t number) {
    std::string text = std::to_string(number);
    for (std::size_t at = text.size(); at > 3; at -= 3)
        text.insert(at - 3, ",");
    return text;
}

std::vector<Told> all() {
    return {
        {"a file, scans apart", in_mib(file_bytes)},
        {"a line of a YAML file", in_groups(line_bytes) + " bytes"},
        {"maps and lists in one another", std::to_string(depth)},
        {"values in a file", in_groups(values)},
        {"points in a file", in_groups(points)},
        {"entries of a list or a map that is no outline", in_groups(entries)},
        {"points of an outline, its arcs as chords", in_groups(outline_points)},
        {"points of all outlines of a file", in_groups(drawn_points)},
        {"seam lines of a panel", std::to_string(seam_lines)},
        {"points of a seam line", std::to_string(seam_points)},
        {"a scan", in_mib(scan_bytes)},
        {"points of a scan", in_groups(scan_points)},
        {"triangles of a scan", in_groups(scan_triangles)},
        {"pieces of a job: panels by sides, faces, count and times", in_groups(pieces)},
    };
}

} // namespace pelt::limit
