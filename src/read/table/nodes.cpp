// SPDX-License-Identifier: MIT
#include "read/table/nodes.hpp"

#include <utility>

namespace pelt::read {
namespace {

Node node_of(Node::Kind kind, const Place& place) {
    Node node;
    node.kind = kind;
    node.place = place;
    return node;
}

} // namespace

Node scalar_node(std::string text, const Place& place) {
    Node node = node_of(Node::Kind::scalar, place);
    node.text = std::move(text);
    return node;
}

Node refused_node(const Place& place) {
    return node_of(Node::Kind::refused, place);
}

Node map_node(const Place& place) {
    return node_of(Node::Kind::map, place);
}

Node number_node(std::string_view text, const Place& place, const std::string& label,
                 DecimalMarks& marks, Context& context) {
    const Parsed<std::string> parsed = marks.with_points(text, place);
    if (parsed.value)
        return scalar_node(*parsed.value, place);
    context.fault(place, label + " " + parsed.refusal.what, parsed.refusal.remedy);
    return refused_node(place);
}

void put(Node& map, std::string_view key, Node value) {
    const Place place = value.place;
    put_at(map, key, place, std::move(value));
}

void put_at(Node& map, std::string_view key, const Place& place, Node value) {
    map.entries.push_back({std::string(key), place, std::move(value)});
}

Node& map_under(Node& map, std::string_view key, const Place& place) {
    for (Entry& entry : map.entries)
        if (entry.key == key)
            return entry.value;
    put(map, key, map_node(place));
    return map.entries.back().value;
}

} // namespace pelt::read
