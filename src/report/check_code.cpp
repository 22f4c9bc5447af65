// SPDX-License-Identifier: MIT
#include "report/check_code.hpp"

#include <array>
#include <cstdint>

namespace pelt::report {
namespace {

std::uint32_t fed(std::uint32_t crc, unsigned char byte) {
    constexpr std::uint32_t reflected_polynomial = 0xEDB88320U;
    crc ^= byte;
    for (int bit = 0; bit < 8; ++bit)
        crc = (crc >> 1U) ^ ((crc & 1U) != 0 ? reflected_polynomial : 0U);
    return crc;
}

std::uint32_t fed(std::uint32_t crc, std::string_view bytes) {
    for (const char c : bytes)
        crc = fed(crc, static_cast<unsigned char>(c));
    return crc;
}

std::string hex_of(std::uint32_t value) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    std::string text;
    for (unsigned shift = 32; shift > 0; shift -= 4)
        text += digits[(value >> (shift - 4)) & 0xFU];
    return text;
}

constexpr std::uint32_t all_ones = 0xFFFFFFFFU;

} // namespace

std::string crc32_hex(std::string_view bytes) {
    return hex_of(~fed(all_ones, bytes));
}

std::string check_code(const std::vector<std::string_view>& texts) {
    std::uint32_t crc = all_ones;
    for (const std::string_view text : texts)
        crc = fed(fed(crc, text), static_cast<unsigned char>(0));
    return hex_of(~crc);
}

} // namespace pelt::report
