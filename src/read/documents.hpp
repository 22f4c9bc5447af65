// SPDX-License-Identifier: MIT
// A file of several documents, divided by lines of three dashes. Inside read/ only.
#pragma once

#include "read/yaml.hpp"

#include <memory>
#include <optional>
#include <vector>

namespace pelt::read {

/// One document, its places those of the whole file.
struct Document {
    std::optional<Node> root;
    Faults faults;
};

/// The documents of a file, each parsed by itself, so that a mistake in one spoils no other. A file
/// without a line of dashes is one document; what stands before the first such line is none when it
/// holds remarks only.
std::vector<Document> documents_of(const std::shared_ptr<const Source>& source);

} // namespace pelt::read
