// SPDX-License-Identifier: MIT
// Every key that works is used by at least one shipped file, so that each has an example that runs.
#include "read/keys.hpp"
#include "read/read.hpp"
#include "read/yaml.hpp"
#include "shipped.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string>
#include <utility>

namespace pelt::data_test {
namespace {

using read::In;
using read::Node;

using UsedKeys = std::set<std::pair<In, std::string>>;

void collect(const Node& map, In in, UsedKeys& used);

void collect_points(const Node& outline, UsedKeys& used) {
    for (const Node& point : outline.items)
        if (point.kind == Node::Kind::map)
            collect(point, In::point, used);
}

void collect_value(const Node& value, const read::Key& key, UsedKeys& used) {
    if (key.kind == read::ValueKind::outline)
        collect_points(value, used);
    if (!key.of)
        return;
    if (key.kind == read::ValueKind::map)
        collect(value, *key.of, used);
    for (const Node& item : value.items)
        collect(item, *key.of, used);
    if (key.kind == read::ValueKind::named)
        for (const read::Entry& entry : value.entries)
            collect(entry.value, *key.of, used);
}

void collect(const Node& map, In in, UsedKeys& used) {
    for (const read::Entry& entry : map.entries) {
        const read::Key* key = read::find_key(in, entry.key);
        if (key == nullptr)
            continue;
        used.emplace(in, entry.key);
        collect_value(entry.value, *key, used);
    }
}

In top_of(const Node& root) {
    if (root.find("jobs") != nullptr)
        return In::jobs;
    if (root.find("shop") != nullptr)
        return In::shop;
    if (root.find("stock") != nullptr)
        return In::stock;
    return root.find("film") != nullptr ? In::film : In::vehicle;
}

UsedKeys keys_of_shipped_files() {
    UsedKeys used;
    for (const std::string& path : shipped_files()) {
        CAPTURE(path);
        const auto source = read::load(std::string(PELT_TOP) + "/" + path);
        REQUIRE(source.value.has_value());
        Faults faults;
        const auto root = read::parse(*source.value, faults);
        REQUIRE(root.has_value());
        collect(*root, top_of(*root), used);
    }
    return used;
}

TEST_CASE("every key that works is used in a shipped file") {
    const UsedKeys used = keys_of_shipped_files();
    for (const read::Key& key : read::all_keys()) {
        const std::string place(read::name_of(key.in));
        const std::string name(key.name);
        CAPTURE(place);
        CAPTURE(name);
        CHECK((!key.works || used.count({key.in, name}) == 1));
    }
}

} // namespace
} // namespace pelt::data_test
