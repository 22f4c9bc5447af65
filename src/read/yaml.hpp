// SPDX-License-Identifier: MIT
// Strict YAML as a tree in which every node knows its place. Inside read/ only.
#pragma once

#include "model/fault.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::read {

struct Entry;

/// A node of a document. Scalars keep their text; nothing is guessed from it.
struct Node {
    enum class Kind { empty, scalar, list, map };
    Kind kind = Kind::empty;
    std::string text;
    bool quoted = false;
    Place place;
    std::vector<Node> items;    ///< of a list
    std::vector<Entry> entries; ///< of a map, in the file's order

    const Node* find(std::string_view key) const;
};

/// `key: value`. The place of an entry is its key's.
struct Entry {
    std::string key;
    Place place;
    Node value;
};

/// Parses one document. Without a result `faults` says why.
std::optional<Node> parse(std::shared_ptr<const Source> source, Faults& faults);

} // namespace pelt::read
