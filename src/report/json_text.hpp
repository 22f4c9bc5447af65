// SPDX-License-Identifier: MIT
// JSON text (RFC 8259), written with exact decimals: a number that went through a double would no
// longer add up to the last digit, and a library's writer prints doubles only.
#pragma once

#include "model/polygon.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::report {

/// A piece of finished JSON.
struct Json {
    std::string text;
};

inline const Json json_null{"null"};
Json json_bool(bool value);
Json json_whole(std::int64_t value);
/// A finished decimal number, as `decimal` writes it.
Json json_number(std::string decimal);
/// Quoted and escaped; bytes that are not UTF-8 become U+FFFD.
Json json_text(std::string_view text);
/// Null when empty.
Json json_text_or_null(std::string_view text);
/// A length in mm on the grid.
Json json_mm(Um um);
Json json_mm(Length length);
/// An area in mm², exact.
Json json_mm2(DoubleArea doubled);
Json json_point(GridPoint point);
Json json_ring(const Ring& ring);
Json json_rings(const std::vector<Ring>& rings);

/// On one line, or with one line an item.
Json json_array(const std::vector<Json>& items);
Json json_lines(const std::vector<Json>& items);

/// Members in the order in which they were added.
class JsonObject {
public:
    JsonObject& add(std::string_view name, const Json& value);
    Json on_one_line() const;
    Json on_lines() const;

private:
    Json joined(std::string_view separator) const;
    std::vector<std::string> members_;
};

} // namespace pelt::report
