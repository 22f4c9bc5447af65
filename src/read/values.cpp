// SPDX-License-Identifier: MIT
#include "read/values.hpp"

#include "model/utf8.hpp"
#include "read/decimal.hpp"
#include "read/syntax.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <initializer_list>
#include <tuple>
#include <utility>

namespace pelt::read {
namespace {

constexpr std::size_t longest_text = 200;

std::string spoken_number(double value) {
    std::array<char, 32> out{};
    const auto end =
        std::to_chars(out.data(), out.data() + out.size(), value, std::chars_format::fixed);
    return {out.data(), end.ptr};
}

std::string spoken_bound(double value, ValueKind kind) {
    if (kind == ValueKind::percent)
        return spoken_number(value) + " %";
    if (kind == ValueKind::count || kind == ValueKind::number || kind == ValueKind::money)
        return spoken_number(value);
    return spoken_length(value);
}

/// Tells a value that lies outside the bounds of its key. `kind` is that of the value, which is a
/// length for the coordinates of a point.
bool within_bounds(double value, const Node& node, const Key& key, ValueKind kind,
                   std::string_view label, Context& context) {
    if (!key.bounded() || (value >= key.low && value <= key.high))
        return true;
    const bool low = value < key.low;
    context.fault(node.place,
                  std::string(label) + " " + quoted(node.text) + " is " +
                      (low ? "less than " : "more than ") +
                      spoken_bound(low ? key.low : key.high, kind),
                  "give " + spoken_bound(key.low, kind) + " to " + spoken_bound(key.high, kind));
    return false;
}

std::string kind_of_node(const Node& node) {
    return node.kind == Node::Kind::list ? "a list" : "a map";
}

} // namespace

std::string spoken_length(double mm) {
    const double size = std::abs(mm);
    if (size >= 1e6 && std::fmod(size, 1e6) == 0)
        return spoken_number(mm / 1e6) + " km";
    if (size >= 1e3 && std::fmod(size, 1e3) == 0)
        return spoken_number(mm / 1e3) + " m";
    return spoken_number(mm) + " mm";
}

const std::string* plain_text(const Node& node, std::string_view label, const Place& owner,
                              Context& context) {
    switch (node.kind) {
    case Node::Kind::scalar:
        return &node.text;
    case Node::Kind::empty:
        context.fault(owner, std::string(label) + " has no value",
                      "write it after the colon, or take the key out");
        return nullptr;
    case Node::Kind::list:
    case Node::Kind::map:
        context.fault(node.place, std::string(label) + " is " + kind_of_node(node),
                      "one plain value belongs here");
        return nullptr;
    case Node::Kind::refused:
        break;
    }
    return nullptr;
}

std::optional<WrittenLength> length_value(const Node& node, const Key& key, std::string_view label,
                                          const Place& owner, Context& context) {
    const std::string* text = plain_text(node, label, owner, context);
    if (text == nullptr)
        return std::nullopt;
    const auto length = told(parse_length(*text, context.unit_at(node.place)), node, label, context);
    if (!length ||
        !within_bounds(length->length.mm(), node, key, ValueKind::length, label, context))
        return std::nullopt;
    return length;
}

std::optional<double> percent_value(const Node& node, const Key& key, std::string_view label,
                                    const Place& owner, Context& context) {
    const std::string* text = plain_text(node, label, owner, context);
    if (text == nullptr)
        return std::nullopt;
    const auto percent = told(parse_percent(*text), node, label, context);
    if (!percent || !within_bounds(*percent, node, key, ValueKind::percent, label, context))
        return std::nullopt;
    return percent;
}

std::optional<double> number_value(const Node& node, const Key& key, std::string_view label,
                                   const Place& owner, Context& context) {
    const std::string* text = plain_text(node, label, owner, context);
    if (text == nullptr)
        return std::nullopt;
    const auto number = told(parse_number(*text), node, label, context);
    if (!number || !within_bounds(*number, node, key, ValueKind::number, label, context))
        return std::nullopt;
    return number;
}

std::optional<std::int64_t> count_value(const Node& node, const Key& key, std::string_view label,
                                        const Place& owner, Context& context) {
    const std::string* text = plain_text(node, label, owner, context);
    if (text == nullptr)
        return std::nullopt;
    const auto count = told(parse_count(*text), node, label, context);
    if (!count ||
        !within_bounds(static_cast<double>(*count), node, key, ValueKind::count, label, context))
        return std::nullopt;
    return count;
}

std::optional<WrittenMoney> money_value(const Node& node, const Key& key, std::string_view label,
                                        const Place& owner, Context& context) {
    const std::string* text = plain_text(node, label, owner, context);
    if (text == nullptr)
        return std::nullopt;
    const auto money = told(parse_money(*text), node, label, context);
    if (!money)
        return std::nullopt;
    const double value =
        static_cast<double>(money->amount.micros()) / static_cast<double>(Money::per_unit);
    if (!within_bounds(value, node, key, ValueKind::money, label, context))
        return std::nullopt;
    return money;
}

bool begins_like_a_length(std::string_view text) {
    const std::size_t at = text.empty() || (text[0] != '-' && text[0] != '+') ? 0 : 1;
    return at < text.size() && (is_digit(text[at]) || text[at] == '.');
}

std::optional<std::string> text_value(const Node& node, std::string_view label, const Place& owner,
                                      Context& context) {
    const std::string* text = plain_text(node, label, owner, context);
    if (text == nullptr)
        return std::nullopt;
    const std::u32string characters = code_points(*text);
    std::string wrong;
    if (characters.empty())
        wrong = " is empty";
    else if (std::any_of(characters.begin(), characters.end(), is_control))
        wrong = " " + quoted(*text) + " holds a control character";
    else if (trimmed(*text).size() != text->size())
        wrong = " " + quoted(*text) + " begins or ends with a blank";
    else if (characters.size() > longest_text)
        wrong = " has more than " + std::to_string(longest_text) + " characters";
    if (wrong.empty())
        return *text;
    context.fault(node.place, std::string(label) + wrong, "write plain words on one line");
    return std::nullopt;
}

bool check_name(const std::string& name, std::string_view label, const Place& place,
                Context& context) {
    Node node;
    node.kind = Node::Kind::scalar;
    node.text = name;
    node.place = place;
    return name_value(node, label, place, context).has_value();
}

std::optional<std::string> name_value(const Node& node, std::string_view label, const Place& owner,
                                      Context& context) {
    auto text = text_value(node, label, owner, context);
    if (!text)
        return std::nullopt;
    const std::size_t at = text->find_first_of("/,=");
    if (at == std::string::npos)
        return text;
    context.fault(node.place,
                  std::string(label) + " " + quoted(*text) + " holds '" + (*text)[at] + "'",
                  "names hold no / , or =, since options list them");
    return std::nullopt;
}

std::optional<Point> point_value(const Node& node, const Key& key, std::string_view label,
                                 const Place& owner, Context& context) {
    if (node.kind == Node::Kind::refused)
        return std::nullopt;
    if (node.kind != Node::Kind::list || node.items.size() != 2) {
        const bool many = node.kind == Node::Kind::list && node.items.size() > 2;
        context.fault(node.kind == Node::Kind::empty ? owner : node.place,
                      std::string(label) +
                          (many ? " has " + std::to_string(node.items.size()) + " numbers"
                                : std::string(" is not two numbers")),
                      many ? "write it as [x, y]; decimals stand after a point, not a comma"
                           : "write it as [x, y]");
        return std::nullopt;
    }
    const auto x =
        length_value(node.items[0], key, std::string(label) + ": x", node.place, context);
    const auto y =
        length_value(node.items[1], key, std::string(label) + ": y", node.place, context);
    if (!x || !y)
        return std::nullopt;
    return Point{x->length.mm(), y->length.mm()};
}

namespace {

using TwoTexts = std::pair<std::string, std::string>;

/// What stands on both sides of the first of these signs that is there.
std::optional<TwoTexts> parted_at(const std::string& text,
                                  std::initializer_list<std::string_view> signs) {
    for (const std::string_view sign : signs) {
        const std::size_t at = text.find(sign);
        if (at != std::string::npos)
            return std::pair(std::string(trimmed(text.substr(0, at))),
                             std::string(trimmed(text.substr(at + sign.size()))));
    }
    return std::nullopt;
}

/// The two lengths of `1380 x 850`; none of a text without a sign for "times".
std::optional<TwoTexts> factors_of(const std::string& text) {
    return parted_at(text, {"x", "X", "×"});
}

/// "1380 x 850" of `1380 by 850` and its like; none where the two lengths are not clear.
std::optional<std::string> size_meant_by(const std::string& text, Unit unit) {
    const auto two = parted_at(text, {"by", "*", "/", ";"});
    if (!two || !parse_length(two->first, unit).value || !parse_length(two->second, unit).value)
        return std::nullopt;
    return two->first + " x " + two->second;
}

bool has_a_unit(const std::string& length) {
    return std::any_of(length.begin(), length.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '\'' || c == '"';
    });
}

} // namespace

