// SPDX-License-Identifier: MIT
// From a file to its top map, for any kind of file. Inside read/ only.
#pragma once

#include "read/context.hpp"
#include "read/kind.hpp"
#include "read/read.hpp"
#include "read/yaml.hpp"

#include <memory>
#include <utility>

namespace pelt::read {

/// The unit at a position of the choices of `units`.
Unit unit_of_choice(std::size_t chosen);

/// The document of a file that should be of a kind; without one, what is wrong has been told.
std::optional<Node> document(const std::shared_ptr<const Source>& source, FileKind kind,
                             Context& context);

/// Reads a file of a kind by a function (const Node& root, Context&) -> T.
template <class T, class Reader>
Reading<T> read_file(const std::shared_ptr<const Source>& source, FileKind kind, Reader reader) {
    Reading<T> out;
    Context context;
    if (const auto root = document(source, kind, context)) {
        T made = reader(*root, context);
        if (context.mark() == 0)
            out.value = std::move(made);
    }
    out.files = std::move(context.files);
    std::move(context).finish(out.faults, out.unlisted);
    return out;
}

} // namespace pelt::read
