// SPDX-License-Identifier: MIT
// Numbers in binary files. Inside read/mesh/ only.
#pragma once

#include <array>
#include <bit>
#include <cstdint>
#include <cstring>
#include <string_view>

namespace pelt::read {

enum class ByteOrder { little, big };

/// The first Size bytes as a number of the type; there must be so many.
template <class Number>
Number number_in(std::string_view bytes, ByteOrder order) {
    std::array<char, sizeof(Number)> raw{};
    const bool native =
        (std::endian::native == std::endian::little) == (order == ByteOrder::little);
    for (std::size_t i = 0; i < raw.size(); ++i)
        raw[native ? i : raw.size() - 1 - i] = bytes[i];
    Number out{};
    std::memcpy(&out, raw.data(), raw.size());
    return out;
}

} // namespace pelt::read