std::optional<Point> size_value(const Node& node, const Key& key, std::string_view label,
                                const Place& owner, Context& context) {
    const auto factors =
        node.kind == Node::Kind::scalar ? factors_of(node.text) : std::nullopt;
    if (!factors) {
        const auto meant = node.kind == Node::Kind::scalar
                               ? size_meant_by(node.text, context.unit_at(node.place))
                               : std::nullopt;
        if (!meant)
            return point_value(node, key, label, owner, context);
        context.fault(node.place,
                      std::string(label) + " " + quoted(node.text) + " is not two lengths",
                      "write it as " + *meant);
        return std::nullopt;
    }
    Node x = node;
    Node y = node;
    std::tie(x.text, y.text) = *factors;
    const auto high = length_value(y, key, std::string(label) + ": y", owner, context);
    if (!high)
        return std::nullopt;
    if (!has_a_unit(x.text) && has_a_unit(y.text))
        x.text += " " + std::string(name_of(high->unit));
    const auto wide = length_value(x, key, std::string(label) + ": x", owner, context);
    return wide ? std::optional(Point{wide->length.mm(), high->length.mm()}) : std::nullopt;
}

std::optional<Corners> corners_value(const Node& node, const Key& key, std::string_view label,
                                     const Place& owner, Context& context) {
    if (node.kind == Node::Kind::refused)
        return std::nullopt;
    if (node.kind != Node::Kind::list || node.items.size() != 2) {
        context.fault(node.kind == Node::Kind::empty ? owner : node.place,
                      std::string(label) + " is not two points",
                      "write two corners that face one another, like [[0, 0], [400, 300]]");
        return std::nullopt;
    }
    const auto a = point_value(node.items[0], key, "corner 1", node.items[0].place, context);
    const auto b = point_value(node.items[1], key, "corner 2", node.items[1].place, context);
    if (!a || !b)
        return std::nullopt;
    const Corners out{{std::min(a->x, b->x), std::min(a->y, b->y)},
                      {std::max(a->x, b->x), std::max(a->y, b->y)}};
    if (out.high.x - out.low.x < 1 || out.high.y - out.low.y < 1) {
        context.fault(node.place, std::string(label) + " enclose less than 1 mm",
                      "give two corners that face one another across the middle");
        return std::nullopt;
    }
    return out;
}

} // namespace pelt::read
