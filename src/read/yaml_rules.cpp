// SPDX-License-Identifier: MIT
#include "read/yaml_rules.hpp"

#include "read/quantities.hpp"
#include "read/text_check.hpp"

#include <algorithm>
#include <numeric>
#include <string>

namespace pelt::read {
namespace {

/// The entries of a map by key, those with one key in the file's order.
std::vector<std::size_t> by_key(const Node& map) {
    std::vector<std::size_t> order(map.entries.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        const int names = map.entries[a].key.compare(map.entries[b].key);
        return names != 0 ? names < 0 : a < b;
    });
    return order;
}

Fault repeated(const Entry& entry, const Entry& first) {
    return {Severity::file, entry.place, "",
            quoted(entry.key) + " stands here again, after line " +
                std::to_string(first.place.line),
            "keep one of the two"};
}

} // namespace

Place Cursor::at(std::size_t byte) {
    byte = std::min(byte, source_->text.size());
    if (byte < byte_)
        return place_of(source_, byte);
    for (; byte_ < byte; ++byte_) {
        const char c = source_->text[byte_];
        const bool continues = (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
        line_ += c == '\n' ? 1 : 0;
        column_ = c == '\n' ? 1 : column_ + (continues ? 0 : 1);
    }
    return {source_, line_, column_};
}

bool closes_on_its_line(std::string_view text, std::size_t byte) {
    const char mark = text[byte];
    for (std::size_t at = byte + 1; at < text.size() && text[at] != '\n'; ++at) {
        const bool escaped = mark == '"' && text[at] == '\\';
        const bool doubled =
            mark == '\'' && text[at] == mark && at + 1 < text.size() && text[at + 1] == mark;
        if (escaped || doubled)
            ++at;
        else if (text[at] == mark)
            return true;
    }
    return false;
}

bool is_marked_key(std::string_view text, std::size_t byte) {
    if (byte == 0)
        return false;
    const std::size_t mark = text.find_last_not_of(" \t\r\n", byte - 1);
    if (mark == std::string_view::npos || text[mark] != '?' || mark + 1 == byte)
        return false;
    return mark == 0 || std::string_view(" \t\n[{,").find(text[mark - 1]) != std::string_view::npos;
}

void drop_repeated_keys(Node& map, Faults& faults) {
    const std::vector<std::size_t> order = by_key(map);
    std::vector<bool> drop(order.size(), false);
    for (std::size_t i = 1, first = 0; i < order.size(); ++i) {
        if (map.entries[order[i]].key != map.entries[order[first]].key) {
            first = i;
            continue;
        }
        drop[order[i]] = true;
        faults.push_back(repeated(map.entries[order[i]], map.entries[order[first]]));
    }
    std::size_t kept = 0;
    for (std::size_t i = 0; i < map.entries.size(); ++i)
        if (!drop[i] && kept++ != i)
            map.entries[kept - 1] = std::move(map.entries[i]);
    map.entries.resize(kept);
}

} // namespace pelt::read
