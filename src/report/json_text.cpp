// SPDX-License-Identifier: MIT
#include "report/json_text.hpp"

#include "model/utf8.hpp"
#include "report/decimal.hpp"

namespace pelt::report {
namespace {

std::string escaped(char32_t c) {
    switch (c) {
    case U'"':
        return "\\\"";
    case U'\\':
        return "\\\\";
    case U'\n':
        return "\\n";
    case U'\r':
        return "\\r";
    case U'\t':
        return "\\t";
    default:
        break;
    }
    if (c >= 0x20 && c != 0x7F)
        return utf8(c);
    constexpr std::string_view hex = "0123456789abcdef";
    return std::string("\\u00") + hex[c >> 4U] + hex[c & 0xFU];
}

std::string joined(const std::vector<Json>& items, std::string_view separator) {
    std::string text;
    for (const Json& item : items)
        text.append(text.empty() ? std::string_view() : separator).append(item.text);
    return text;
}

} // namespace

Json json_bool(bool value) {
    return {value ? "true" : "false"};
}
Json json_whole(std::int64_t value) {
    return {std::to_string(value)};
}
Json json_number(std::string decimal) {
    return {std::move(decimal)};
}
Json json_text(std::string_view text) {
    std::string out = "\"";
    for (const char32_t c : code_points(text))
        out += escaped(c);
    return {out + "\""};
}
Json json_text_or_null(std::string_view text) {
    return text.empty() ? json_null : json_text(text);
}
Json json_mm(Um um) {
    return {decimal(um, 3, 1)};
}
Json json_mm(Length length) {
    return {decimal(length.pm(), 9, 1)};
}
Json json_mm2(DoubleArea doubled) {
    return {decimal(doubled * 5, 7, 1)};
}
Json json_point(GridPoint point) {
    return json_array({json_mm(point.x), json_mm(point.y)});
}
Json json_ring(const Ring& ring) {
    std::vector<Json> points;
    for (const GridPoint& p : ring)
        points.push_back(json_point(p));
    return json_array(points);
}
Json json_rings(const std::vector<Ring>& rings) {
    std::vector<Json> items;
    for (const Ring& ring : rings)
        items.push_back(json_ring(ring));
    return json_array(items);
}

Json json_array(const std::vector<Json>& items) {
    return {"[" + joined(items, ", ") + "]"};
}
Json json_lines(const std::vector<Json>& items) {
    return {items.empty() ? "[]" : "[\n" + joined(items, ",\n") + "]"};
}

JsonObject& JsonObject::add(std::string_view name, const Json& value) {
    members_.push_back(json_text(name).text + ": " + value.text);
    return *this;
}
Json JsonObject::on_one_line() const {
    return joined(", ");
}
Json JsonObject::on_lines() const {
    return joined(",\n ");
}
Json JsonObject::joined(std::string_view separator) const {
    std::string text;
    for (const std::string& member : members_)
        text.append(text.empty() ? std::string_view() : separator).append(member);
    return {"{" + text + "}"};
}

} // namespace pelt::report
