// SPDX-License-Identifier: MIT
#include "read/mesh/ply_header.hpp"

#include "read/mesh/words.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>

namespace pelt::read::ply {
namespace {

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

} // namespace

std::size_t size_of(Type type) {
    constexpr std::array<std::size_t, 8> sizes{1, 1, 2, 2, 4, 4, 4, 8};
    return sizes[static_cast<std::size_t>(type)];
}

std::size_t Element::find(std::string_view wanted) const {
    for (std::size_t i = 0; i < properties.size(); ++i)
        if (properties[i].name == wanted)
            return i;
    return properties.size();
}

std::size_t Element::corners() const {
    return std::min(find("vertex_indices"), find("vertex_index"));
}

std::size_t Element::least_bytes(bool ascii) const {
    std::size_t sum = 0;
    for (const Property& p : properties)
        sum += ascii ? 2 : size_of(p.count.value_or(p.type));
    return sum;
}

Header header_of(std::string_view bytes) {
    return HeaderReader(bytes).read();
}

} // namespace pelt::read::ply
