// SPDX-License-Identifier: MIT
#include "model/limits.hpp"
#include "read/mesh/ply_header.hpp"
#include "read/mesh/words.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::read::ply {
namespace {

/// The values after the header, one by one.
class Values {
public:
    Values(std::string_view bytes, const Header& header)
        : rest_(bytes.substr(header.bytes)), header_(header), words_(rest_, header.lines),
          at_(header.bytes) {}

    double next(Type type) {
        if (header_.ascii)
            return words_.number(words_.word_anywhere());
        const std::string_view raw = take(type);
        const double value = decoded(raw, type);
        if (!std::isfinite(value))
            fail("a value is not a finite number");
        return value;
    }

    [[noreturn]] void fail(const std::string& what) const {
        const char* const remedy = "the file may be spoiled; export it again";
        if (header_.ascii)
            words_.fail(what, remedy);
        throw BadMesh{"byte " + std::to_string(at_) + ": " + what, remedy};
    }

    /// Before memory is taken for so many elements.
    void expect(const Element& element) const {
        const std::size_t left =
            header_.ascii ? rest_.size() - std::min(rest_.size(), words_.at()) : rest_.size();
        const std::size_t least = element.least_bytes(header_.ascii);
        // The last value of a text needs no blank behind it.
        if (least > 0 && element.count > (left + 1) / least)
            fail("claims " + std::to_string(element.count) + " of " + shown(element.name) +
                 ", and ends before them");
    }

private:
    std::string_view take(Type type) {
        const std::size_t bytes = size_of(type);
        if (rest_.size() < bytes)
            fail("the file ends too early");
        const std::string_view raw = rest_.substr(0, bytes);
        rest_.remove_prefix(bytes);
        at_ += bytes;
        return raw;
    }

    double decoded(std::string_view raw, Type type) const {
        const ByteOrder order = header_.order;
        switch (type) {
        case Type::i8:
            return number_in<std::int8_t>(raw, order);
        case Type::u8:
            return number_in<std::uint8_t>(raw, order);
        case Type::i16:
            return number_in<std::int16_t>(raw, order);
        case Type::u16:
            return number_in<std::uint16_t>(raw, order);
        case Type::i32:
            return number_in<std::int32_t>(raw, order);
        case Type::u32:
            return number_in<std::uint32_t>(raw, order);
        case Type::f32:
            return static_cast<double>(number_in<float>(raw, order));
        case Type::f64:
            break;
        }
        return number_in<double>(raw, order);
    }

    std::string_view rest_;
    const Header& header_;
    Words words_;
    std::size_t at_;
};

class Ply {
public:
    explicit Ply(std::string_view bytes) : header_(header_of(bytes)), values_(bytes, header_) {}

    geometry::Mesh read() {
        check_parts();
        for (const Element& element : header_.elements) {
            values_.expect(element);
            if (element.name == "vertex")
                maker_.reserve(element.count, 0);
            // An element without properties takes no bytes, however many there are.
            for (std::size_t i = 0; i < element.count && !element.properties.empty(); ++i)
                read_one(element);
        }
        return maker_.finish();
    }

private:
    void check_parts() const {
        const auto named = [&](std::string_view name) {
            return std::find_if(header_.elements.begin(), header_.elements.end(),
                                [&](const Element& e) { return e.name == name; });
        };
        const auto vertex = named("vertex");
        const auto face = named("face");
        const auto none = header_.elements.end();
        if (vertex == none || vertex->find("x") == vertex->properties.size() ||
            vertex->find("y") == vertex->properties.size() ||
            vertex->find("z") == vertex->properties.size())
            throw BadMesh{"has no points with x, y and z", "export the scan again"};
        if (face == none || face->corners() == face->properties.size() ||
            !face->properties[face->corners()].count)
            throw BadMesh{"has no faces", "export the scan as a mesh, not as points"};
    }

    void read_one(const Element& element) {
        const bool vertex = element.name == "vertex";
        const std::size_t corners =
            element.name == "face" ? element.corners() : element.properties.size();
        Point3 p;
        for (std::size_t i = 0; i < element.properties.size(); ++i) {
            const Property& property = element.properties[i];
            if (property.count) {
                read_list(property, i == corners);
                continue;
            }
            const double value = values_.next(property.type);
            if (vertex && property.name == "x")
                p.x = within(value);
            else if (vertex && property.name == "y")
                p.y = within(value);
            else if (vertex && property.name == "z")
                p.z = within(value);
        }
        if (vertex)
            maker_.add_point(p);
    }

    double within(double value) const {
        if (std::abs(value) > farthest_coordinate)
            values_.fail("a coordinate is too large");
        return value;
    }

    void read_list(const Property& property, bool corners) {
        const double length = values_.next(*property.count);
        if (!(length >= 0) || length != std::floor(length) ||
            (corners && length > MeshMaker::most_corners))
            values_.fail("a list cannot have " + std::to_string(length) + " entries");
        for (double i = 0; i < length; ++i) {
            const double value = values_.next(property.type);
            if (!corners)
                continue;
            if (value != std::floor(value) || !(value >= 0))
                values_.fail("a corner of a face is not a whole number from 0");
            if (value >= static_cast<double>(limit::scan_points))
                values_.fail("a corner of a face is no point of the scan");
            maker_.add_corner(static_cast<std::int64_t>(value));
        }
        if (corners)
            maker_.end_polygon();
    }

    Header header_;
    Values values_;
    MeshMaker maker_;
};

} // namespace
} // namespace pelt::read::ply

namespace pelt::read {

geometry::Mesh read_ply(std::string_view bytes) {
    return ply::Ply(bytes).read();
}

} // namespace pelt::read
