// SPDX-License-Identifier: MIT
#include "read/mesh/words.hpp"

#include "model/limits.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <limits>
#include <utility>

namespace pelt::read {
namespace {

bool is_blank(char c) {
    return c == ' ' || c == '\t' || c == '\v' || c == '\f';
}
bool is_end(char c) {
    return c == '\n' || c == '\r';
}

std::string_view without_plus(std::string_view word) {
    return word.size() > 1 && word[0] == '+' && word[1] != '-' ? word.substr(1) : word;
}

} // namespace

std::string shown(std::string_view word) {
    constexpr std::size_t most = 24;
    std::string out = "'";
    for (const char c : word.substr(0, most))
        out += c >= ' ' && c <= '~' ? c : '?';
    return out + (word.size() > most ? "…'" : "'");
}

bool Words::next_line() {
    while (at_ < text_.size() && !is_end(text_[at_]))
        ++at_;
    if (at_ >= text_.size())
        return false;
    at_ += text_.substr(at_, 2) == "\r\n" ? 2 : 1;
    ++line_;
    return at_ < text_.size();
}

std::string_view Words::word(bool continued) {
    while (at_ < text_.size()) {
        if (is_blank(text_[at_]))
            ++at_;
        else if (continued && text_[at_] == '\\' && at_ + 1 < text_.size() &&
                 is_end(text_[at_ + 1]))
            next_line();
        else
            break;
    }
    const std::size_t from = at_;
    while (at_ < text_.size() && !is_blank(text_[at_]) && !is_end(text_[at_]) &&
           !(continued && text_[at_] == '\\' && at_ + 1 < text_.size() && is_end(text_[at_ + 1])))
        ++at_;
    return text_.substr(from, at_ - from);
}

std::string_view Words::word_anywhere() {
    do {
        const std::string_view found = word();
        if (!found.empty())
            return found;
    } while (next_line());
    return {};
}

void Words::fail(const std::string& what, const std::string& remedy) const {
    throw BadMesh{"line " + std::to_string(line_) + ": " + what, remedy};
}

double Words::number(std::string_view word) const {
    const std::string_view digits = without_plus(word);
    double value = 0;
    const auto [rest, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (word.empty())
        fail("a number is missing", "the file may have been cut short; export it again");
    if (error == std::errc::invalid_argument || rest != digits.data() + digits.size())
        fail(shown(word) + " is not a number", "numbers have a point for their decimals");
    if (error != std::errc{} || !std::isfinite(value) || std::abs(value) > farthest_coordinate)
        fail(shown(word) + " is too large or too small a number", "check the units of the export");
    return value;
}

std::int64_t Words::whole(std::string_view word) const {
    const std::string_view digits = without_plus(word);
    std::int64_t value = 0;
    const auto [rest, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (word.empty())
        fail("a whole number is missing", "the file may have been cut short; export it again");
    if (error != std::errc{} || rest != digits.data() + digits.size())
        fail(shown(word) + " is not a whole number");
    return value;
}

void MeshMaker::reserve(std::size_t points, std::size_t triangles) {
    mesh_.points.reserve(std::min(points, limit::scan_points));
    mesh_.triangles.reserve(std::min(triangles, limit::scan_triangles));
}

void MeshMaker::add_point(Point3 p) {
    if (mesh_.points.size() >= limit::scan_points)
        throw BadMesh{"has more than " + limit::in_groups(limit::scan_points) + " points",
                      "thin the scan out before it is exported"};
    mesh_.points.push_back(p);
}

void MeshMaker::end_polygon() {
    for (std::size_t k = 2; k < corners_.size(); ++k) {
        if (mesh_.triangles.size() >= limit::scan_triangles)
            throw BadMesh{"has more than " + limit::in_groups(limit::scan_triangles) + " triangles",
                          "thin the scan out before it is exported"};
        // No file that is short enough holds more points than an int counts.
        const auto corner = [&](std::size_t i) {
            return static_cast<int>(
                std::clamp<std::int64_t>(corners_[i], -1, std::numeric_limits<int>::max()));
        };
        mesh_.triangles.push_back({corner(0), corner(k - 1), corner(k)});
    }
    corners_.clear();
}

void MeshMaker::add_triangle_of_last_points() {
    for (std::size_t back = std::min<std::size_t>(3, points()); back > 0; --back)
        add_corner(static_cast<std::int64_t>(points() - back));
    end_polygon();
}

geometry::Mesh MeshMaker::finish() {
    const int points = static_cast<int>(mesh_.points.size());
    if (mesh_.triangles.empty())
        throw BadMesh{"holds no triangles", "export the scan as a mesh, not as points or curves"};
    for (const Triangle& t : mesh_.triangles)
        for (const int corner : t)
            if (corner < 0 || corner >= points)
                throw BadMesh{"has a triangle with a corner that is none of its " +
                                  std::to_string(points) + " points",
                              "the file may have been cut short; export it again"};
    return std::move(mesh_);
}

} // namespace pelt::read
