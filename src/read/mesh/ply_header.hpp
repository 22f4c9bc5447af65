// SPDX-License-Identifier: MIT
// The head of a PLY file: which values follow, and how they are written. Inside read/mesh/ only.
#pragma once

#include "read/mesh/bytes.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::read::ply {

enum class Type { i8, u8, i16, u16, i32, u32, f32, f64 };

std::size_t size_of(Type type);

struct Property {
    std::string name;
    Type type = Type::f32;
    std::optional<Type> count; ///< of a list
};

struct Element {
    std::string name;
    std::size_t count = 0;
    std::vector<Property> properties;

    /// The property of the name; as many as there are where none has it.
    std::size_t find(std::string_view wanted) const;
    /// The corners of a face; they have two names in use.
    std::size_t corners() const;
    /// The least bytes that one takes; as text a figure and a blank for every property.
    std::size_t least_bytes(bool ascii) const;
};

struct Header {
    bool ascii = false;
    ByteOrder order = ByteOrder::little;
    std::vector<Element> elements;
    std::size_t bytes = 0; ///< of the file, up to the first value
    std::size_t lines = 0; ///< the line of that value
};

/// Throws BadMesh.
Header header_of(std::string_view bytes);

} // namespace pelt::read::ply
