// SPDX-License-Identifier: MIT
// A text of words on lines, read one by one, and the mesh that comes of it. Inside read/mesh/ only.
#pragma once

#include "read/mesh/mesh_file.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::read {

/// Thrown within read/mesh/ at the first mistake, caught by parse_mesh.
struct BadMesh {
    std::string what;
    std::string remedy;
};

/// Words of a text, parted by blanks and line ends (LF, CR LF or CR).
class Words {
public:
    explicit Words(std::string_view text, std::size_t line = 1) : text_(text), line_(line) {}

    /// The next word of the line; empty at its end. A backslash at the end of a line goes on with
    /// the next one when `continued`.
    std::string_view word(bool continued = false);
    /// To the beginning of the next line; false at the end of the text.
    bool next_line();
    /// The next word on this or a later line; empty at the end of the text.
    std::string_view word_anywhere();

    std::size_t line() const { return line_; }
    /// Bytes up to here.
    std::size_t at() const { return at_; }

    [[noreturn]] void fail(const std::string& what, const std::string& remedy = {}) const;

    /// A decimal number, finite and not too large.
    double number(std::string_view word) const;
    std::int64_t whole(std::string_view word) const;

private:
    std::string_view text_;
    std::size_t at_ = 0;
    std::size_t line_ = 1;
};

/// Collects a mesh within the limits.
class MeshMaker {
public:
    void add_point(Point3 p);
    std::size_t points() const { return mesh_.points.size(); }
    /// Of a polygon, which then has more of them or ends. Corners count from 0; they may come
    /// before their points, finish() checks them. At most `most_corners`, which the caller sees to.
    void add_corner(std::int64_t corner) { corners_.push_back(corner); }
    void end_polygon();
    void add_triangle_of_last_points();
    static constexpr std::size_t most_corners = 1'000;
    void reserve(std::size_t points, std::size_t triangles);
    geometry::Mesh finish();

private:
    geometry::Mesh mesh_;
    std::vector<std::int64_t> corners_;
};

/// Each kind of file; throw BadMesh.
geometry::Mesh read_obj(std::string_view text);
geometry::Mesh read_ply(std::string_view bytes);
geometry::Mesh read_stl(std::string_view bytes);

/// The user's words in quotes, cut when long, what cannot be shown as '?'.
std::string shown(std::string_view word);

} // namespace pelt::read
