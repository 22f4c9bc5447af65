// SPDX-License-Identifier: MIT
// Strict YAML as a tree in which every node knows its place. Inside read/ only.
#pragma once

#include "model/fault.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::read {

struct Entry;

/// A node of a document. Scalars keep their text; nothing is guessed from it.
struct Node {
    /// `refused`: a fault has been told already, nobody needs to complain again.
    enum class Kind { empty, scalar, list, map, refused };
    Kind kind = Kind::empty;
    bool quoted = false;
    std::string text;
    Place place;
    std::vector<Node> items;    ///< of a list
    std::vector<Entry> entries; ///< of a map, in the file's order; no key twice

    const Entry* entry(std::string_view key) const;
    const Node* find(std::string_view key) const;
};

/// `key: value`. The place of an entry is its key's.
struct Entry {
    std::string key;
    Place place;
    Node value;
};

/// Parses the one document of a file, after check_text. YAML is kept to what a person writes:
/// maps, lists, one-line texts. Everything else is a fault with a sentence of its own, and so are
/// repeated keys and what is beyond the limits of model/limits.hpp (points are lists of two texts).
/// Without a result the file could not be followed to its end; `faults` says why.
std::optional<Node> parse(const std::shared_ptr<const Source>& source, Faults& faults);

} // namespace pelt::read
