// SPDX-License-Identifier: MIT
#include "read/mesh/bytes.hpp"
#include "read/mesh/words.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pelt::read {
namespace {

enum class Type { i8, u8, i16, u16, i32, u32, f32, f64 };

struct TypeName {
    std::string_view name;
    Type type;
};
constexpr std::array<TypeName, 16> type_names{{{"char", Type::i8},
                                               {"int8", Type::i8},
                                               {"uchar", Type::u8},
                                               {"uint8", Type::u8},
                                               {"short", Type::i16},
                                               {"int16", Type::i16},
                                               {"ushort", Type::u16},
                                               {"uint16", Type::u16},
                                               {"int", Type::i32},
                                               {"int32", Type::i32},
                                               {"uint", Type::u32},
                                               {"uint32", Type::u32},
                                               {"float", Type::f32},
                                               {"float32", Type::f32},
                                               {"double", Type::f64},
                                               {"float64", Type::f64}}};

std::size_t size_of(Type type) {
    constexpr std::array<std::size_t, 8> sizes{1, 1, 2, 2, 4, 4, 4, 8};
    return sizes[static_cast<std::size_t>(type)];
}

struct Property {
    std::string name;
    Type type = Type::f32;
    std::optional<Type> count; ///< of a list
};

struct Element {
    std::string name;
    std::size_t count = 0;
    std::vector<Property> properties;

    std::size_t find(std::string_view wanted) const {
        for (std::size_t i = 0; i < properties.size(); ++i)
            if (properties[i].name == wanted)
                return i;
        return properties.size();
    }
    /// The corners of a face have two names in use.
    std::size_t corners() const { return std::min(find("vertex_indices"), find("vertex_index")); }
    /// The least bytes that one takes; as text a figure and a blank for every property.
    std::size_t least_bytes(bool ascii) const {
        std::size_t sum = 0;
        for (const Property& p : properties)
            sum += ascii ? 2 : size_of(p.count.value_or(p.type));
        return sum;
    }
};

struct Header {
    bool ascii = false;
    ByteOrder order = ByteOrder::little;
    std::vector<Element> elements;
    std::size_t bytes = 0;
    std::size_t lines = 0;
};

class HeaderReader {
public:
    explicit HeaderReader(std::string_view bytes) : words_(bytes) {}

    Header read() {
        if (words_.word() != "ply")
            words_.fail("does not begin with 'ply'", "export the scan as PLY, OBJ or STL");
        for (;;) {
            if (!words_.next_line() || words_.line() > most_lines)
                words_.fail("the header has no 'end_header'", "export the scan again");
            const std::string_view keyword = words_.word();
            if (keyword == "end_header")
                break;
            take(keyword);
        }
        if (!format_)
            words_.fail("the header has no 'format'", "export the scan again");
        words_.next_line();
        out_.bytes = words_.at();
        out_.lines = words_.line();
        return std::move(out_);
    }

private:
    void take(std::string_view keyword) {
        if (keyword == "format")
            take_format(words_.word());
        else if (keyword == "element")
            take_element();
        else if (keyword == "property")
            take_property();
        else if (keyword != "comment" && keyword != "obj_info" && !keyword.empty())
            words_.fail(shown(keyword) + " is not known in a header", "export the scan again");
    }

    void take_format(std::string_view format) {
        format_ = true;
        out_.ascii = format == "ascii";
        out_.order = format == "binary_big_endian" ? ByteOrder::big : ByteOrder::little;
        if (!out_.ascii && format != "binary_big_endian" && format != "binary_little_endian")
            words_.fail("the format " + shown(format) + " is not known",
                        "export the scan as ascii or binary");
    }

    void take_element() {
        const std::string name(words_.word());
        const std::int64_t count = words_.whole(words_.word());
        if (count < 0)
            words_.fail("there cannot be " + std::to_string(count) + " of " + shown(name));
        if (out_.elements.size() >= most_parts)
            words_.fail("too many kinds of elements");
        out_.elements.push_back({name, static_cast<std::size_t>(count), {}});
    }

    void take_property() {
        if (out_.elements.empty())
            words_.fail("a property stands before any element");
        Property property;
        std::string_view word = words_.word();
        if (word == "list") {
            property.count = type_named(words_.word());
            if (*property.count == Type::f32 || *property.count == Type::f64)
                words_.fail("the length of a list cannot be a decimal number");
            word = words_.word();
        }
        property.type = type_named(word);
        property.name = words_.word();
        std::vector<Property>& properties = out_.elements.back().properties;
        if (properties.size() >= most_parts)
            words_.fail("too many properties");
        properties.push_back(std::move(property));
    }

    Type type_named(std::string_view name) const {
        for (const TypeName& known : type_names)
            if (known.name == name)
                return known.type;
        words_.fail("the type " + shown(name) + " is not known");
    }

    static constexpr std::size_t most_parts = 64;
    static constexpr std::size_t most_lines = 4'000;
    Words words_;
    Header out_;
    bool format_ = false;
};

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
        const char* const remedy = "the file may be spoilt; export it again";
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
    explicit Ply(std::string_view bytes)
        : header_(HeaderReader(bytes).read()), values_(bytes, header_) {}

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
        if (!(length >= 0) || length != std::floor(length) || (corners && length > most_corners))
            values_.fail("a list cannot have " + std::to_string(length) + " entries");
        corners_.clear();
        for (double i = 0; i < length; ++i) {
            const double value = values_.next(property.type);
            if (!corners)
                continue;
            if (value != std::floor(value) || value < 0)
                values_.fail("a corner of a face is not a whole number from 0");
            corners_.push_back(static_cast<std::int64_t>(value));
        }
        if (corners)
            maker_.add_polygon(corners_);
    }

    static constexpr double most_corners = 1'000;
    Header header_;
    Values values_;
    MeshMaker maker_;
    std::vector<std::int64_t> corners_;
};

} // namespace

geometry::Mesh read_ply(std::string_view bytes) {
    return Ply(bytes).read();
}

} // namespace pelt::read
